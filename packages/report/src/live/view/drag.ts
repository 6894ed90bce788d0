import { MILLIMETRES_PER_METRE } from "../../numbers.ts";
import type { Drawn } from "../draw/section.tsx";
import { moveLayer, setThickness } from "../state/gestures.ts";
import { show, state } from "../state/store.ts";

/** A layer that is held, or its outer edge. */
export interface Drag {
  kind: "layer" | "edge";
  layer: number;
  /** Name of the gesture: all of it is one step to undo. */
  gesture: string;
  /** Where it was taken, along the section [px], and whether it has moved since. */
  from: number;
  isMoving: boolean;
  /** [m] */
  thickness: number;
  pixelsPerMetre: number;
  /** What was drawn before: its lines stay faint. */
  before: Drawn;
}

let held: Drag | null = null;
let drawn: Drawn | null = null;
let count = 0;

/** What is held; null for nothing. */
export function dragOf(): Drag | null {
  return held;
}

/** Keeps what is drawn, so that a gesture knows what it takes hold of. */
export function remember(now: Drawn): void {
  drawn = now;
}

/** Takes hold of what lies under the pointer in the section: a sheet close by, else the layer. */
export function take(event: PointerEvent): void {
  if (drawn === null) return;
  const layer = layerUnder(alongOf(event));
  if (layer === null) return;
  // A finger on a lying section scrolls the page; its tabs are what moves layers.
  if (event.pointerType === "touch" && drawn.layout.lies) {
    show({ layer });
    return;
  }
  begin(event, "layer", layer);
}

/** Takes hold of a layer, to move it. */
export function takeLayer(event: PointerEvent, layer: number): void {
  begin(event, "layer", layer);
}

/** Takes hold of the edge of a layer, to change its thickness. */
export function takeEdge(event: PointerEvent, layer: number): void {
  begin(event, "edge", layer);
}

/** Goes on with the gesture: the layer follows, or its thickness does. */
export function pull(event: PointerEvent): void {
  if (held === null || drawn === null) return;
  const along = alongOf(event);
  if (!held.isMoving && Math.abs(along - held.from) < LEAST_MOVE) return;
  held.isMoving = true;
  const { direction, bands } = drawn.layout;
  if (held.kind === "edge") {
    const wanted = (held.thickness + (direction * (along - held.from)) / held.pixelsPerMetre) * MILLIMETRES_PER_METRE;
    const step = stepFor(wanted);
    setThickness(held.layer, Math.max(step, Math.round(wanted / step) * step), held.gesture);
    return;
  }
  const to = bands.filter(({ from, to: end }, index) => {
    return index !== held!.layer && direction * ((from + end) / 2) < direction * along;
  }).length;
  if (to === held.layer) return;
  const before = state().text;
  moveLayer(held.layer, to, held.gesture);
  if (state().text !== before) held.layer = to;
}

/** Lets go of what is held. */
export function endDrag(): void {
  if (held === null) return;
  held = null;
  show({});
}

/** By how much a thickness changes at a time [mm]. */
export function stepFor(thickness: number): number {
  return thickness >= 40 ? 5 : thickness >= 10 ? 1 : 0.5;
}

function begin(event: PointerEvent, kind: Drag["kind"], layer: number): void {
  if (drawn === null || event.button !== 0) return;
  (event.currentTarget as Element).setPointerCapture(event.pointerId);
  count += 1;
  held = {
    kind,
    layer,
    gesture: `drag ${count}`,
    from: alongOf(event),
    isMoving: false,
    thickness: drawn.result.layers[layer]!.thickness,
    pixelsPerMetre: drawn.layout.pixelsPerMetre,
    before: drawn,
  };
  show({ layer });
}

function alongOf(event: PointerEvent): number {
  const box = document.querySelector(".stage")!.getBoundingClientRect();
  return drawn?.layout.lies ? event.clientY - box.top : event.clientX - box.left;
}

function layerUnder(along: number): number | null {
  const { bands } = drawn!.layout;
  const { layers } = drawn!.result;
  const close = bands
    .map(({ from }, index) => ({ index, off: Math.abs(from - along) }))
    .filter(({ index, off }) => layers[index]!.type === "sheet" && off < NEAR);
  if (close.length > 0) return close.reduce((one, other) => (other.off < one.off ? other : one)).index;
  const under = bands.findIndex(({ from, to }) => along >= Math.min(from, to) && along < Math.max(from, to));
  return under === -1 ? null : under;
}

/** A pointer that moves less than this chooses, and does not move [px]. */
const LEAST_MOVE = 5;
/** A sheet is taken from this close [px]. */
const NEAR = 9;
