import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { rearrange } from "../../../packages/report/src/live/edit/rearrange.ts";
import { removeKey } from "../../../packages/report/src/live/edit/remove-key.ts";
import { setValue } from "../../../packages/report/src/live/edit/set-value.ts";

const CASES = new URL("../../practice/cases/", import.meta.url);
const DEMO = new URL("../../../shared/alder-row-pottery.yaml", import.meta.url);
const TEXTS: [string, string][] = [
  ...readdirSync(CASES).map((file): [string, string] => [file, readFileSync(new URL(file, CASES), "utf8")]),
  ["the demo", readFileSync(DEMO, "utf8")],
];
const LIST = ["build-ups", 0, "layers"];

interface File {
  "build-ups": { layers: Record<string, unknown>[] }[];
}
const layersOf = (text: string) => (parse(text) as File)["build-ups"][0]!.layers;

/** What remains of a text when what it shares with another at its start and end is left out. */
function changed(before: string, after: string): { gone: string; came: string } {
  let start = 0;
  while (start < Math.min(before.length, after.length) && before[start] === after[start]) start += 1;
  let end = 0;
  const most = Math.min(before.length, after.length) - start;
  while (end < most && before.at(-1 - end) === after.at(-1 - end)) end += 1;
  return { gone: before.slice(start, before.length - end), came: after.slice(start, after.length - end) };
}

const sortedLines = (text: string): string[] =>
  text
    .split("\n")
    .map((line) => line.trim())
    .sort();

describe.each(TEXTS)("edits of %s", (_, text) => {
  const layers = layersOf(text);
  const order = layers.map((_layer, index) => index);

  test("a thickness: the figure alone changes, and setting it back gives the same bytes", () => {
    const at = layers.findIndex(({ thickness }) => thickness !== undefined);
    if (at === -1) return expect(layers.length).toBeGreaterThan(0);
    const path = [...LIST, at, "thickness"];
    const after = setValue(text, path, "777 mm")!;
    expect(layersOf(after)).toEqual(
      layers.map((layer, index) => (index === at ? { ...layer, thickness: "777 mm" } : layer)),
    );
    expect(changed(text, after).came.length).toBeLessThanOrEqual("777 mm".length);
    expect(setValue(after, path, layers[at]!.thickness as string)).toBe(text);
  });

  test("a key added and taken out again", () => {
    const key = layers.at(-1)!.name === undefined ? "name" : "fit";
    const path = [...LIST, layers.length - 1, key];
    const after = setValue(text, path, "a name, with a comma")!;
    expect(layersOf(after).at(-1)).toEqual({ ...layers.at(-1), [key]: "a name, with a comma" });
    expect(changed(text, after).gone).toBe("");
    expect(removeKey(after, path)).toBe(text);
  });

  test("a key of the build-up and one of the file, added and taken out again", () => {
    for (const path of [["build-ups", 0, "reference area"], ["indoor", "heated days"], ["a new key"]]) {
      const after = setValue(text, path, 5);
      expect(after, path.join()).not.toBeNull();
      expect(changed(text, after!).gone).toBe("");
      const isNewMap = path[0] === "indoor" && !/^indoor:/m.test(text);
      expect(removeKey(after!, isNewMap ? ["indoor"] : path), path.join()).toBe(text);
    }
  });

  test("a layer moved through the list and back: the same lines, and the same bytes", () => {
    for (const from of order) {
      const moved = [...order.filter((index) => index !== from), from];
      const after = rearrange(text, LIST, moved)!;
      expect(layersOf(after)).toEqual(moved.map((index) => layers[index]));
      if (!/\}, +\{/.test(text)) expect(sortedLines(after)).toEqual(sortedLines(text));
      const back = order.map((index) => moved.indexOf(index));
      expect(rearrange(after, LIST, back)).toBe(text);
    }
  });

  test("a layer put in and taken out again", () => {
    const layer = { material: "cork board", thickness: "20 mm" };
    for (const at of [0, 1, layers.length]) {
      const entries = [...order.slice(0, at), layer, ...order.slice(at)];
      const after = rearrange(text, LIST, entries)!;
      expect(layersOf(after)).toEqual([...layers.slice(0, at), layer, ...layers.slice(at)]);
      const without = entries.map((_entry, index) => index).filter((index) => index !== at);
      expect(rearrange(after, LIST, without)).toBe(text);
    }
  });
});

