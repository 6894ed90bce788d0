import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import { addProblemsOfIssues } from "../schema/problems-of-shape.ts";
import { faultsOfLayer, LAYER_FIELDS, type WrittenLayer } from "../schema/schema-layer.ts";
import type { WrittenChange } from "../schema/schema-variant.ts";
import type { Layer } from "../types.ts";
import { changeInWords, layerInWords } from "./change-in-words.ts";
import { type DraftLayer, findInDraft } from "./draft-layers.ts";
import { type LayerSurroundings, resolveWrittenLayer } from "./resolve-layer.ts";

/** The outcome of a change: the layers after it, and the change in words. */
export interface AppliedChange {
  layers: readonly DraftLayer[];
  words: string;
}

/**
 * Applies one change to the layers as changed so far.
 *
 * @param change - of the right shape: exactly one verb
 * @param path - where it stands
 * @param draft - the layers as changed so far
 * @param original - the layers of the build-up: a name means one of these first
 * @param surroundings - what a layer must know about its build-up
 * @param context - data, tables and problems
 * @returns the layers after it with the change in words, or null after adding a problem
 */
export function applyChange(
  change: WrittenChange,
  path: ProblemPath,
  draft: readonly DraftLayer[],
  original: readonly DraftLayer[],
  surroundings: LayerSurroundings,
  context: ReadingContext,
): AppliedChange | null {
  const find = (key: "swap" | "set" | "remove" | "move" | "before" | "after"): number | null =>
    findInDraft(change[key]!, [...path, key], draft, original, context);
  const read = (key: "for" | "add"): DraftLayer => ({
    base: null,
    written: change[key]!,
    layer: resolveWrittenLayer(change[key]!, [...path, key], surroundings, context),
  });
  if (change.swap !== undefined) return swapped(find("swap"), read("for"), path, draft, context);
  if (change.set !== undefined) return reset(find("set"), change, path, draft, surroundings, context);
  if (change.add !== undefined) {
    const added = read("add");
    const key = change.before === undefined ? "after" : "before";
    const beside = find(key);
    if (beside === null || added.layer === null) return null;
    const words = `${layerInWords(added.layer)} added ${key} ${nameAt(draft, beside)}`;
    return { layers: draft.toSpliced(indexBeside(key, beside), 0, added), words };
  }
  if (change.remove !== undefined) {
    const at = find("remove");
    return at === null ? null : { layers: draft.toSpliced(at, 1), words: `${nameAt(draft, at)} taken out` };
  }
  const key = change.before === undefined ? "after" : "before";
  return moved(find("move"), key, find(key), path, draft, context);
}

function swapped(
  at: number | null,
  by: DraftLayer,
  path: ProblemPath,
  draft: readonly DraftLayer[],
  context: ReadingContext,
): AppliedChange | null {
  if (at === null || by.layer === null) return null;
  const { base, layer: before } = draft[at]!;
  if (before === null) return null;
  if (before.framing !== null && by.layer.framing === null) {
    const sentence = `${before.name} has ${before.framing.name} in it and ${by.layer.name} in its place has none`;
    context.note("framing-left-out", [...path, "for"], sentence);
  }
  return {
    layers: draft.with(at, { ...by, base }),
    words: `${layerInWords(by.layer)} in place of ${layerInWords(before)}`,
  };
}

/** Makes the layer again, with the keys of the change in place of its own. */
function reset(
  at: number | null,
  change: WrittenChange,
  path: ProblemPath,
  draft: readonly DraftLayer[],
  surroundings: LayerSurroundings,
  context: ReadingContext,
): AppliedChange | null {
  const { file, collector } = context;
  const changed = at === null ? undefined : draft[at];
  if (at === null || changed === undefined || changed.layer === null) return null;
  const keys = Object.keys(change).filter((key) => Object.hasOwn(LAYER_FIELDS, key));
  const { set: _, ...own } = change;
  const written: WrittenLayer = { ...changed.written, ...own };
  const faults = faultsOfLayer(written);
  if (faults.length > 0) {
    addProblemsOfIssues(faults, path, file, collector);
    return null;
  }
  const isTold = typeof written.material === "object" && written.material.resistance !== undefined;
  if (isTold && change.thickness !== undefined && change.material === undefined) {
    collector.add("resistance-of-thickness", [...path, "thickness"], { name: changed.layer.name });
    return null;
  }
  const layer = resolveWrittenLayer(written, path, surroundings, context);
  if (layer === null) return null;
  return {
    layers: draft.with(at, { ...changed, written, layer }),
    words: changeInWords(changed.layer.name, keys, path, file),
  };
}

function moved(
  from: number | null,
  key: "before" | "after",
  beside: number | null,
  path: ProblemPath,
  draft: readonly DraftLayer[],
  context: ReadingContext,
): AppliedChange | null {
  if (from === null || beside === null) return null;
  const to = indexBeside(key, beside);
  if (to === from || to === from + 1) {
    context.collector.add("change-moves-nothing", [...path, key], { name: nameAt(draft, from) });
    return null;
  }
  const without = draft.toSpliced(from, 1);
  const layers = without.toSpliced(to > from ? to - 1 : to, 0, draft[from]!);
  return { layers, words: `${nameAt(draft, from)} moved ${key} ${nameAt(draft, beside)}` };
}

function indexBeside(key: "before" | "after", beside: number): number {
  return key === "before" ? beside : beside + 1;
}

function nameAt(draft: readonly DraftLayer[], at: number): string {
  return (draft[at]!.layer as Layer).name;
}
