import { type ProjectKey, projectJsonSchema, projectKeys, readQuantity } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { keysAt } from "../../packages/core/src/project/schema/keys-of-schema.ts";
import { readBareNumber } from "../../packages/core/src/quantities/read-quantity.ts";

const KEYS = projectKeys();

describe("the reference of keys", () => {
  it("stands in KEYS.md as the schema has it (re-make it: npx vitest run -u tests/core/project-keys.test.ts)", async () => {
    await expect(inMarkdown(KEYS)).toMatchFileSnapshot("../../packages/core/KEYS.md");
  });

  it("tells of every key what it means, in words of its own", () => {
    const unsaid = KEYS.filter(({ meaning }) => meaning.length < 8 || /^(an?|the) \w+$/i.test(meaning));
    expect(unsaid.map(({ path }) => path)).toEqual([]);
    expect(KEYS.filter(({ takes }) => takes === "" || /undefined|its own/.test(takes))).toEqual([]);
  });

  it("tells an example of every key that takes a value of its own", () => {
    const without = KEYS.filter(({ example, leadsTo }) => example === null && leadsTo.length === 0);
    expect(without.map(({ path }) => path)).toEqual([]);
  });

  it("gives quantities examples, and values that count where they are left out, that can be read", () => {
    let quantities = 0;
    for (const { path, quantity, example, usual, key } of KEYS) {
      if (quantity === null) continue;
      quantities += 1;
      const written = example!.slice(key.length + 2);
      const reads = (text: string): boolean =>
        Number.isFinite(Number(text)) ? readBareNumber(Number(text), quantity).ok : readQuantity(text, quantity).ok;
      expect([path, reads(written)]).toEqual([path, true]);
      if (usual !== null && /^[\d.]+[^,]*$/.test(usual))
        expect([path, usual, reads(usual)]).toEqual([path, usual, true]);
    }
    expect(quantities).toBeGreaterThan(60);
  });

  it("has every key that the reader knows in a place", () => {
    const known = (thing: string): string[] => KEYS.filter((one) => one.thing === thing).map(({ key }) => key);
    expect(known("")).toEqual(keysAt([]));
    expect(known("layer")).toEqual(keysAt(["build-ups", 0, "layers", 0]));
    expect(known("material")).toEqual(keysAt(["build-ups", 0, "layers", 0, "material"]));
    expect(known("build-up/leak")).toEqual(["length", "width", "pressure"]);
  });
});

describe("the JSON Schema", () => {
  it("stays under 60 kB", () => {
    expect(JSON.stringify(projectJsonSchema(), null, 2).length).toBeLessThan(60_000);
  });
});

/** One table a thing. */
function inMarkdown(keys: readonly ProjectKey[]): string {
  const things = [...new Set(keys.map(({ thing }) => thing))];
  const tables = things.map((thing) => {
    const rows = keys.filter((one) => one.thing === thing).map(rowOf);
    return [`## ${thing === "" ? "Top of the file" : thing}`, "", whereFrom(thing, keys), HEADS, ...rows, ""].join(
      "\n",
    );
  });
  return `${PREFACE}\n${tables.join("\n")}`;
}

const PREFACE = `# Keys of the project file

Written from the reader's own schema by a test, which also compares it. A key in **bold** has to be there. A quantity is a
number, a space and a unit; any unit of its kind will do. \`warmside explain KEY\` tells one of them on a terminal.
`;
const HEADS = "| key | means | takes | left out | example |\n| --- | --- | --- | --- | --- |";

function rowOf({ key, meaning, isNeeded, takes, usual, example }: ProjectKey): string {
  const cells = [isNeeded ? `**${key}**` : key, meaning, takes, usual ?? "", example === null ? "" : `\`${example}\``];
  return `| ${cells.map((cell) => cell.replace(/\|/g, "\\|")).join(" | ")} |`;
}

/** The keys that lead to a thing. */
function whereFrom(thing: string, keys: readonly ProjectKey[]): string {
  if (thing === "") return "";
  const from = keys.filter(({ leadsTo }) => leadsTo.includes(thing));
  return `${from.map((one) => `\`${one.key}\`${one.thing === "" ? " at the top" : ` of ${one.thing}`}`).join(", ")}\n`;
}