describe("ways of writing that the corpus does not have", () => {
  const path = ["a"];

  test("a list in brackets keeps the comments of its entries", () => {
    const text = "a: [\n  one, # the first\n  # about two\n  two,\n  three # the last\n]\nb: 1\n";
    const after = rearrange(text, path, [2, 0, 1])!;
    expect(parse(after)).toEqual({ a: ["three", "one", "two"], b: 1 });
    for (const comment of ["three, # the last\n", "one, # the first\n", "# about two\n  two"])
      expect(after).toContain(comment);
    expect(rearrange(after, path, [1, 2, 0])).toBe(text);
  });

  test("a list on one line with a comment behind it", () => {
    const text = "a: [ one, { b: 2 }, three ]   # all\nc: 1";
    expect(rearrange(text, path, [1, 0])).toBe("a: [ { b: 2 }, one ]   # all\nc: 1");
    expect(rearrange("a: []", path, [{ b: 1 }])).toBe("a: [ { b: 1 } ]");
  });

  test("comments above and below an entry go with it, blank lines stay", () => {
    const text =
      "a:\n  # about one\n  - one: 1\n    more: 2   # tail\n    # inside one\n\n  # about two\n  - two: 2\n# of b\nb: 1";
    const after = rearrange(text, path, [1, 0])!;
    expect(after).toBe(
      "a:\n  # about two\n  - two: 2\n\n  # about one\n  - one: 1\n    more: 2   # tail\n    # inside one\n# of b\nb: 1",
    );
    expect(rearrange(after, path, [1, 0])).toBe(text);
  });

  test("lines that end as on Windows go on doing so; no last line break is added", () => {
    const text = "a:\r\n  - one\r\n  - two";
    expect(rearrange(text, path, [1, 0])).toBe("a:\r\n  - two\r\n  - one");
    expect(setValue("a: 1\r\nb: 2", ["c"], 3)).toBe("a: 1\r\nb: 2\r\nc: 3");
    expect(removeKey("a: 1\r\nb: 2", ["b"])).toBe("a: 1");
    expect(removeKey("a: 1\nb: 2\n", ["a"])).toBe("b: 2\n");
  });

  test("JSON stays JSON", () => {
    const text = '{ "a": [ { "b": "x" } ], "c": "old" }';
    const after = setValue(rearrange(text, path, [{ d: "y" }, 0])!, ["c"], "new")!;
    expect(JSON.parse(after)).toEqual({ a: [{ d: "y" }, { b: "x" }], c: "new" });
    expect(JSON.parse(setValue(text, ["e"], { f: true })!)).toEqual({ a: [{ b: "x" }], c: "old", e: { f: true } });
  });

  test("a value written over lines, an empty one, and one in quotation marks", () => {
    expect(setValue("a:\n  b: 1\n  c: 2\nd: 3\n", path, "class 3")).toBe("a: class 3\nd: 3\n");
    expect(setValue("a:   # none yet\nd: 3\n", path, "x")).toBe("a: x   # none yet\nd: 3\n");
    expect(setValue('a: "140 mm"\n', path, "150 mm")).toBe('a: "150 mm"\n');
    expect(setValue("a: 'x'\n", path, "it's")).toBe("a: 'it''s'\n");
    expect(setValue("a: >-\n  long\n  text\nb: 1\n", path, "short")).toBe("a: short\nb: 1\n");
  });

  test("a key whose map is missing makes the map; the first key of an entry gives way to the second", () => {
    expect(setValue("b: 1\n", ["a", "studs"], { width: "45 mm" })).toBe("b: 1\na: { studs: { width: 45 mm } }\n");
    expect(removeKey("a:\n  - x: 1\n    y: 2\n", ["a", 0, "x"])).toBe("a:\n  - y: 2\n");
  });

  test("what cannot be edited without loss is left alone", () => {
    expect(rearrange("a: &x [1, 2]\nb: *x\n", ["b"], [1, 0])).toBeNull();
    expect(rearrange("a: { b: 1 }\n", path, [0])).toBeNull();
    expect(setValue("a: [1, 2]\n", ["a", 5, "b"], 1)).toBeNull();
    expect(setValue("- 1\n- 2", path, 1)).toBeNull();
    expect(setValue("a: 1\n  b: 2\n", path, 1)).toBeNull();
  });
});
