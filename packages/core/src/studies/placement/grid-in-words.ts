import type { PlacementCell, PlacementPosition, PlacementRow } from "../../result/types.ts";

/**
 * What the grid shows, in one sentence computed from it: in which positions the layer does on each warm side, and whether
 * one does everywhere.
 *
 * @param rows - the grid of a build-up
 * @param farSide - the far side in words: "outdoors", "the void", "the store"
 * @param room - the room's name
 * @returns a sentence
 */
export function gridInWords(rows: readonly PlacementRow[], farSide: string, room: string): string {
  const judged = rows.filter(({ cells }) => cells.length > 0);
  if (judged.length === 0) return "In none of these climates can the room be as it is stated.";
  if (positionsThatHold(judged).length === judged[0]!.cells.length) {
    return `Its place does not matter: in all ${judged.length} cases it may lie anywhere, or be left out, since other layers do its work.`;
  }
  const uses = new Set(judged.map(({ use }) => use)).size;
  const groups = grouped(judged, ({ warmSide }) => warmSide);
  const clauses = groups.map(
    ([side, group]) =>
      `${sideInWords(side, farSide, room)} (${casesInWords(group, uses)}) ${groupInWords(group, farSide)}`,
  );
  const overall = groups.length === 1 ? [] : [overallInWords(judged, farSide)];
  const sentence = [...clauses, ...overall].join("; ");
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`;
}

/** A position in words, beside a far side: "towards outdoors", "left out". */
export function positionInWords(position: PlacementPosition, farSide: string): string {
  if (position === "towards the far side") return `towards ${farSide}`;
  if (position === "none") return "left out";
  return position === "both faces" ? "on both faces" : position;
}

/** Whether a judgement lets the layer lie there. */
export function holds({ judgement }: PlacementCell): boolean {
  return judgement === "sound" || judgement === "sound with conditions";
}

function sideInWords(side: string | null, farSide: string, room: string): string {
  if (side === "neither" || side === null) return "where nothing drives vapour";
  return `where the warm side is ${side === room ? "the room" : farSide}`;
}

/** The cases by climate; where a climate comes in all its uses, its name is enough. */
function casesInWords(rows: readonly PlacementRow[], uses: number): string {
  const byClimate = grouped(rows, ({ climate }) => climate);
  return byClimate
    .map(([climate, cases]) => {
      const inUses = cases.map(({ use }) => use).join(" and ");
      return uses > 1 && cases.length === uses ? climate : `${climate} ${inUses}`;
    })
    .join(", ");
}

/** Positions that hold in every row, or the one that holds in most. */
function groupInWords(rows: readonly PlacementRow[], farSide: string): string {
  const all = positionsThatHold(rows);
  if (all.length > 0) return mayLie(all, rows[0]!.cells.length, farSide);
  const counts = rows[0]!.cells.map(({ position }, index) => ({
    position,
    count: rows.filter(({ cells }) => holds(cells[index]!)).length,
  }));
  const best = counts.reduce((most, one) => (one.count > most.count ? one : most));
  if (best.count === 0) return "no position holds";
  return `no position holds in every case, most often ${positionInWords(best.position, farSide)} (${best.count} of ${rows.length})`;
}

function overallInWords(rows: readonly PlacementRow[], farSide: string): string {
  const everywhere = positionsThatHold(rows);
  if (everywhere.length === 0) return `no position holds in all ${rows.length} cases`;
  return `in all ${rows.length} cases ${mayLie(everywhere, rows[0]!.cells.length, farSide)}`;
}

/** "it may lie towards the room or on both faces, or be left out". */
function mayLie(positions: readonly PlacementPosition[], known: number, farSide: string): string {
  if (positions.length === known) return "it may lie anywhere, or be left out";
  const placed = positions
    .filter((position) => position !== "none")
    .map((position) => positionInWords(position, farSide));
  const mayBeLeftOut = positions.includes("none");
  if (placed.length === 0) return "it has to be left out";
  const places = placed.length === 1 ? placed[0]! : `${placed.slice(0, -1).join(", ")} or ${placed[placed.length - 1]}`;
  return `it may lie ${places}${mayBeLeftOut ? ", or be left out" : ""}`;
}

function positionsThatHold(rows: readonly PlacementRow[]): PlacementPosition[] {
  return rows[0]!.cells.flatMap(({ position }, index) =>
    rows.every(({ cells }) => holds(cells[index]!)) ? [position] : [],
  );
}

/** Rows by a key, in the order in which the keys come up. */
function grouped<Key>(rows: readonly PlacementRow[], keyOf: (row: PlacementRow) => Key): [Key, PlacementRow[]][] {
  const groups = new Map<Key, PlacementRow[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return [...groups];
}
