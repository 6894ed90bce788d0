import { type QuantityName, readProject, readQuantity } from "@warmside/core";
import { createUnit } from "mathjs";
import { afterAll, beforeAll, describe, expect, it, vi } from "vitest";
import { isSeq, parseDocument, type Scalar, visit } from "yaml";
import { VOCABULARY } from "../../../packages/core/src/quantities/vocabulary.ts";
import { changed, EVERY_KEY, FILES_OF_EVERY_KEY, SMALL_PROJECT, suppliesOf } from "../../core/project-texts.ts";

/** What a general calculator would do with a text: none of it may happen to a quantity. */
const EXPRESSIONS: readonly string[] = [
  "2*3 mm",
  "140 mm + 5 mm",
  "(140) mm",
  "1/4 m",
  "2^3 mm",
  "-(-140) mm",
  "sqrt(4) m",
  "f(x)=x",
  "f(x)=x mm",
  "a = 5 mm",
  "140 mm; 5",
  "140 mm to m",
  "[140, 5] mm",
  "140 mm if(true)",
  "pi m",
  "1 e m",
  "0x8c mm",
  "0b11 mm",
  "140 mm # comment",
  "import({ mm: 1 }, { override: true })",
  'createUnit("mm2", "1 km")',
  'createUnit("parsec")',
  'evaluate("1+1") mm',
  'parse("1")',
  'unit("140 mm")',
  "config({ number: 'BigNumber' })",
  "140 mm.constructor",
  "140 constructor",
  "140 toString",
  "140 __proto__",
  "process.exit(1)",
  `$${"{140} mm"}`,
  "`140` mm",
];

const NAMES = (Object.keys(VOCABULARY) as QuantityName[]).filter((name) => VOCABULARY[name].possible !== null);

describe("a quantity is number, space, unit: nothing in it is worked out", () => {
  it.each(EXPRESSIONS)("%s is refused as every quantity", (text) => {
    for (const name of NAMES) expect(readQuantity(text, name), name).toMatchObject({ ok: false });
  });

  it("and no number or name of what was refused has changed a unit", () => {
    for (const text of EXPRESSIONS) for (const name of NAMES) readQuantity(text, name);
    expect(readQuantity("140 mm", "thickness")).toEqual({ ok: true, value: 0.14 });
    expect(readQuantity("1 mm2/m", "openings of a void")).toEqual({ ok: true, value: 1e-6 });
    expect(readQuantity("140 parsec", "thickness")).toMatchObject({ ok: false });
  });

  it("a unit made elsewhere in the program is not known to a project file", () => {
    createUnit("warmsidelength", "3 m", { override: true });
    expect(readQuantity("1 warmsidelength", "thickness")).toMatchObject({ ok: false });
  });

  it("each quantity of a file with every key is refused when an expression stands in its place", () => {
    const places = placesOfQuantities(EVERY_KEY);
    expect(places.length).toBeGreaterThan(90);
    places.forEach((place, index) => {
      const expression = EXPRESSIONS[index % EXPRESSIONS.length]!;
      const document = parseDocument(EVERY_KEY);
      document.setIn(place, expression);
      const reading = readProject(document.toString(), suppliesOf(FILES_OF_EVERY_KEY));
      const told = reading.ok ? [] : reading.problems.filter(({ path }) => place.join(".").startsWith(path.join(".")));
      expect(told.length, `${place.join(".")}: ${expression}`).toBeGreaterThan(0);
    });
  });
});

/** Where in a file a number with its unit, or a bare number, stands. */
function placesOfQuantities(text: string): (string | number)[][] {
  const places: (string | number)[][] = [];
  visit(parseDocument(text), {
    Scalar(key, node, ancestors) {
      if (key === "key" || !isQuantity(node)) return;
      const place = ancestors.flatMap((ancestor, depth): (string | number)[] => {
        const child = ancestors[depth + 1] ?? node;
        if (isSeq(ancestor)) return [ancestor.items.indexOf(child as never)];
        return "key" in ancestor && "value" in ancestor ? [(ancestor.key as Scalar<string>).value] : [];
      });
      if (!TEXTS.includes(String(place[0])) && !TEXTS.includes(String(place.at(-1)))) places.push(place);
    },
  });
  return places;
}

/** Texts that may begin with a figure. */
const TEXTS = ["query", "reference", "layer"];

function isQuantity({ value }: Scalar): boolean {
  return typeof value === "number" || (typeof value === "string" && /^[+-]?\d/.test(value));
}

describe("no address is opened: what a project names is a path that the caller hands out", () => {
  const opened = vi.fn(() => Promise.reject(new Error("opened")));
  const fetchBefore = globalThis.fetch;
  beforeAll(() => {
    globalThis.fetch = opened as never;
  });
  afterAll(() => {
    globalThis.fetch = fetchBefore;
  });

  it.each([
    ["climate", "http://example.invalid/a.csv", ["climate: de-bilt", "climate: http://example.invalid/a.csv"]],
    ["climate", "HTTPS://example.invalid/a.csv", ["climate: de-bilt", "climate: HTTPS://example.invalid/a.csv"]],
    ["climate", "file:///etc/passwd.csv", ["climate: de-bilt", "climate: file:///etc/passwd.csv"]],
    ["climate", "http://example.invalid/a", ["climate: de-bilt", "climate: http://example.invalid/a"]],
    ["materials", "ftp://example.invalid/m.csv", ["climate:", "materials: ftp://example.invalid/m.csv\nclimate:"]],
    ["prices", "https://example.invalid/p.csv", ["climate:", "prices: https://example.invalid/p.csv\nclimate:"]],
  ])("%s: %s", (key, _, [piece, by]) => {
    const asked = vi.fn(() => ({ failure: "there is no such file" }));
    const reading = readProject(changed(piece!, by!, SMALL_PROJECT), { file: asked });
    expect(reading.ok ? [] : reading.problems.map(({ path }) => path[0])).toEqual([key]);
    expect(asked).not.toHaveBeenCalled();
    expect(opened).not.toHaveBeenCalled();
  });
});
