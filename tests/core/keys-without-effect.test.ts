import { assessProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { changed, problemsOf, projectOf } from "./project-texts.ts";

const AIR = "{ air: 25 mm, ventilation: well }";
const withAir = (keys: string): string => changed(AIR, `{ air: 25 mm, ${keys} }`);
const withTop = (lines: string): string => changed("climate:", `${lines}\nclimate:`);
const withKey = (lines: string): string => changed("    framings:", `    ${lines}\n    framings:`);

/** Notes of keys without effect: where they point, and what they say after the place. */
const notesOf = (text: string): [path: string, message: string][] =>
  projectOf(text).oddities.flatMap(({ code, path, message }) =>
    code === "without-effect" ? [[path, message.replace(/^.*: (?=[a-z ]+ changes? nothing)/, "")]] : [],
  );

/** What was worked out, notes left out. */
const workedOut = (text: string): string => JSON.stringify({ ...assessProject(projectOf(text)), oddities: [] });

describe("a key that changes nothing", () => {
  it.each([
    [
      "openings without an area",
      withKey("openings: 5 m2"),
      withKey("openings: 6 m2"),
      "build-ups[0].openings",
      "openings change nothing: they are taken off the area, and none is given.",
    ],
    [
      "an hour rate without prices",
      withTop("hour rate: 40"),
      withTop("hour rate: 50"),
      "hour rate",
      "hour rate changes nothing: hours stand with the prices of materials, and none are given.",
    ],
    [
      "the emissivity of air whose resistance is stated",
      withAir("ventilation: none, resistance: 0.2 m2 K/W, emissivity: 0.05"),
      withAir("ventilation: none, resistance: 0.2 m2 K/W, emissivity: 0.9"),
      "build-ups[0].layers[3].emissivity",
      "emissivity changes nothing: the resistance is stated.",
    ],
    [
      "the emissivity of well-ventilated air",
      withAir("ventilation: well, emissivity: 0.05"),
      withAir("ventilation: well, emissivity: 0.9"),
      "build-ups[0].layers[3].emissivity",
      "emissivity changes nothing: well-ventilated air counts as outdoor air.",
    ],
    [
      "the resistance of well-ventilated air",
      withAir("ventilation: well, resistance: 0.2 m2 K/W"),
      withAir("ventilation: well, resistance: 0.1 m2 K/W"),
      "build-ups[0].layers[3].resistance",
      "resistance changes nothing: well-ventilated air counts as outdoor air.",
    ],
  ])("is noted: %s", (_, text, other, path, message) => {
    expect(notesOf(text)).toEqual([[path, message]]);
    expect(workedOut(text)).toBe(workedOut(other));
  });

  it.each([
    ["openings of an area", withKey("area: 24 m2\n    openings: 5 m2")],
    ["an hour rate with prices", withTop("hour rate: 40\nprices: [ { material: plywood, per: m2, price: 4 } ]")],
    ["the emissivity of still air", withAir("ventilation: none, emissivity: 0.05")],
    ["the emissivity of slightly ventilated air", withAir("ventilation: slight, emissivity: 0.05")],
    ["ends that go with the ventilation", withAir("ventilation: well, open: one end")],
    ["closed still air", withAir("ventilation: none, open: closed")],
  ])("and one that does is not: %s", (_, text) => {
    expect(notesOf(text)).toEqual([]);
  });

  it("is acknowledged like other notes", () => {
    const { oddities } = projectOf(withTop("hour rate: 40\naccept: [without-effect]"));
    expect(oddities).toMatchObject([{ code: "without-effect", accepted: true }]);
  });

  it("is refused where a change of a variant makes it contradict the others", () => {
    const text = `${changed(AIR, "{ name: cavity, air: 25 mm, ventilation: well, open: both ends }")}    variants: [ { name: closed, changes: [ { set: cavity, ventilation: none } ] } ]\n`;
    expect(problemsOf(text).map(({ code }) => code)).toEqual(["open-contradicts"]);
  });
});
