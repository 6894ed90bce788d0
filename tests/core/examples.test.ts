import { join } from "node:path";
import ts from "typescript-5";
import { describe, expect, it, test } from "vitest";
import * as calculation from "../../packages/core/src/calculation.ts";
import * as field from "../../packages/core/src/field.ts";
import * as core from "../../packages/core/src/index.ts";
import { CORE, coreSources, sourceOf, stageOf } from "./core-sources.ts";
import {
  type Example,
  type ExportedFunction,
  examplesOf,
  exportedFunctions,
  faultsOfHelper,
  faultsOfPublic,
} from "./doc-comments.ts";

const sources = coreSources().filter(({ path }) => path !== "shipped-tables.ts");
const functions = sources.flatMap(exportedFunctions);

/** The entries that give names to the world. */
const ENTRIES = ["index.ts", "calculation.ts", "field.ts"];

/** The names they give. */
const publicNames = new Set(
  sources
    .filter(({ path }) => ENTRIES.includes(path))
    .flatMap(({ tree }) => tree.statements.filter(ts.isExportDeclaration))
    .flatMap(({ exportClause }) =>
      exportClause !== undefined && ts.isNamedExports(exportClause) ? [...exportClause.elements] : [],
    )
    .map(({ propertyName, name }) => (propertyName ?? name).text),
);

/** Stages with formulas that a reader retraces: every number they give tells its unit, public ones their source. */
const CALCULATING = [
  "air",
  "heat",
  "surroundings",
  "vapour",
  "year",
  "field",
  "rooms",
  "further-checks",
  "vapour-layer",
  "calculate-build-up.ts",
];

/** A public function of a calculating stage, or one that turns numbers into a number, tells its source. */
const hasFormulas = ({ path, parameters, returns }: ExportedFunction): boolean =>
  CALCULATING.includes(stageOf(path)) || (returns === "number" && parameters.every(({ type }) => type === "number"));

const listed = (those: readonly ExportedFunction[], faultsOf: (each: ExportedFunction) => string[]): string[] =>
  those.flatMap((each) => faultsOf(each).map((fault) => `${each.path} ${each.name}: ${fault}`));

describe("doc comments", () => {
  it("every exported function has one", () => {
    expect(functions.filter(({ comment }) => !comment).map(({ path, name }) => `${path} ${name}`)).toEqual([]);
  });

  it("those of the calculating stages name the unit of the number they give", () => {
    const calculating = functions.filter(({ path }) => CALCULATING.includes(stageOf(path)));
    expect(calculating.length).toBeGreaterThan(40);
    expect(listed(calculating, faultsOfHelper)).toEqual([]);
  });

  it("every public function is among those read here", () => {
    const known = new Set(functions.map(({ name }) => name));
    const values = [...Object.entries(core), ...Object.entries(calculation), ...Object.entries(field)] as [
      string,
      unknown,
    ][];
    const unread = values.filter(([name, value]) => typeof value === "function" && !known.has(name));
    expect(unread.map(([name]) => name)).toEqual(["ProblemsError"]);
    for (const [name] of values) expect(publicNames).toContain(name);
  });

  it("those of public functions have the house's form: what it gives, parameters with units, result with unit, source, example", () => {
    const inPublic = functions.filter(({ name }) => publicNames.has(name));
    expect(inPublic.length).toBeGreaterThan(5);
    expect(listed(inPublic, (each) => faultsOfPublic(each, hasFormulas(each)))).toEqual([]);
  });
});

/** A number as printed, with half a unit of its last figure; a whole number is exact. */
function tolerance(printed: string): number | null {
  const parts = /^[−-]?\d+(?:\.(\d+))?(?:e([−-]?\d+))?$/.exec(printed);
  if (parts === null) return null;
  const [, decimals, power] = parts;
  if (decimals === undefined && power === undefined) return 0;
  return 0.5 * 10 ** (Number(power ?? 0) - (decimals?.length ?? 0)) * (1 + 1e-9);
}

/** Whether the value is what the example says: a number to its printed figures, anything else the same data. */
function agrees(value: unknown, printed: string): boolean {
  const allowed = tolerance(printed);
  if (allowed !== null) {
    const stated = Number(printed.replaceAll("−", "-"));
    const rounding = 1e-12 * Math.abs(stated);
    return typeof value === "number" && Math.abs(value - stated) <= allowed + rounding;
  }
  const stated: unknown = new Function(`return (${printed});`)();
  try {
    expect(plain(value)).toEqual(plain(stated));
    return true;
  } catch {
    return false;
  }
}

