import type { Remedy, SheetPlaces } from "@warmside/core";
import { wordProblem } from "@warmside/core";
import { dataAt } from "../edit/checked.ts";
import { type Data, dataOf, type Path } from "../edit/parsed.ts";
import { type Entry, rearrange } from "../edit/rearrange.ts";
import { removeKey } from "../edit/remove-key.ts";
import { setValue } from "../edit/set-value.ts";
import { answerOf, readingOf } from "./answer.ts";
import { show, state, write } from "./store.ts";
import { withRemedy } from "./try-remedy.ts";

/** Sets a value of the project file, or takes its key out where it is null. */
export function set(path: Path, value: Data | null, gesture: string | null = path.join("/")): void {
  make((text) => (value === null ? removeKey(text, path) : setValue(text, path, value)), gesture);
}

/** Sets several values as one step. */
export function setAll(values: readonly (readonly [Path, Data | null])[]): void {
  make(
    (first) =>
      values.reduce<string | null>((text, [path, value]) => {
        if (text === null) return null;
        return value === null ? removeKey(text, path) : setValue(text, path, value);
      }, first),
    null,
  );
}

/** The thickness of a layer [mm]; of air too. */
export function setThickness(layer: number, millimetres: number, gesture = `thickness of ${layer}`): void {
  if (!(millimetres > 0)) return;
  const isAir = dataAt(dataOf(state().text), pathOf("layers", layer, "air")) !== undefined;
  set(pathOf("layers", layer, isAir ? "air" : "thickness"), `${Number(millimetres.toFixed(2))} mm`, gesture);
}

/** A layer to another place in the row. */
export function moveLayer(from: number, to: number, gesture: string | null = null): void {
  const order = layerIndices();
  if (from === to || order[from] === undefined || order[to] === undefined) return;
  order.splice(from, 1);
  order.splice(to, 0, from);
  rearrangeLayers(order, gesture, to);
}

/** A layer out of the row. */
export function takeOutLayer(layer: number): void {
  rearrangeLayers(
    layerIndices().filter((index) => index !== layer),
    null,
    null,
  );
}

/** A new layer in front of the one at an index. */
export function putInLayer(at: number, layer: Data): void {
  const entries: Entry[] = layerIndices();
  entries.splice(at, 0, layer as Entry);
  rearrangeLayers(entries, null, at);
}

/** Another layer in the place of one. Of the same form, it keeps the thickness, the framing and the purpose. */
export function exchangeLayer(at: number, layer: Data): void {
  const old = dataAt(dataOf(state().text), pathOf("layers", at)) as Record<string, Data> | undefined;
  const { material, thickness } = layer as Record<string, Data>;
  const isSameForm = old?.material !== undefined && (old.thickness === undefined) === (thickness === undefined);
  if (material === undefined || !isSameForm) {
    const entries: Entry[] = layerIndices();
    entries[at] = layer as Entry;
    rearrangeLayers(entries, null, at);
    return;
  }
  setAll([
    [pathOf("layers", at, "material"), material],
    [pathOf("layers", at, "name"), null],
    // What comes from a datasheet has a thickness of its own.
    ...(typeof material === "string" || thickness === undefined
      ? []
      : [[pathOf("layers", at, "thickness"), thickness] as const]),
  ]);
  show({ picking: null });
}

/** The vapour sheet into a gap, counted among the layers without it; null takes it out. */
export function placeSheet({ own, name }: SheetPlaces, at: number | null): void {
  if (own !== null) {
    at === null ? takeOutLayer(own) : moveLayer(own, at);
    return;
  }
  if (at !== null) putInLayer(at, { material: name, purpose: "vapour layer" });
}

/** A remedy, made in the file as one step. */
export function tryRemedy(remedy: Remedy): void {
  make((text) => withRemedy(text, remedy, pathOf(), layerIndices().length), null, null);
}

/** The path of something in the build-up that is shown. */
export function pathOf(...keys: readonly (string | number)[]): Path {
  return ["build-ups", answerOf(state())?.at ?? 0, ...keys];
}

/** Layers in a new order, as one step; water that is stated for a layer by its number goes with it. */
export function rearrangeLayers(entries: readonly Entry[], gesture: string | null, layer: number | null): void {
  const change = (text: string): string | null => {
    const moved = rearrange(text, pathOf("layers"), entries);
    return moved === null ? null : withNumbersMoved(moved, entries);
  };
  make(change, gesture, layer);
}

function withNumbersMoved(text: string, entries: readonly Entry[]): string | null {
  const stated = dataAt(dataOf(text), pathOf("trapped water"));
  const paths = Array.isArray(stated)
    ? stated.map((_, index) => pathOf("trapped water", index, "layer"))
    : [pathOf("trapped water", "layer")];
  return paths.reduce<string | null>((made, path) => {
    const number = dataAt(dataOf(text), path);
    if (made === null || typeof number !== "number") return made;
    const to = entries.indexOf(number - 1);
    return to === -1 || to === number - 1 ? made : setValue(made, path, to + 1);
  }, text);
}

/**
 * Makes an edit. One that would leave a file that cannot be read is not made, and told; while the file has problems,
 * the drawing is of another text and no edit is made either.
 */
function make(edit: (text: string) => string | null, gesture: string | null, layer?: number | null): void {
  const { text, readable, tables } = state();
  if (text !== readable) {
    show({ remark: MEND_FIRST });
    return;
  }
  const after = edit(text);
  const reading = after === null ? null : readingOf({ text: after, tables });
  if (reading !== null && !reading.ok) {
    readingOf({ text, tables });
    show({ remark: `Not changed. ${wordProblem(reading.problems[0]!).message}` });
    return;
  }
  write(after, gesture, layer === undefined ? {} : { layer, picking: null });
}

function layerIndices(): number[] {
  return (answerOf(state())?.result.layers ?? []).map((_, index) => index);
}

const MEND_FIRST = "The project file has problems. Put them right below, or undo, and then go on.";
