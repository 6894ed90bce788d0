import { readFileSync } from "node:fs";
import { builtinModules } from "node:module";
import ts from "typescript-5";
import { describe, expect, it } from "vitest";
import { type CoreSource, coreSources, sourceOf } from "./core-sources.ts";

/** Packages the core may use, and what of each. */
const PACKAGES = ["#csv-parse", "mathjs", "yaml", "zod", "zod/v4/core"];

/** Names that reach out of the core: to the machine, the clock, chance, the screen or the net. */
const OUTSIDE = [
  "process",
  "Buffer",
  "global",
  "globalThis",
  "console",
  "window",
  "document",
  "navigator",
  "localStorage",
  "fetch",
  "XMLHttpRequest",
  "setTimeout",
  "setInterval",
  "setImmediate",
  "queueMicrotask",
  "performance",
  "crypto",
  "Intl",
  "require",
  "__dirname",
  "__filename",
  "eval",
  "Function",
];

/** Members of plain names that do so too; of `Date` only `Date.UTC` and `new Date(that)` depend on nothing. */
const OUTSIDE_MEMBERS = ["Math.random", "import.meta", "Date.now", "Date.parse"];

function reachesOut({ path, tree, imports }: CoreSource): string[] {
  const found: string[] = [];
  for (const { specifier, target } of imports) {
    if (target === null && !PACKAGES.includes(specifier)) found.push(`${path} imports ${specifier}`);
  }
  const own = namesDeclaredIn(tree);
  const visit = (node: ts.Node): void => {
    if (
      ts.isIdentifier(node) &&
      OUTSIDE.includes(node.text) &&
      !own.has(node.text) &&
      isFree(node) &&
      !namesItsLanguage(node)
    ) {
      found.push(`${path} uses ${node.text}`);
    }
    if (readsTheClock(node)) found.push(`${path} reads the clock: ${node.getText()}`);
    if (ts.isPropertyAccessExpression(node) || ts.isMetaProperty(node)) {
      const text = node.getText().replaceAll(/\s/g, "");
      if (OUTSIDE_MEMBERS.includes(text)) found.push(`${path} uses ${text}`);
    }
    if (ts.isCallExpression(node) && /\.toLocale\w*String$/.test(node.expression.getText())) {
      found.push(`${path} uses the language of the machine: ${node.getText()}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return found;
}

/** `new Intl.ListFormat("en-GB", …)`: the language is named, so the machine's own does not count. */
function namesItsLanguage({ parent }: ts.Identifier): boolean {
  if (ts.isQualifiedName(parent)) return true;
  if (!ts.isPropertyAccessExpression(parent) || parent.getText() !== "Intl.ListFormat") return false;
  const made = parent.parent;
  return ts.isNewExpression(made) && made.arguments?.[0] !== undefined && ts.isStringLiteral(made.arguments[0]);
}

/** Names that the file gives to something of its own. */
function namesDeclaredIn(tree: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const declares =
      ts.isParameter(node) ||
      ts.isVariableDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isFunctionDeclaration(node);
    if (declares && node.name !== undefined && ts.isIdentifier(node.name)) names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(tree);
  return names;
}

/** `Date()`, `new Date()` and every `new Date` of other than one number of milliseconds: clock, or time zone. */
function readsTheClock(node: ts.Node): boolean {
  const called = ts.isCallExpression(node) || ts.isNewExpression(node) ? node.expression : null;
  if (called === null || !ts.isIdentifier(called) || called.text !== "Date") return false;
  const given = (node as ts.NewExpression).arguments ?? [];
  return !(ts.isNewExpression(node) && given.length === 1 && !ts.isStringLiteralLike(given[0]!));
}

/** Whether a name stands for itself, and is neither a member of something nor a key nor a type. */
function isFree(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent) && parent.name === node) return false;
  if (ts.isPropertyAssignment(parent) && parent.name === node) return false;
  if (ts.isPropertySignature(parent) || ts.isTypeReferenceNode(parent)) return false;
  return true;
}

const sources = coreSources().filter(({ path }) => path !== "shipped-tables.ts");

describe("the core is pure", () => {
  it("has sources to look at", () => expect(sources.length).toBeGreaterThan(40));

  it("imports no node module and no package but those it may, and uses no name of the machine, clock, chance or screen", () => {
    expect(sources.flatMap(reachesOut)).toEqual([]);
  });

  it("csv-parse comes by its browser build wherever Node's Buffer is not known to be there", () => {
    expect(PACKAGES.filter((name) => builtinModules.includes(name))).toEqual([]);
    const { imports } = JSON.parse(readFileSync("packages/core/package.json", "utf8"));
    expect(imports["#csv-parse"].default).toBe("csv-parse/browser/esm/sync");
  });
});

describe("the check itself", () => {
  it.each([
    'import { readFileSync } from "node:fs";',
    'import fs from "fs";',
    'import { parse } from "csv-parse/sync";',
    "const now = Date.now();",
    "const now = new Date();",
    "const now = Date();",
    "const day = new Date(2026, 1, 1);",
    'const day = new Date("2026-02-01T00:00");',
    "const chance = Math.random();",
    "console.log(1);",
    "const home = process.env.HOME;",
    "const bytes = Buffer.from([1]);",
    "const all = globalThis;",
    "const here = import.meta.url;",
    "const shown = (1.5).toLocaleString();",
    "const { random } = { random: Math.random };",
    'const parts = require("path");',
  ])("finds %s", (text) => {
    expect(reachesOut(sourceOf("air/x.ts", text))).not.toEqual([]);
  });

  it.each([
    "const kiln = { process: 1 }; const drying = kiln.process;",
    "const largest = Math.max(1, 2);",
    "const weekday = new Date(Date.UTC(2026, 1, 1)).getUTCDay();",
    "const read = (document: string) => document.length;",
    'import { create } from "mathjs";',
    "interface Day { Date: string }",
  ])("passes %s", (text) => {
    expect(reachesOut(sourceOf("air/x.ts", text))).toEqual([]);
  });
});
