import { problemInText, readQuantity, wordProblem } from "@warmside/core";

/** From the thinnest to the thickest [m]. */
export interface ThicknessRange {
  from: number;
  to: number;
}

/**
 * Reads a range of thicknesses.
 *
 * @param written - two thicknesses with two dots between, such as `0 mm..100 mm`
 * @returns the range, or what is wrong in a sentence
 */
export function readRange(written: string): ThicknessRange | string {
  const ends = written.split("..");
  if (ends.length !== 2) return `A range is two thicknesses with two dots between, for example "0 mm..100 mm".`;
  const [from, to] = ends.map((end) => readThickness(end)) as [number | string, number | string];
  if (typeof from === "string") return from;
  if (typeof to === "string") return to;
  return to > from ? { from, to } : "Give the smaller thickness first.";
}

/**
 * Reads the step of a range.
 *
 * @param written - a thickness such as `10 mm`
 * @returns the step [m], or what is wrong in a sentence
 */
export function readStep(written: string): number | string {
  const step = readThickness(written);
  return step === 0 ? "The step must be more than 0 mm." : step;
}

/** A thickness as in the file; on a command line the space before the unit may be omitted, and 0 leaves the layer out. */
function readThickness(written: string): number | string {
  const plain = written.trim().replace(/^([\d.]+)([a-z])/i, "$1 $2");
  if (/^0(\.0+)? (mm|cm|m)$/.test(plain)) return 0;
  const reading = readQuantity(plain, "thickness");
  if (reading.ok) return reading.value;
  const said = problemInText(wordProblem({ ...reading.problems[0]!, position: null }));
  return `"${written.trim()}" is not a thickness: ${said}`;
}
