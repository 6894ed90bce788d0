import { requireObject } from "../require.ts";
import { pathInText } from "./path-in-text.ts";
import type { Problem, WordedProblem } from "./types.ts";
import { CLIMATE_WORDINGS } from "./word-climate-problems.ts";
import { LAYER_WORDINGS } from "./word-layer-problems.ts";
import { MATERIAL_WORDINGS } from "./word-material-problems.ts";
import { QUANTITY_WORDINGS } from "./word-quantity-problems.ts";
import { RECORD_WORDINGS } from "./word-record-problems.ts";
import { ROOM_WORDINGS } from "./word-room-problems.ts";
import { SHAPE_WORDINGS } from "./word-shape-problems.ts";
import { TABLE_WORDINGS } from "./word-table-problems.ts";
import { TEXT_WORDINGS } from "./word-text-problems.ts";
import { VARIANT_WORDINGS } from "./word-variant-problems.ts";
import { YAML_WORDINGS } from "./word-yaml-problems.ts";
import { factsOf, type Wordings } from "./wording.ts";

/** Every wording there is, by code. */
export const WORDINGS: Wordings = {
  ...TEXT_WORDINGS,
  ...YAML_WORDINGS,
  ...SHAPE_WORDINGS,
  ...QUANTITY_WORDINGS,
  ...LAYER_WORDINGS,
  ...MATERIAL_WORDINGS,
  ...ROOM_WORDINGS,
  ...TABLE_WORDINGS,
  ...VARIANT_WORDINGS,
  ...CLIMATE_WORDINGS,
  ...RECORD_WORDINGS,
};

/**
 * Puts a problem into words.
 *
 * @param problem - as data
 * @returns what is wrong and where, what belongs there, what was found, the likely slip and what to write
 * @throws RangeError when its code has no wording
 */
export function wordProblem(problem: Problem): WordedProblem {
  requireObject(problem, "problem", ["code", "path", "details"]);
  const wording = WORDINGS[problem.code];
  if (wording === undefined) throw new RangeError(`no wording for the problem ${problem.code}`);
  const said = wording(factsOf(problem));
  const place = placeOf(problem);
  return {
    code: problem.code,
    line: problem.position?.line ?? null,
    column: problem.position?.column ?? null,
    path: pathInText(problem.path),
    message: `${place === "" ? "" : `${place}: `}${said.says}.`,
    expected: said.expected ?? null,
    received: problem.received,
    likelySlip: said.likelySlip ? `${said.likelySlip}.` : null,
    write: [said.write ?? []].flat().filter((text) => text !== ""),
  };
}

/**
 * A worded problem as one paragraph, as it is printed.
 *
 * @param worded - from `wordProblem`
 * @returns such as "line 12: build-up 1, Wall, layer 3, mineral wool slab: thickness is missing a unit. Expected a length, for example 140 mm; found 140. Write `140 mm`."
 */
export function problemInText(worded: WordedProblem): string {
  requireObject(worded, "worded", ["message", "expected"]);
  const { line, message, expected, received, likelySlip, write } = worded;
  const sentences = [line === null ? message : `line ${line}: ${message}`];
  const isRepeated = received === null || message.includes(received);
  if (expected !== null) sentences.push(`Expected ${expected}${isRepeated ? "" : `; found ${received}`}.`);
  if (likelySlip !== null) sentences.push(likelySlip);
  if (write.length > 0) sentences.push(`Write ${write.map((text) => `\`${text}\``).join(" or ")}.`);
  return sentences.join(" ");
}

/** The place in the project, or the table and its row. */
function placeOf({ details }: Problem): string {
  const { place, file, name } = details;
  if (typeof file !== "string") return typeof place === "string" ? place : "";
  return typeof name === "string" && name !== "" ? `table ${file}, row ${name}` : `table ${file}`;
}
