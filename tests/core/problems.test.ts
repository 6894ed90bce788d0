import { nearNames, type Problem, problemInText, wordProblem } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { comparable } from "../../packages/core/src/problems/near-names.ts";
import { orderProblems } from "../../packages/core/src/problems/order-problems.ts";
import { pathInText } from "../../packages/core/src/problems/path-in-text.ts";
import { pathInWords } from "../../packages/core/src/problems/path-in-words.ts";
import { type ProblemCode, WORDINGS } from "../../packages/core/src/problems/wordings.ts";

const problem = (given: Partial<Problem>): Problem => ({
  code: "file-empty",
  path: [],
  position: null,
  received: null,
  details: {},
  ...given,
});

describe("paths count from 0", () => {
  it.each([
    [["build-ups", 1, "layers", 2, "thickness"], "build-ups[1].layers[2].thickness"],
    [["rooms", "damp room", "humidity"], "rooms.damp room.humidity"],
    [["rooms", "a.b", "humidity"], 'rooms["a.b"].humidity'],
    [["framings", "[0]"], 'framings["[0]"]'],
    [[], ""],
  ])("%j is %s", (path, text) => {
    expect(pathInText(path)).toBe(text);
  });
});

describe("places count from 1 and name things", () => {
  const data = {
    indoor: { humidity: "class 3" },
    "build-ups": [
      {},
      {
        name: "Studio wall",
        framings: { studs: {} },
        layers: [
          { material: "steel" },
          { name: "lining", material: "plywood" },
          { air: "25 mm" },
          { material: { name: "my board" } },
        ],
      },
    ],
  };

  it.each([
    [["build-ups", 1, "layers", 0, "thickness"], "build-up 2, Studio wall, layer 1, steel", "thickness"],
    [["build-ups", 1, "layers", 1], "build-up 2, Studio wall, layer 2, lining", "the layer"],
    [["build-ups", 1, "layers", 2, "ventilation"], "build-up 2, Studio wall, layer 3, air layer", "ventilation"],
    [
      ["build-ups", 1, "layers", 3, "material", "conductivity"],
      "build-up 2, Studio wall, layer 4, my board, material",
      "conductivity",
    ],
    [["build-ups", 0, "element"], "build-up 1", "element"],
    [["build-ups", 1, "framings", "studs", "width"], 'build-up 2, Studio wall, framing "studs"', "width"],
    [["build-ups", 1, "framings", "studs"], 'build-up 2, Studio wall, framing "studs"', "the framing"],
    [["indoor"], "room indoor", "the room"],
    [["indoor", "humidity"], "room indoor", "humidity"],
    [["rooms", "damp room"], 'room "damp room"', "the room"],
    [["rooms", "damp room", "humidity", 3], 'room "damp room", humidity, value 4', "this value"],
    [["climate"], "", "climate"],
    [[], "", "the file"],
  ])("%j is %s: %s", (path, place, subject) => {
    expect(pathInWords(path, data)).toEqual({ place, subject });
  });

  it("shorten long names and take line ends out of them", () => {
    const { place } = pathInWords(["build-ups", 0], { "build-ups": [{ name: `a\nb${"c".repeat(100)}` }] });
    expect(place).toBe(`build-up 1, a b${"c".repeat(57)}…`);
  });
});

describe("near names", () => {
  const known = [
    "mineral wool slab",
    "mineral wool roll",
    "oriented strand board",
    "steel",
    "stainless steel",
    "plywood",
  ];

  it.each([
    ["minral wool slab", ["mineral wool slab"]],
    ["wool mineral roll", ["mineral wool roll"]],
    ["plywod", ["plywood"]],
    ["PLYWOOD", ["plywood"]],
    ["steel", ["steel", "stainless steel"]],
    ["strand board", ["oriented strand board"]],
    ["lpywood", ["plywood"]],
    ["concrete", []],
    ["", []],
    ["x".repeat(5000), []],
  ])("%s may mean %j", (name, near) => {
    expect(nearNames(name, known)).toEqual(near);
  });

  it("forgive case, hyphens and spaces", () => {
    expect(comparable(" De_Bilt ")).toBe(comparable("de-bilt"));
  });
});

describe("the order of problems", () => {
  const at = (line: number, column: number, code: ProblemCode = "text-empty"): Problem =>
    problem({ code, position: { line, column }, path: [line, column] });

  it("is that of the text, the tables it names after it, and each problem once", () => {
    const inTable = problem({
      code: "row-without-name",
      position: { line: 1, column: 1 },
      details: { file: "my.csv" },
    });
    const ordered = orderProblems([inTable, at(3, 1), at(2, 9), at(2, 4), at(3, 1)]);
    expect(ordered).toEqual([at(2, 4), at(2, 9), at(3, 1), inTable]);
  });
});

describe("problems in words", () => {
  it("say place, slip, what is expected, what was found and what to write", () => {
    const worded = wordProblem({
      code: "unit-missing",
      path: ["build-ups", 1, "layers", 2, "thickness"],
      position: { line: 23, column: 47 },
      received: "140",
      details: {
        place: "build-up 2, Studio wall, layer 3, mineral wool slab",
        subject: "thickness",
        quantity: "thickness",
        kind: "a length",
        example: "140 mm",
        write: "140 mm",
      },
    });
    expect(worded).toEqual({
      code: "unit-missing",
      line: 23,
      column: 47,
      path: "build-ups[1].layers[2].thickness",
      message: "build-up 2, Studio wall, layer 3, mineral wool slab: thickness is missing a unit.",
      expected: "a length, for example 140 mm",
      received: "140",
      likelySlip: null,
      write: ["140 mm"],
    });
    expect(problemInText(worded)).toBe(
      "line 23: build-up 2, Studio wall, layer 3, mineral wool slab: thickness is missing a unit. " +
        "Expected a length, for example 140 mm; found 140. Write `140 mm`.",
    );
  });

  it.each(Object.keys(WORDINGS) as ProblemCode[])("%s has words even when every detail is missing", (code) => {
    const worded = wordProblem(problem({ code }));
    expect(worded.message.length).toBeGreaterThan(8);
    expect(`${worded.message} ${worded.expected} ${worded.likelySlip}`).not.toMatch(/undefined|NaN|\[object/);
  });

  it("a code without words is a fault of the program, and told", () => {
    expect(() => wordProblem(problem({ code: "no-such-code" as ProblemCode }))).toThrow(RangeError);
  });
});
