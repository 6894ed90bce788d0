import { readFileSync } from "node:fs";
import { join } from "node:path";
import { assessProject, problemInText, projectJsonSchema, readProject, wordProblem } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { shortAnswers } from "../../packages/report/src/cli/answers/short-answer.ts";
import type { Line } from "../../packages/report/src/cli/lines.ts";
import { renderReport } from "../../packages/report/src/index.ts";
import { TERMS } from "../../packages/report/src/terms/terms.ts";
import { suppliesOf } from "../core/project-texts.ts";
import { BAD_JUNCTIONS } from "../hostile/project-files/junctions.ts";
import { BAD_KEYS } from "../hostile/project-files/keys.ts";
import { BAD_LAYERS } from "../hostile/project-files/layers.ts";
import { BAD_QUANTITIES } from "../hostile/project-files/quantities.ts";
import { BAD_ROOMS } from "../hostile/project-files/rooms.ts";
import { BAD_TABLES } from "../hostile/project-files/tables.ts";
import { BAD_TEXTS } from "../hostile/project-files/texts.ts";
import { BAD_VARIANTS } from "../hostile/project-files/variants.ts";
import { caseFiles, readCase } from "../practice/cases.ts";
import { commandInProcess } from "./command-in-process.ts";
import { demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";
import { visibleText } from "./page-text.ts";
import { PHRASES, quotedPhrasesIn } from "./quoted-phrases.ts";

const BAD_FILES = [
  ...BAD_TEXTS,
  ...BAD_KEYS,
  ...BAD_QUANTITIES,
  ...BAD_LAYERS,
  ...BAD_JUNCTIONS,
  ...BAD_ROOMS,
  ...BAD_TABLES,
  ...BAD_VARIANTS,
];

const COMMANDS = [
  "assess",
  "page",
  "check",
  "place",
  "compare",
  "vary",
  "spread",
  "climate",
  "climate make",
  "climate list",
  "climate near",
  "materials",
  "explain",
  "new",
  "schema",
  "completion",
];

/** Lines for a terminal as plain text. */
function plain(lines: readonly Line[]): string {
  return lines
    .map(({ pieces }) => pieces.map((piece) => (typeof piece === "string" ? piece : piece.text)).join(""))
    .join("\n");
}

describe("no quoted phrase comes back", () => {
  it.each([
    ["the demo", demoResult],
    ["a project with every part", everyPart],
  ])("in the pages of %s", async (_, result) => {
    expect(quotedPhrasesIn(visibleText(await renderReport(result(), { annex: true })))).toEqual([]);
  });

  it("in a finding, an advice, a remedy or a terminal answer of the practice cases", () => {
    const found = caseFiles().flatMap((file) => {
      const result = assessProject(readCase(file));
      const texts = result.buildUps.flatMap(
        ({ findings, remedies, remedySearch, judgement, sensitivity, vapourLayer }) => [
          ...findings.flatMap(({ message, short, advice, source }) => [message, short, advice ?? "", source]),
          ...remedies.map(({ change }) => change),
          ...sensitivity.map(({ message }) => message),
          ...judgement.conditions,
          remedySearch ?? "",
          vapourLayer?.message ?? "",
        ],
      );
      return [...texts, plain(shortAnswers(result))].flatMap(quotedPhrasesIn).map((phrase) => `${file}: ${phrase}`);
    });
    expect([...new Set(found)]).toEqual([]);
  });

  it("in a problem of a bad project file", () => {
    const found = BAD_FILES.flatMap(({ text, files = {} }) => {
      const reading = readProject(text, suppliesOf(files));
      return reading.ok
        ? []
        : reading.problems.flatMap((problem) => quotedPhrasesIn(problemInText(wordProblem(problem))));
    });
    expect([...new Set(found)]).toEqual([]);
  });

  it("in a term that is explained", () => {
    expect(TERMS.flatMap(({ says }) => says.flatMap(quotedPhrasesIn))).toEqual([]);
  });

  it("in the schema's descriptions", () => {
    expect(quotedPhrasesIn(JSON.stringify(projectJsonSchema()))).toEqual([]);
  });

  const command = commandInProcess();
  it("in the help of a command, or in a file that `new` writes", async () => {
    const texts: string[] = [];
    for (const name of COMMANDS) texts.push((await command.run([...name.split(" "), "--help"])).out);
    const folder = command.folder();
    for (const element of ["wall", "roof", "floor", "partition"]) {
      await command.run(["new", "--element", element], { cwd: folder });
      texts.push(readFileSync(join(folder, `my-${element}.yaml`), "utf8"));
    }
    expect(texts.every((text) => text.length > 100)).toBe(true);
    expect(texts.flatMap(quotedPhrasesIn)).toEqual([]);
  });

  it("is seen where it stands", () => {
    expect(PHRASES.length).toBeGreaterThan(60);
    expect(quotedPhrasesIn("Guidance\u00a0refuses\n that.")).toHaveLength(1);
    expect(quotedPhrasesIn("It dries out.")).toEqual([]);
  });
});
