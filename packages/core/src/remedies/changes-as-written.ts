import type { BuildUp, Layer, SolidLayer } from "../project/types.ts";
import { writeQuantity } from "../quantities/format-quantity.ts";
import type { LayerAsWritten, LayerChange } from "../result/types.ts";
import { layerAsWritten } from "./layer-as-written.ts";

/**
 * Writes the changes to a build-up's layers as the changes of a variant: first the moves; then, from the room outwards,
 * the layers that were exchanged, removed and added.
 *
 * @param before - the build-up before the change
 * @param after - the changed build-up; layers that stayed are the same objects
 * @returns changes that, applied in order, turn the first into the second; none if the layers are the same
 */
export function layerChanges(before: BuildUp, after: BuildUp): LayerChange[] {
  const draft = [...before.layers];
  const moves = movedLayers(draft, after.layers).map((layer) => moveInDraft(layer, draft, after.layers));
  return [...moves, ...exchangesInDraft(draft, after)];
}

/** The layers that moved: those still there, except for the longest series that kept its order. */
function movedLayers(before: readonly Layer[], after: readonly Layer[]): Layer[] {
  const stayed = before.filter((layer) => after.includes(layer));
  const longest = (runs: readonly (readonly Layer[])[]): readonly Layer[] =>
    runs.reduce((most, run) => (run.length > most.length ? run : most), []);
  const runs: (readonly Layer[])[] = [];
  for (const layer of stayed) {
    const position = after.indexOf(layer);
    runs.push([...longest(runs.filter((run) => after.indexOf(run[run.length - 1]!) < position)), layer]);
  }
  const kept = longest(runs);
  return stayed.filter((layer) => !kept.includes(layer));
}

/** Moves a layer in the draft to just before the next layer outside it that the draft has. */
function moveInDraft(layer: Layer, draft: Layer[], after: readonly Layer[]): LayerChange {
  const at = draft.indexOf(layer);
  draft.splice(at, 1);
  const next = after.slice(after.indexOf(layer) + 1).find((other) => draft.includes(other));
  const to = next === undefined ? draft.length : draft.indexOf(next);
  const beside = besideAt(draft, to);
  draft.splice(to, 0, layer);
  return { at, to, change: { move: layer.name, ...beside } };
}

/** Makes the changed layers of the draft, from the room outwards. */
function exchangesInDraft(draft: Layer[], after: BuildUp): LayerChange[] {
  const changes: LayerChange[] = [];
  const take = (at: number): void => {
    const [layer] = draft.splice(at, 1);
    changes.push({ at, to: null, change: { remove: layer!.name } });
  };
  after.layers.forEach((target, at) => {
    if (draft.includes(target)) {
      while (draft[at] !== target) take(at);
      return;
    }
    const here = draft[at];
    const isExchanged = here !== undefined && !after.layers.includes(here);
    changes.push(isExchanged ? exchange(here, target, at, after) : addition(draft, target, at, after));
    draft.splice(at, isExchanged ? 1 : 0, target);
  });
  while (draft.length > after.layers.length) take(after.layers.length);
  return changes;
}

/** Sets keys where gaps are closed, framing is taped over or the thickness differs; any other change swaps the layer. */
function exchange(here: Layer, target: Layer, at: number, buildUp: BuildUp): LayerChange {
  const isSame = here.type !== "air" && target.type !== "air" && here.material === target.material;
  const change = isSame
    ? { set: here.name, ...keysSet(here, target) }
    : { swap: here.name, for: layerAsWritten(target, buildUp) };
  return { at, to: null, change };
}

function keysSet(here: SolidLayer, target: SolidLayer): Pick<LayerAsWritten, "gaps" | "taped" | "thickness"> {
  return {
    ...(here.thickness === target.thickness ? {} : { thickness: writeQuantity(target.thickness, "thickness") }),
    ...(here.gaps !== null && target.gaps === null ? { gaps: "0 %" } : {}),
    ...(target.taped?.kind === "over the framing" && here.taped?.kind !== "over the framing" ? { taped: "yes" } : {}),
  };
}

function addition(draft: readonly Layer[], target: Layer, at: number, buildUp: BuildUp): LayerChange {
  return { at, to: null, change: { add: layerAsWritten(target, buildUp), ...besideAt(draft, at) } };
}

/** A place, named by the layer outside it; at the outer end, by the layer inside it. */
function besideAt(draft: readonly Layer[], at: number): { before: string } | { after: string } {
  const beyond = draft[at];
  return beyond === undefined ? { after: draft[at - 1]!.name } : { before: beyond.name };
}
