import { requireObject } from "../require.ts";
import { pathInText } from "./path-in-text.ts";
import type { Problem, WordedProblem } from "./types.ts";
import type { Facts } from "./wording.ts";
import { WORDINGS } from "./wordings.ts";

/**
 * Puts a problem into words.
 *
 * @param problem - as data
 * @returns what is wrong and where, what belongs there, what was found, the likely slip and what to write
 * @throws RangeError when its code has no wording
 */
export function wordProblem(problem: Problem): WordedProblem {
  requireObject(problem, "problem", ["code", "path", "details"]);
  if (!Object.hasOwn(WORDINGS, problem.code)) throw new RangeError(`no wording for the problem ${problem.code}`);
  const said = WORDINGS[problem.code](factsOf(problem));
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
 * @returns for example "line 12: build-up 1, Wall, layer 3, mineral wool slab: thickness is missing a unit. Expected a length, for example 140 mm; found 140. Write `140 mm`."
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

/** The place in the project file, or the table and its row. */
function placeOf({ details }: Problem): string {
  const { place, file, name } = details;
  if (typeof file !== "string") return typeof place === "string" ? place : "";
  return typeof name === "string" && name !== "" ? `table ${file}, row ${name}` : `table ${file}`;
}

/**
 * Prepares the facts that a wording can use.
 *
 * @param problem - as data
 * @returns its details as texts and lists
 */
function factsOf(problem: Problem): Facts {
  const { details } = problem;
  return {
    subject: typeof details.subject === "string" ? details.subject : "this",
    received: problem.received ?? "nothing",
    text: (key) => {
      const value = details[key];
      return value === null || value === undefined || Array.isArray(value) ? "" : String(value);
    },
    list: (key) => {
      const value = details[key];
      return Array.isArray(value) ? value : [];
    },
  };
}
