import { readProject } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { changed, problemsOf, SMALL_PROJECT } from "./project-texts.ts";

const codesOf = (text: string): string[] => problemsOf(text).map(({ code }) => code);

describe("every problem is told at once, in the order of the text", () => {
  const text = SMALL_PROJECT.replace("de-bilt", "debilt")
    .replace("class 3", "class 9")
    .replace("60 %", "0.6")
    .replace("element: wall", "elment: wall")
    .replace("width: 45 mm", "width: 45")
    .replace("12.5 mm", "12.5 m")
    .replace("mineral wool slab", "minral wool slab")
    .replace("framing: studs", "framing: stud")
    .replace("ventilation: well", "ventilation: good")
    .replace("thickness: 20 mm", "thickness: 20 mm, colour: grey");
  const problems = problemsOf(text);

  it("shape, quantities, names of materials, framings and places, each with its line", () => {
    expect(problems.map(({ line, code }) => [line, code])).toEqual([
      [2, "climate-unknown"],
      [3, "humidity-unread"],
      [5, "unit-missing"],
      [8, "key-unknown"],
      [10, "unit-missing"],
      [12, "impossible-value"],
      [14, "material-unknown"],
      [14, "framing-unknown"],
      [15, "not-one-of"],
      [16, "key-unknown"],
    ]);
  });

  it("each says what was expected, and those with a likely slip what to write", () => {
    for (const { expected } of problems) expect(expected).not.toBeNull();
    expect(problems.map(({ write }) => write[0] ?? null)).toEqual([
      "de-bilt",
      null,
      "60 %",
      "element",
      "45 mm",
      "12.5 mm",
      "mineral wool slab",
      "studs",
      null,
      null,
    ]);
  });
});

describe("a value where a thing in braces belongs", () => {
  const sheet = "material: { name: felt, vapour transmission: VALUE }";
  const places = [
    ["leak", "    layers:", "    leak: VALUE\n    layers:", "3 m", "{ length: 1 m, width: 1 mm }"],
    [
      "vapour transmission",
      "material: polyethylene sheet 0.15 mm",
      sheet,
      "5 g/(m2 24 h)",
      "{ rate: 12 g/(m2 day), temperature: 23 °C, humidity: [0 %, 85 %] }",
    ],
  ] as const;

  it.each(places)("%s: the example that is told can be written as it stands", (_, was, becomes, slip, example) => {
    const written = (value: string): string => changed(was, becomes.replace("VALUE", value));
    const [problem, ...others] = problemsOf(written(slip));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "wrong-kind", received: slip });
    expect(problem?.expected).toMatch(/^keys in braces: /);
    expect(problem?.expected).toContain(`; for example \`${example}\``);
    expect(readProject(written(example)).ok).toBe(true);
  });
});

describe("positions", () => {
  it("are those of the value", () => {
    const [problem] = problemsOf(changed("12.5 mm", "12.5"));
    expect(problem).toMatchObject({ line: 12, column: 53, path: "build-ups[0].layers[0].thickness", received: "12.5" });
  });

  it("are the parent's for a missing key, and the path is the key's", () => {
    const [problem] = problemsOf(changed("    element: wall\n", ""));
    expect(problem).toMatchObject({ code: "key-missing", line: 7, path: "build-ups[0].element", received: null });
  });

  it("are the key's for an unknown key", () => {
    const [problem] = problemsOf(changed("ventilation: well", "ventilation: well, colour: grey"));
    expect(problem).toMatchObject({ code: "key-unknown", line: 15, column: 42, path: "build-ups[0].layers[3].colour" });
  });

  it("hold in JSON, after a byte-order mark and with the line ends of Windows", () => {
    const wrong = changed("12.5 mm", "12.5");
    for (const text of [`\uFEFF${wrong}`, wrong.replaceAll("\n", "\r\n")]) {
      expect(problemsOf(text)[0]).toMatchObject({ line: 12, column: 53 });
    }
    const json =
      '{\n"project": "A",\n"climate": "oslo",\n"indoor": { "heating": 20, "humidity": "class 3" },\n"build-ups": []\n}';
    expect(problemsOf(json).map(({ line, code }) => [line, code])).toEqual([
      [4, "unit-missing"],
      [5, "list-empty"],
    ]);
  });

  it("of a repeated part are where it is written", () => {
    const text = changed("indoor: {", "indoor: &room {")
      .replace("heating: 20 °C", "heating: 20")
      .replace("damp room: { heating: 18 °C, humidity: 60 % }", "shop: *room");
    expect(problemsOf(text).map(({ line }) => line)).toEqual([3, 3]);
  });
});

