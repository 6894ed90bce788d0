import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import ts from "typescript-5";
import { describe, expect, it } from "vitest";
import * as calculation from "../../packages/core/src/calculation.ts";
import * as field from "../../packages/core/src/field.ts";
import * as formulas from "../../packages/core/src/formulas.ts";
import * as core from "../../packages/core/src/index.ts";
import { coreSources } from "./core-sources.ts";

const ROOT = join(import.meta.dirname, "../..");
const report = readFileSync(join(ROOT, "packages/core/api.md"), "utf8");

/** The part of the report under a heading. */
function part(heading: string): string {
  return report.split(/^## /m).find((text) => text.startsWith(`${heading}\n`))!;
}

describe("the public names of the core", () => {
  it("have the signatures of packages/core/api.md (re-make it: node .ci/api-report.mjs)", () => {
    const made = spawnSync(process.execPath, [join(ROOT, ".ci/api-report.mjs"), "--print"], { encoding: "utf8" });
    expect(made.stderr).toBe("");
    expect(report).toBe(made.stdout);
  });

  it("stand in it one by one: every value that the entries export", () => {
    const declared = [...part("@warmside/core").matchAll(/^(?:function|const|class) (\w+)/gm)].map(([, name]) => name);
    expect(declared.sort()).toEqual(Object.keys(core).sort());
    const listed = [...part("@warmside/core/calculation").matchAll(/`(\w+)`/g)].map(([, name]) => name);
    expect(listed).toEqual(expect.arrayContaining(Object.keys(calculation)));
    const inFormulas = [...part("@warmside/core/formulas").matchAll(/^(?:function|const|class) (\w+)/gm)].map(
      ([, name]) => name,
    );
    expect(inFormulas.sort()).toEqual(Object.keys(formulas).sort());
    const inField = [...part("@warmside/core/field").matchAll(/^(?:function|const|class) (\w+)/gm)].map(
      ([, name]) => name,
    );
    expect(inField.sort()).toEqual(Object.keys(field).sort());
  });

  it("of the calculation are names of the whole, for the same things", () => {
    const whole = core as Record<string, unknown>;
    for (const [name, value] of Object.entries(calculation)) expect(whole[name], name).toBe(value);
  });

  it("have a doc comment each", () => {
    const names = new Set(
      [...report.matchAll(/^(?:function|const|class|interface|type) (\w+)/gm)].map(([, name]) => name!),
    );
    const statements = coreSources()
      .filter(({ path }) => path !== "shipped-tables.ts")
      .flatMap(({ path, tree }) => tree.statements.map((statement) => ({ path, statement })));
    const bare = statements.flatMap(({ path, statement }) => {
      const named = declaredNames(statement).filter((name) => names.has(name));
      return named.length > 0 && ts.getJSDocCommentsAndTags(statement).length === 0 ? [`${path} ${named}`] : [];
    });
    expect(names.size).toBeGreaterThan(100);
    expect(bare).toEqual([]);
  });
});

/** Names that an exported statement declares. */
function declaredNames(statement: ts.Statement): string[] {
  const isExported =
    ts.canHaveModifiers(statement) &&
    ts.getModifiers(statement)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
  if (!isExported) return [];
  if (ts.isVariableStatement(statement))
    return statement.declarationList.declarations.map(({ name }) => name.getText());
  const named = statement as ts.Statement & { name?: ts.Node };
  return named.name === undefined ? [] : [named.name.getText()];
}