/** Typed lists as lists and no-break spaces as spaces, so that an example can write them. */
function plain(value: unknown): unknown {
  if (typeof value === "string") return value.replaceAll(/[\u00a0\u202f]/g, " ");
  return ArrayBuffer.isView(value) ? Array.from(value as Float64Array) : value;
}

function evaluate({ expression }: Example, names: Record<string, unknown>): unknown {
  return new Function(...Object.keys(names), `"use strict"; return (${expression});`)(...Object.values(names));
}

/** What an example may call: the exports of its file and of those the file imports. */
async function namesKnownIn(path: string): Promise<Record<string, unknown>> {
  const imported = sources.find((source) => source.path === path)!.imports.flatMap(({ target }) => target ?? []);
  const modules = await Promise.all(
    [...imported, path].map((each) => import(join(CORE, each)) as Promise<Record<string, unknown>>),
  );
  return Object.assign({}, ...modules) as Record<string, unknown>;
}

const withExamples = functions.filter(({ examples }) => examples.length > 0);

describe("examples of doc comments, run", () => {
  it("there are examples in every calculating stage's folder that has number formulas", () => {
    const stages = new Set(withExamples.map(({ path }) => stageOf(path)));
    expect([...stages]).toEqual(expect.arrayContaining(["air", "heat", "vapour", "year"]));
  });

  test.each(
    withExamples.flatMap((each) => each.examples.map((example) => [each.path, example.expression, example] as const)),
  )("%s: %s", async (path, _, example) => {
    const names = await namesKnownIn(path);
    const value = evaluate(example, names);
    expect(agrees(value, example.value), `${JSON.stringify(plain(value))} is not ${example.value}`).toBe(true);
  });
});

describe("the checks themselves", () => {
  const one = (text: string): ExportedFunction => exportedFunctions(sourceOf("air/x.ts", text))[0]!;
  const whole = `/**
 * Doubled length of a batten.
 *
 * @param length - l [m], above 0
 * @returns twice l [m]
 * Source: definition.
 * @example doubled(2.5) // 5.0
 */
export function doubled(length: number): number { return 2 * length; }`;

  it("a whole comment has no fault", () => expect(faultsOfPublic(one(whole), true)).toEqual([]));

  test.each<[string, RegExp, string]>([
    ["the unit of a parameter", / \[m\], above 0/, "no unit for length"],
    ["the unit of the result", / l \[m\]\n \* Source/, "no unit of the result"],
    ["the source", / \* Source: definition.\n/, "no source"],
    ["the parameter", / \* @param.*\n/, "no @param length"],
    ["the result", / \* @returns.*\n/, "no @returns"],
    ["the example", / \* @example.*\n/, "no @example"],
    ["the first line", / \* Doubled.*\n \*\n/, "no line that tells what it gives"],
    ["the comment", /\/\*\*[\s\S]*\*\/\n/, "no doc comment"],
  ])("without %s it has", (_, part, fault) => {
    const replaced = whole.replace(part, (text) =>
      text.includes("Source") && part.source.includes("l \\[m") ? " l\n * Source" : "",
    );
    expect(replaced).not.toBe(whole);
    expect(faultsOfPublic(one(replaced), true)).toContain(fault);
  });

  it("a helper that gives a number without a unit has a fault", () => {
    expect(
      faultsOfHelper(one("/** Twice. */\nexport function twice(a: number): number { return 2 * a; }")),
    ).toHaveLength(1);
    expect(faultsOfHelper(one("/** Twice [m]. */\nexport const twice = (a: number): number => 2 * a;"))).toEqual([]);
    expect(faultsOfHelper(one("export function twice(a: number): number { return 2 * a; }"))).toEqual([
      "no doc comment",
    ]);
  });

  test.each<[unknown, string, boolean]>([
    [2336.951, "2336.95", true],
    [2336.956, "2336.95", false],
    [-0.40104, "-0.401", true],
    [-0.4016, "-0.401", false],
    [20, "20", true],
    [20.4, "20", false],
    [7.4704e-9, "7.470e-9", true],
    [7.471e-9, "7.470e-9", false],
    [Float64Array.of(1, 2), "[1, 2]", true],
    [[10], "[11]", false],
    ["through studs", '"through studs"', true],
    [Number.NaN, "1.0", false],
    [1, "", false],
  ])("%j against %s: %j", (value, printed, expected) => {
    if (printed === "") expect(() => agrees(value, printed)).toThrow();
    else expect(agrees(value, printed)).toBe(expected);
  });

  it("the value stands after the last two slashes", () => {
    expect(examplesOf('@example a("b // c") // 5')).toEqual([{ expression: 'a("b // c")', value: "5" }]);
  });
});
