import { projectJsonSchema } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { NOT_WORKED_OUT_YET } from "../../packages/core/src/project/not-worked-out-yet.ts";
import { KEY_EFFECTS, toldOf } from "./key-effects.ts";

describe("every key of the project file makes the difference that it is there for", () => {
  it.each(KEY_EFFECTS.map((effect) => ({ key: effect[0], effect })))("$key", ({ effect }) => {
    expect(toldOf(effect, 0)).not.toBe(toldOf(effect, 1));
  });

  it("none is left out", () => {
    const shown = new Set(KEY_EFFECTS.map(([key]) => key));
    expect(keysOfSchema().filter((key) => !shown.has(key) && !WITHOUT.includes(key) && !isNotYet(key))).toEqual([]);
  });
});

/** No rule uses it yet, which the reader notes. */
function isNotYet(key: string): boolean {
  return key.split("/").some((step) => NOT_WORKED_OUT_YET.has(step));
}

/** Told by `warmside materials` alone: the monthly method stores no heat. */
const WITHOUT = ["material/specific heat"];

/** Keys that take a value of their own: what only holds other keys is shown by these. */
function keysOfSchema(): string[] {
  const keys = new Set<string>();
  const visit = (here: unknown, path: string): void => {
    if (typeof here !== "object" || here === null) return;
    for (const [key, part] of Object.entries(here)) {
      if (key !== "properties") visit(part, path);
      else for (const [name, inner] of Object.entries(part as object)) see(inner, `${path}/${name}`);
    }
  };
  const see = (part: unknown, path: string): void => {
    const text = JSON.stringify(part);
    if (!text.includes('"properties"') || text.startsWith('{"anyOf"')) keys.add(inShort(path));
    visit(part, path);
  };
  visit(projectJsonSchema(), "");
  return [...keys].filter((key) => !CONTAINERS.includes(key));
}

/** One name for the same part wherever it stands. */
function inShort(path: string): string {
  return path
    .replace(/^.*\/(?:indoor|rooms)\//, "room/")
    .replace(/^.*\/changes\/(?=(?:swap|for|set|add|remove|move|before|after)$)/, "changes/")
    .replace(/^.*\/changes\/(?:(?:for|add)\/)?/, "layer/")
    .replace(/^.*material\//, "material/")
    .replace(/^.*(?:framings?)\//, "framing/")
    .replace(/^.*layers\//, "layer/")
    .replace(/^\/build-ups\/(?=(?:ground|void|space|leak|trapped water|junction factors)\/)/, "")
    .replace(/^\//, "");
}

/** Shown by the keys inside them. */
const CONTAINERS = ["prices", "build-ups/trapped water"];
