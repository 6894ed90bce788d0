import { problemInText, readProject, wordProblem } from "@warmside/core";
import fc from "fast-check";
import { parse } from "yaml";
import {
  CONTRACT_PROJECT,
  EVERY_KEY,
  FILES_OF_EVERY_KEY,
  SMALL_PROJECT,
  suppliesOf,
} from "../../core/project-texts.ts";

/** Pieces that upset a text: signs of YAML, units that do not fit, numbers past all limits, letters of other scripts. */
const UPSETTING = [
  ":", ": ", "{", "}", "[", "]", ",", "- ", "\n", "\t", "'", '"', "#", "&a ", "*a", "!!x ", "%", "|", "> ", "? ", "\\", "\0", "\uFEFF", "\uFFFD",
  "__proto__: ", "0", "-1", "1e308", "1e400", ".inf", ".nan", "0x10", "true", "null", "~", "１２", "½", "0,5", " kg", " K", " °C", " %", " m",
  "constructor", "𝟙", "\u202e", "\ud800", "mineral wool slab", "layers:", "  ",
]; // biome-ignore format: pieces side by side

/** Values that upset data: of other kinds, of other quantities, at the limits of what can be. */
const ODD_VALUES: readonly unknown[] = [
  null, true, false, 0, -1, 3, 1e308, 0.5, "", " ", "x", "12", "5 kg", "0 mm", "1e-6 m", "3 m", "1e400 mm", "100 %", "1 %", "20 °C", "60 °C", "-60 °C",
  "2 K", "0.5 /h", "class 5", "indoor", "outdoors", "ground", "void", "store", "steel", "breather membrane", "well", "none", [], {}, [[]], ["20 °C"],
  Array(12).fill("50 %"), Array(13).fill("50 %"), { name: "x" }, { name: "x", sd: "1 m" }, "a".repeat(500), "\u202e<script>", "../../x", "my.csv",
]; // biome-ignore format: values side by side

/** One change of a text, at a place between 0 and 1 of its length. */
const textChange = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  until: fc.integer({ min: 0, max: 12 }),
  by: fc.oneof(fc.constantFrom(...UPSETTING), fc.string({ maxLength: 6 }), fc.constant("")),
});

const changedText: fc.Arbitrary<string> = fc
  .tuple(
    fc.constantFrom<string>(SMALL_PROJECT, CONTRACT_PROJECT, EVERY_KEY),
    fc.array(textChange, { minLength: 1, maxLength: 2 }),
  )
  .map(([text, changes]) =>
    changes.reduce<string>((soFar, { at, until, by }) => {
      const start = Math.floor(at * soFar.length);
      return soFar.slice(0, start) + by + soFar.slice(start + until);
    }, text),
  );

/** One change of data: the place by its number among all places, and what is done there. */
const dataChange = fc.record({
  place: fc.nat(),
  kind: fc.constantFrom("replace", "remove", "repeat", "rename"),
  value: fc.constantFrom(...ODD_VALUES),
});

const changedData = fc
  .tuple(fc.constantFrom(SMALL_PROJECT, EVERY_KEY), fc.array(dataChange, { minLength: 1, maxLength: 3 }))
  .map(([text, changes]) => {
    const data: unknown = parse(text);
    for (const { place, kind, value } of changes) {
      const places = placesIn(data);
      const { holder, key } = places[place % places.length]!;
      if (kind === "replace") holder[key] = value;
      else if (kind === "repeat" && Array.isArray(holder)) holder.push(holder[Number(key)]);
      else if (kind === "remove") Array.isArray(holder) ? holder.splice(Number(key), 1) : delete holder[key];
      else if (!Array.isArray(holder)) holder[`${key}s`] = holder[key];
    }
    return JSON.stringify(data);
  });

function placesIn(data: unknown): { holder: Record<string, unknown>; key: string }[] {
  if (typeof data !== "object" || data === null) return [];
  const holder = data as Record<string, unknown>;
  return Object.keys(holder).flatMap((key) => [{ holder, key }, ...placesIn(holder[key])]);
}

/**
 * Changes valid files at random, as texts and as data: each must end as a project or as problems in words, and never
 * in an exception.
 *
 * @param runs - how many files
 * @returns how many were still projects, and how many were refused
 */
export function readMutated(runs: number): { projects: number; refused: number } {
  const count = { projects: 0, refused: 0 };
  fc.assert(
    fc.property(fc.oneof(changedText, changedData), (text) => {
      const reading = readProject(text, suppliesOf(FILES_OF_EVERY_KEY));
      if (reading.ok) {
        count.projects += 1;
        return;
      }
      count.refused += 1;
      if (reading.problems.length === 0) throw new Error("refused without a problem");
      for (const problem of reading.problems) problemInText(wordProblem(problem));
    }),
    { numRuns: runs, seed: runs },
  );
  return count;
}
