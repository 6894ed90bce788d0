/** One measured number. */
export interface Measure {
  /** Short name, the same in the table and in the JSON object. */
  name: string;
  value: number;
  unit: "times" | "bytes" | "s" | "µs" | "1/s";
  /** What it should be: at most or at least so much; null where it is only told. */
  goal: { atMost: number } | { atLeast: number } | null;
  /** What it is, in a sentence. */
  what: string;
}

/**
 * Measures as a table for a terminal.
 *
 * @param measures - in order
 * @returns a line a measure: name, value, goal, whether it is met, what it is
 */
export function inTable(measures: readonly Measure[]): string {
  const rows = measures.map((measure) => [
    measure.name,
    `${shown(measure.value)} ${measure.unit}`,
    goalInWords(measure),
    isMet(measure) === null ? "" : isMet(measure) ? "met" : "missed",
    measure.what,
  ]);
  const widths = [0, 1, 2, 3].map((column) => Math.max(...rows.map((row) => row[column]!.length)));
  return rows
    .map(
      (row) =>
        `${row
          .map((cell, column) => cell.padEnd(widths[column] ?? 0))
          .join("  ")
          .trimEnd()}\n`,
    )
    .join("");
}

/** Whether the goal is met; null without one. */
export function isMet({ goal, value }: Pick<Measure, "goal" | "value">): boolean | null {
  if (goal === null) return null;
  return "atMost" in goal ? value <= goal.atMost : value >= goal.atLeast;
}

function goalInWords({ goal }: Measure): string {
  if (goal === null) return "";
  return "atMost" in goal ? `≤ ${goal.atMost}` : `≥ ${goal.atLeast}`;
}

function shown(value: number): string {
  return value >= 100 ? Math.round(value).toString() : value.toPrecision(3);
}