describe("one slip is told once", () => {
  it("a misspelt key is not told as missing too", () => {
    expect(codesOf(changed("element: wall", "Element: wall"))).toEqual(["key-unknown"]);
  });

  it("a decimal comma in braces is one problem, though YAML makes two keys of it", () => {
    const [problem, ...others] = problemsOf(changed("thickness: 12.5 mm", "thickness: 12,5 mm"));
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "comma-in-braces", line: 12, write: ["thickness: 12.5 mm"] });
    expect(codesOf(changed("air: 25 mm", "air: 25 mm, emissivity: 0,9"))).toEqual(["comma-in-braces"]);
  });

  it("names in a user's table that cannot be read are not told as unknown", () => {
    const text = changed("climate:", "materials: my.csv\nclimate:").replace("mineral wool slab", "my own wool");
    expect(codesOf(text)).toEqual(["file-unreadable"]);
  });

  it("a broken line is told, not all that it upsets", () => {
    expect(codesOf(changed("    element: wall", "   element: wall"))).toEqual(["yaml-indent"]);
  });
});

describe("rooms that cannot exist", () => {
  it("are told with the months, the pressures, and what to state", () => {
    const [problem, ...others] = problemsOf(
      changed("humidity: 60 %", "humidity: class 5").replace("heating: 18 °C", "heating: 10 °C"),
    );
    expect(others).toEqual([]);
    expect(problem).toMatchObject({ code: "room-impossible", line: 5, path: "rooms.damp room" });
    expect(problem!.message).toMatch(
      /in 9 months of the year this room would be wetter than air can be: \d+ Pa of vapour in December, where saturation is 1227 Pa/,
    );
    expect(problem!.expected).toContain("relative humidity");
    expect(problem!.expected).toContain("a warmer room");
    expect(problem!.expected).not.toContain("cooling");
  });

  it("in a warm damp place with cooling alone ask for a humidity", () => {
    const text = changed("de-bilt", "melbourne-florida").replace(
      "humidity: class 3",
      "cooling: 20 °C, humidity: class 3",
    );
    const [problem] = problemsOf(text);
    expect(problem).toMatchObject({ code: "room-impossible", write: ["humidity: 60 %"] });
    expect(problem!.likelySlip).toContain("cooler than outdoors");
  });

  it("are looked at in the reported year: class 5 at 16.4 °C stands in De Bilt's mean year and not in the colder one", () => {
    const mean = changed("heating: 18 °C, humidity: 60 %", "heating: 16.4 °C, humidity: class 5");
    expect(codesOf(mean)).toEqual([]);
    expect(codesOf(mean.replace("climate:", "severity: one in ten colder\nclimate:"))).toEqual(["room-impossible"]);
  });
});

describe("what reading does to its input", () => {
  it("nothing that a file says reaches the language: no prototype is changed", () => {
    for (const key of ["__proto__", "constructor", "prototype"]) {
      expect(codesOf(`${SMALL_PROJECT}${key}: { polluted: 1 }\n`)).toEqual(["key-forbidden"]);
    }
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it("files are asked for by the paths the project names, and nothing else", () => {
    const asked: string[] = [];
    readProject(changed("climate: de-bilt", "climate: my climate.csv\nmaterials: my.csv\nprices: ../prices.csv"), {
      file: (path) => {
        asked.push(path);
        return { failure: "not now" };
      },
    });
    expect(asked.sort()).toEqual(["../prices.csv", "my climate.csv", "my.csv"]);
  });

  it("an address is refused and never asked for", () => {
    const asked: string[] = [];
    const reading = readProject(changed("climate:", "materials: https://example.org/my.csv\nclimate:"), {
      file: (path) => {
        asked.push(path);
        return { failure: "not now" };
      },
    });
    expect(reading.ok).toBe(false);
    expect(asked).toEqual([]);
  });
});
