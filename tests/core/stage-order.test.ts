import ts from "typescript-5";
import { describe, expect, it } from "vitest";
import { type CoreSource, coreSources, sourceOf, stageOf } from "./core-sources.ts";

/**
 * The order of the stages, written down once: a stage imports only from itself and from those before it.
 * A folder or a file at the top of packages/core/src is a stage.
 */
const STAGES = [
  "require.ts",
  "problems",
  "constants.ts",
  "arithmetic",
  "quantities",
  "given",
  "air",
  "project",
  "tables",
  "shipped-tables.ts",
  "materials",
  "climate",
  "rooms",
  "builders",
  "read-project.ts",
  "result",
  "heat",
  "surroundings",
  "vapour",
  "year",
  "field",
  "calculate-build-up.ts",
  "plane-checks",
  "further-checks",
  "vapour-layer",
  "sensitivity",
  "formulas",
  "findings",
  "describe",
  "assess-build-up.ts",
  "remedies",
  "studies",
  "assess-project.ts",
];

/** Beside the flow: what makes climate tables of weather records, and what it may use. */
const BESIDE: Readonly<Record<string, readonly string[]>> = {
  records: ["require.ts", "air", "problems", "tables", "climate", "quantities", "constants.ts"],
};

/** The entries that give the public names: they may take from everywhere, and nothing takes from them. */
const ENTRIES = ["formulas.ts", "index.ts", "calculation.ts", "field.ts"];

function allowedFor(stage: string): readonly string[] {
  if (ENTRIES.includes(stage)) return [...STAGES, ...Object.keys(BESIDE), stage];
  const beside = BESIDE[stage];
  if (beside !== undefined) return [...beside, stage];
  return STAGES.slice(0, STAGES.indexOf(stage) + 1);
}

/** Every import that goes against the order, in words. */
function againstTheOrder(sources: readonly CoreSource[]): string[] {
  return sources.flatMap(({ path, imports }) =>
    imports
      .filter(({ target }) => target !== null && !allowedFor(stageOf(path)).includes(stageOf(target)))
      .map(({ target }) => `${path} imports ${target}`),
  );
}

/** The first way round from a file back to itself, over all its imports; null without. */
function importCycle(sources: readonly CoreSource[]): string | null {
  const targets = new Map(sources.map(({ path, imports }) => [path, imports.flatMap(({ target }) => target ?? [])]));
  const finished = new Set<string>();
  const follow = (path: string, way: readonly string[]): string | null => {
    if (way.includes(path)) return [...way.slice(way.indexOf(path)), path].join(" → ");
    if (finished.has(path)) return null;
    for (const target of targets.get(path) ?? []) {
      const cycle = follow(target, [...way, path]);
      if (cycle !== null) return cycle;
    }
    finished.add(path);
    return null;
  };
  for (const path of targets.keys()) {
    const cycle = follow(path, []);
    if (cycle !== null) return cycle;
  }
  return null;
}

const sources = coreSources();

describe("stage order of the core", () => {
  it("every folder and every file at the top has its place in the order", () => {
    const known = [...STAGES, ...Object.keys(BESIDE), ...ENTRIES];
    expect(sources.map(({ path }) => stageOf(path)).filter((stage) => !known.includes(stage))).toEqual([]);
  });

  it("no stage imports from a later one", () => {
    expect(againstTheOrder(sources)).toEqual([]);
  });

  it("no file imports itself by way of others", () => {
    expect(importCycle(sources)).toBeNull();
  });

  it("every relative import names a file that is there", () => {
    const paths = new Set(sources.map(({ path }) => path));
    const missing = sources.flatMap(({ path, imports }) =>
      imports
        .filter(({ target }) => target !== null && !paths.has(target))
        .map(({ specifier }) => `${path}: ${specifier}`),
    );
    // Written by the set-up; not there before its first run.
    expect(missing.filter((line) => !line.endsWith("shipped-tables.ts"))).toEqual([]);
  });

  it.each(ENTRIES)("the public names of %s stand in stage order", (entry) => {
    const order = [...STAGES, ...Object.keys(BESIDE)];
    const { imports } = sources.find(({ path }) => path === entry)!;
    const stages = imports.flatMap(({ target }) => (target === null ? [] : [stageOf(target)]));
    expect(stages.length).toBeGreaterThan(5);
    expect(stages).toEqual([...stages].sort((one, other) => order.indexOf(one) - order.indexOf(other)));
  });

  it("result holds types only, and its imports are of types", () => {
    const values = sources
      .filter(({ path }) => stageOf(path) === "result")
      .flatMap(({ path, tree, imports }) => [
        ...tree.statements
          .filter(
            (each) =>
              !ts.isInterfaceDeclaration(each) &&
              !ts.isTypeAliasDeclaration(each) &&
              !ts.isImportDeclaration(each) &&
              !(ts.isExportDeclaration(each) && each.isTypeOnly),
          )
          .map((each) => `${path}: ${each.getText().slice(0, 60)}`),
        ...imports.filter(({ typeOnly }) => !typeOnly).map(({ specifier }) => `${path} imports ${specifier}`),
      ]);
    expect(values).toEqual([]);
  });
});

describe("the check itself", () => {
  it("finds an import from a later stage, in every form", () => {
    const forms = [
      'import { runYear } from "../year/section-year.ts";',
      'import type { SectionYear } from "../year/section-year.ts";',
      'export { runYear } from "../year/section-year.ts";',
      'export * from "../year/section-year.ts";',
      'type Year = import("../year/section-year.ts").SectionYear;',
      'const year = await import("../year/section-year.ts");',
    ];
    for (const form of forms) {
      expect(againstTheOrder([sourceOf("heat/x.ts", form)]), form).toEqual(["heat/x.ts imports year/section-year.ts"]);
    }
    expect(againstTheOrder([sourceOf("records/x.ts", 'import "../heat/y.ts";')])).toHaveLength(1);
    expect(againstTheOrder([sourceOf("heat/x.ts", 'import { a } from "../air/y.ts";')])).toEqual([]);
  });

  it("finds a way round", () => {
    const round = [
      sourceOf("air/a.ts", 'import "./b.ts";'),
      sourceOf("air/b.ts", 'import "./c.ts";'),
      sourceOf("air/c.ts", 'import type { A } from "./a.ts";'),
    ];
    expect(importCycle(round)).toBe("air/a.ts → air/b.ts → air/c.ts → air/a.ts");
    expect(importCycle(round.slice(0, 2))).toBeNull();
  });
});
