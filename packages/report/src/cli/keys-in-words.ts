import type { ProjectKey } from "@warmside/core";
import { groups, type Line, labelled, line, paragraph } from "./lines.ts";

/**
 * The keys of the project file that go by a word.
 *
 * @param keys - all there are
 * @param word - a key, or a thing and its key, for example "layer thickness"; case, hyphens and spaces forgiven
 * @returns those keys; the same word may be a key of several things
 */
export function keysCalled(keys: readonly ProjectKey[], word: string): ProjectKey[] {
  const wanted = plain(word);
  return keys.filter(({ key, path }) => plain(key) === wanted || plain(path) === wanted);
}

/** One key: where it stands, what it means and what may be written. */
export function keyInWords({ key, thing, meaning, isNeeded, takes, usual, example }: ProjectKey): Line[] {
  const where = thing === "" ? "key at the top of the project file" : `key of ${thing.replace(/\//g, ", ")}`;
  return [
    line({ colour: "bold", text: key }, `, ${where}${isNeeded ? ", required" : ""}`),
    paragraph(`${meaning}.`, 2),
    ...labelled("takes", takes.replace(/`/g, "")),
    ...(usual === null ? [] : labelled("left out", usual)),
    ...(example === null ? [] : labelled("example", example)),
  ];
}

/** Every key, thing by thing. */
export function listOfKeys(keys: readonly ProjectKey[]): Line[] {
  const things = [...new Set(keys.map(({ thing }) => thing))];
  const told = things.map((thing) => {
    const names = keys.filter((one) => one.thing === thing).map(({ key, isNeeded }) => (isNeeded ? `${key}*` : key));
    const heading = thing === "" ? "Top of the file" : thing.replace(/\//g, ", ");
    return [line({ colour: "bold", text: heading }), paragraph(names.join(", "), 2)];
  });
  return groups(...told, [paragraph("* required. Explain one: warmside explain KEY.")]);
}

function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s/_-]+/g, " ")
    .trim();
}
