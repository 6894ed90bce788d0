import { inSpeech } from "../../problems/wording.ts";
import type { PlacementCell, PlacementPosition, PlacementRow, WarmSide } from "../../result/types.ts";

/**
 * Sums up the grid in one sentence: in which positions the layer is acceptable for each warm side, and whether one
 * position suits all cases. A layer on each face is never advised: water that gets between them can hardly dry.
 *
 * @param rows - the grid of a build-up
 * @param farSide - the outer side in words: "outdoors", "the void", "the store"
 * @returns a sentence
 */
export function gridInWords(rows: readonly PlacementRow[], farSide: string): string {
  const judged = rows.filter(({ cells }) => cells.length > 0);
  if (judged.length === 0) return "The room as stated cannot exist in any of these climates.";
  if (placesThatHold(judged).length === placesKnown(judged)) {
    return `Its position does not matter: in all ${judged.length} cases ${mayLie(judged, farSide)}, since other layers hold the vapour back.`;
  }
  const uses = new Set(judged.map(({ use }) => use)).size;
  const groups = grouped(judged, ({ warmSide }) => warmSide);
  const clauses = groups.map(
    ([side, group]) => `${sideInWords(side, farSide)} (${casesInWords(group, uses)}) ${groupInWords(group, farSide)}`,
  );
  const overall = groups.length === 1 ? [] : [overallInWords(judged, farSide)];
  const sentence = `${[...clauses, ...overall].join("; ")}${onBothFaces(judged)}`;
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`;
}

/** A position in words, with the given outer side: "towards outdoors", "left out". */
export function positionInWords(position: PlacementPosition, farSide: string): string {
  if (position === "towards the outer side") return `towards ${farSide}`;
  if (position === "none") return "left out";
  return position === "both faces" ? "on both faces" : position;
}

/** Whether the judgement allows the layer in a position. */
export function holds({ judgement }: PlacementCell): boolean {
  return judgement === "sound" || judgement === "sound with conditions";
}

function sideInWords(side: WarmSide | null, farSide: string): string {
  if (side === "neither" || side === null) return "where nothing drives vapour";
  return `where the warm side is ${side === "inside" ? "the room" : farSide}`;
}

/** The cases by climate; if all uses in a climate are among them, its name is enough. */
function casesInWords(rows: readonly PlacementRow[], uses: number): string {
  const byClimate = grouped(rows, ({ climate }) => climate);
  return byClimate
    .map(([climate, cases]) => {
      const inUses = cases.map(({ use }) => use).join(" and ");
      return uses > 1 && cases.length === uses ? climate : `${climate} ${inUses}`;
    })
    .join(", ");
}

/** The positions that suit every row, or the one that suits most. */
function groupInWords(rows: readonly PlacementRow[], farSide: string): string {
  if (placesThatHold(rows).length > 0) return mayLie(rows, farSide);
  const counts = rows[0]!.cells
    .map(({ position }, index) => ({ position, count: rows.filter(({ cells }) => holds(cells[index]!)).length }))
    .filter(({ position }) => isOnePlace(position));
  const best = counts.reduce((most, one) => (one.count > most.count ? one : most));
  if (best.count === 0) return "no position holds";
  return `no position suits every case; the most frequent is ${positionInWords(best.position, farSide)} (${best.count} of ${rows.length})`;
}

function overallInWords(rows: readonly PlacementRow[], farSide: string): string {
  if (placesThatHold(rows).length === 0) return `no position suits all ${rows.length} cases`;
  return `in all ${rows.length} cases ${mayLie(rows, farSide)}`;
}

/** Why two layers are not advised, if only these suit every row. */
function onBothFaces(rows: readonly PlacementRow[]): string {
  if (placesThatHold(rows).length > 0) return "";
  const holdsThere = rows.every(({ cells }) => cells.some((cell) => !isOnePlace(cell.position) && holds(cell)));
  return holdsThere
    ? " (on both faces no condensation is predicted, but water that gets between them can hardly dry)"
    : "";
}

/** "it may lie towards the room, or be left out, and within the insulation it is acceptable with conditions". */
function mayLie(rows: readonly PlacementRow[], farSide: string): string {
  const sound = placesThatHold(rows, ({ judgement }) => judgement === "sound");
  const conditional = placesThatHold(rows).filter((position) => !sound.includes(position));
  const places = inSpeech(
    conditional.map((position) => positionInWords(position, farSide)),
    "or",
  );
  if (sound.length === 0) return `it is acceptable with conditions ${places}`;
  const advised = soundInWords(sound, conditional.length > 0, placesKnown(rows), farSide);
  return conditional.length === 0 ? advised : `${advised}, and ${places} it is acceptable with conditions`;
}

function soundInWords(sound: readonly PlacementPosition[], hasOthers: boolean, known: number, farSide: string): string {
  if (sound.length === known) return "it may lie in any one position, or be left out";
  const placed = sound.filter((position) => position !== "none").map((position) => positionInWords(position, farSide));
  if (placed.length === 0) return hasOthers ? "it may be left out" : "it must be left out";
  return `it may lie ${inSpeech(placed, "or")}${sound.includes("none") ? ", or be left out" : ""}`;
}

function isOnePlace(position: PlacementPosition): boolean {
  return position !== "both faces";
}

function placesKnown(rows: readonly PlacementRow[]): number {
  return rows[0]!.cells.filter(({ position }) => isOnePlace(position)).length;
}

/** The positions, "left out" among them, whose cells pass in every row. */
function placesThatHold(
  rows: readonly PlacementRow[],
  does: (cell: PlacementCell) => boolean = holds,
): PlacementPosition[] {
  return rows[0]!.cells.flatMap(({ position }, index) =>
    isOnePlace(position) && rows.every(({ cells }) => does(cells[index]!)) ? [position] : [],
  );
}

/** Groups rows by a key, in the order in which the keys first occur. */
function grouped<Key>(rows: readonly PlacementRow[], keyOf: (row: PlacementRow) => Key): [Key, PlacementRow[]][] {
  const groups = new Map<Key, PlacementRow[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return [...groups];
}
