import { problemInText, readProject, wordProblem } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { LAYER_WORDINGS } from "../../../packages/core/src/problems/word-layer-problems.ts";
import { MATERIAL_WORDINGS } from "../../../packages/core/src/problems/word-material-problems.ts";
import { QUANTITY_WORDINGS } from "../../../packages/core/src/problems/word-quantity-problems.ts";
import { ROOM_WORDINGS } from "../../../packages/core/src/problems/word-room-problems.ts";
import { SHAPE_WORDINGS } from "../../../packages/core/src/problems/word-shape-problems.ts";
import { TABLE_WORDINGS } from "../../../packages/core/src/problems/word-table-problems.ts";
import { TEXT_WORDINGS } from "../../../packages/core/src/problems/word-text-problems.ts";
import { VARIANT_WORDINGS } from "../../../packages/core/src/problems/word-variant-problems.ts";
import { YAML_WORDINGS } from "../../../packages/core/src/problems/word-yaml-problems.ts";
import { suppliesOf } from "../../core/project-texts.ts";
import type { BadFile } from "./bad-file.ts";
import { BAD_JUNCTIONS } from "./junctions.ts";
import { BAD_KEYS } from "./keys.ts";
import { BAD_LAYERS } from "./layers.ts";
import { BAD_QUANTITIES } from "./quantities.ts";
import { BAD_ROOMS } from "./rooms.ts";
import { BAD_TABLES } from "./tables.ts";
import { BAD_TEXTS } from "./texts.ts";
import { BAD_VARIANTS } from "./variants.ts";

const SUBJECTS: Readonly<Record<string, readonly BadFile[]>> = {
  "texts that are no project": BAD_TEXTS,
  "keys missing, misspelt or of the wrong kind": BAD_KEYS,
  "quantities that are none or cannot be": BAD_QUANTITIES,
  "layers, materials and framing": BAD_LAYERS,
  "junctions, channels and tape": BAD_JUNCTIONS,
  "rooms, and what build-ups face": BAD_ROOMS,
  "tables of materials and prices": BAD_TABLES,
  "variants, their changes, and prices in the project file": BAD_VARIANTS,
};
const ALL = Object.values(SUBJECTS).flat();

/** A climate table that tells no height, for the project that asks for a correction. */
const FLAT_CLIMATE = `month,temperature_C,relative_humidity_pct\n${[
  "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December",
].map((month) => `${month},9.0,80.0`).join("\n")}\n`; // biome-ignore format: twelve names

describe.each(Object.entries(SUBJECTS))("bad files: %s", (_, files) => {
  it.each(files.map((file) => [file.title, file] as const))("%s", (_title, { text, files: tables = {}, problems }) => {
    const reading = readProject(text, suppliesOf({ "flat.csv": FLAT_CLIMATE, ...tables }));
    const worded = reading.ok ? [] : reading.problems.map(wordProblem);
    expect(worded.map(({ line, code }) => ({ line, code }))).toEqual(
      problems.map(({ line, code }) => ({ line, code })),
    );
    for (const [index, problem] of worded.entries()) {
      const printed = problemInText(problem);
      expect(printed).toContain(problems[index]!.says);
      expect(problem.expected).not.toBeNull();
      expect(printed).not.toMatch(/undefined|NaN\b|\[object|\bat .*:\d+:\d+/);
    }
  });
});

describe("the catalogue", () => {
  it("has at least 150 bad files, each with a title of its own in its subject", () => {
    expect(ALL.length).toBeGreaterThanOrEqual(150);
    for (const files of Object.values(SUBJECTS))
      expect(new Set(files.map(({ title }) => title)).size).toBe(files.length);
  });

  it("meets every problem that a project file or a table of materials or prices can have", () => {
    const wordings = [
      TEXT_WORDINGS,
      YAML_WORDINGS,
      MATERIAL_WORDINGS,
      SHAPE_WORDINGS,
      QUANTITY_WORDINGS,
      LAYER_WORDINGS,
      ROOM_WORDINGS,
      TABLE_WORDINGS,
      VARIANT_WORDINGS,
    ];
    const met = new Set(ALL.flatMap(({ problems }) => problems.map(({ code }) => code)));
    expect(wordings.flatMap((words) => Object.keys(words)).filter((code) => !met.has(code))).toEqual([]);
  });
});
