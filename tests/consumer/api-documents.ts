import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT } from "./consumer-folder.ts";

/** What the document tool says of a name; only the kinds used here. */
interface Told {
  name: string;
  kind: number;
  comment?: { summary: { text: string }[] };
  children?: Told[];
  signatures?: Told[];
  parameters?: Told[];
  type?: ToldType;
  inheritedFrom?: unknown;
}

interface ToldType {
  type: string;
  name?: string;
  types?: ToldType[];
  elementType?: ToldType;
  target?: ToldType;
  declaration?: Told;
}

const PROPERTY = 1024;

/** A unit in brackets; or that it is counted, or an index, or a place in a list. */
const UNIT_OR_COUNT = /\[[^\]]+\]|0-based|from [01]\b|\b(index|indices|count|counted|how many|number of)\b/i;

/** What the set-up has made: its documents, and what they are made from. */
const documentsOf = (entry: string): string => readFileSync(join(ROOT, "packages/core/docs", `${entry}.md`), "utf8");
const model = (): Told => JSON.parse(readFileSync(join(ROOT, ".build/core-documents.json"), "utf8"));

/** Names under a heading of the API report. */
function namesOf(heading: string): string[] {
  const report = readFileSync(join(ROOT, "packages/core/api.md"), "utf8");
  const part = report.slice(report.indexOf(`## ${heading}\n`)).split("\n## ")[0]!;
  return [...part.matchAll(/^(?:const|function|interface|type|class) (\w+)/gm)].map(([, name]) => name!);
}

describe("the documents of the core's public names", () => {
  it.each([
    ["index", "@warmside/core"],
    ["formulas", "@warmside/core/formulas"],
    ["field", "@warmside/core/field"],
  ])("%s has a heading for every name of the API report", (entry, heading) => {
    const titles = documentsOf(entry).matchAll(/^### ([\w\\]+)/gm);
    const headings = new Set([...titles].map(([, title]) => title!.replaceAll("\\", "")));
    const names = namesOf(heading);
    expect(names.length).toBeGreaterThan(10);
    expect(names.filter((name) => !headings.has(name))).toEqual([]);
  });

  it("a formula has its unit, range, error, source and example", () => {
    const text = documentsOf("index").split("### dewPoint()")[1]!.split("\n***")[0]!;
    for (const part of ["[Pa]", "[°C]", "#### Throws", "RangeError", "ISO 13788", "#### Example"])
      expect(text).toContain(part);
  });

  it("every number has a unit, or is said to be counted or an index", () => {
    const told = model();
    const numbers = numbersIn(told, told.name, false);
    expect(numbers.length).toBeGreaterThan(700);
    expect(numbers.filter(({ isTold }) => !isTold).map(({ place }) => place)).toEqual([]);
  });
});

/** Every property and parameter that is a number, or a list of them. One of a thing written in place may be told with that. */
function numbersIn(told: Told, place: string, isToldAbove: boolean): { place: string; isTold: boolean }[] {
  const isTold = UNIT_OR_COUNT.test(textOf(told));
  const own =
    told.kind === PROPERTY && isNumber(told.type) && told.inheritedFrom === undefined
      ? [{ place, isTold: isTold || isToldAbove }]
      : [];
  const within = (others: readonly Told[] | undefined, above: boolean) =>
    (others ?? []).flatMap((other) => numbersIn(other, `${place}.${other.name}`, above));
  const inPlace = writtenInPlace(told.type);
  const parameters = (told.signatures ?? []).flatMap((signature) =>
    (signature.parameters ?? [])
      .filter(({ type }) => isNumber(type))
      .map((one) => ({ place: `${place}(${one.name})`, isTold: UNIT_OR_COUNT.test(textOf(one)) })),
  );
  return [...own, ...within(told.children, false), ...within(inPlace?.children, isTold || isToldAbove), ...parameters];
}

function textOf({ comment }: Told): string {
  return (comment?.summary ?? []).map(({ text }) => text).join("");
}

function isNumber(type: ToldType | undefined): boolean {
  if (type === undefined) return false;
  if (type.type === "intrinsic") return type.name === "number";
  if (type.type === "reference") return /^(Float64Array|ArrayLike)$/.test(type.name ?? "");
  return [...(type.types ?? []), type.elementType, type.target].some((part) => isNumber(part));
}

function writtenInPlace(type: ToldType | undefined): Told | undefined {
  if (type === undefined) return undefined;
  return type.declaration ?? [...(type.types ?? []), type.elementType].map(writtenInPlace).find((found) => found);
}
