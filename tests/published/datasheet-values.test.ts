import { readQuantity } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { problemsOf, projectOf } from "../core/project-texts.ts";

/** A wall with one layer of a material given on the spot. */
const wall = (material: string, more = ""): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Studio wall
    element: wall
    layers:
      - { material: { name: own, ${material} }${more} }
      - { material: plywood, thickness: 18 mm }
`;
const layerOf = (material: string, more = "") => {
  const layer = projectOf(wall(material, more)).buildUps[0]!.layers[0]!;
  if (layer.type === "air") throw new Error("no material");
  return layer;
};
const readAs = (text: string, name: Parameters<typeof readQuantity>[1]): number => {
  const reading = readQuantity(text, name);
  if (!reading.ok) throw new Error(`${text}: ${reading.problems[0]!.code}`);
  return reading.value;
};

describe("data sheets of North America: factors of NIST Special Publication 811, 2008 edition, Appendix B.8 (from memory)", () => {
  // Half a unit of the last printed figure; the perm is held as 5.72e-11, which is its value at 0 °C to three figures.
  it.each([
    ["1 BTU in/(h ft2 °F)", "conductivity", 0.1442279, 7],
    ["0.17 BTU in/(hr ft2 °F)", "conductivity", 0.17 * 0.1442279, 7],
    ["0.17 Btu·in/(h·ft²·°F)", "conductivity", 0.17 * 0.1442279, 7],
    ["1 h ft2 °F/BTU", "thermal resistance", 0.1761102, 7],
    ["20 hr·ft²·°F/Btu", "thermal resistance", 20 * 0.1761102, 5],
    ["R 20", "thermal resistance", 20 * 0.1761102, 5],
    ["R-13", "thermal resistance", 13 * 0.1761102, 5],
    ["R30", "thermal resistance", 30 * 0.1761102, 5],
    ["0.05 BTU/(h ft2 °F)", "transmittance", 0.05 * 5.678263, 6],
    ["7/16 in", "thickness", 0.0111125, 9],
    ["5 1/2 in", "thickness", 0.1397, 9],
    ["5-1/2 in", "thickness", 0.1397, 9],
    ["5½ in", "thickness", 0.1397, 9],
    ["2 ft", "spacing", 0.6096, 9],
    ["16 in", "spacing", 0.4064, 9],
  ] as const)("%s of %s", (text, name, si, figures) => {
    expect(readAs(text, name)).toBeCloseTo(si, figures);
  });

  it("1 perm in is 1.45322e-12 kg/(Pa·s·m) at 0 °C", () => {
    for (const text of ["1 perm in", "1 perm inch", "1 perm-inch", "1 perm·in"])
      expect(readAs(text, "permeability") / 1.45322e-12).toBeCloseTo(1, 3);
  });

  it("1 perm is 57.2135 ng/(Pa·s·m²) at 0 °C", () => {
    expect(readAs("57.2135 ng/(Pa·s·m²)", "permeance") / readAs("1 perm", "permeance")).toBeCloseTo(1, 3);
  });
});

describe("a material told as its data sheet prints it", () => {
  it("R 20 in 5 1/2 in is λ = d/R", () => {
    const { material, thickness } = layerOf("resistance: R 20, vapour resistance factor: 1", ", thickness: 5 1/2 in");
    expect(thickness).toBeCloseTo(0.1397, 9);
    expect(material.conductivity).toBeCloseTo(0.1397 / 3.522204, 6);
  });

  it("3.52 m2 K/W in 140 mm likewise", () => {
    const { material } = layerOf("resistance: 3.52 m2 K/W, vapour resistance factor: 1", ", thickness: 140 mm");
    expect(material.conductivity).toBeCloseTo(0.14 / 3.52, 9);
  });

  it("1.5 perm in is μ = δ0/δ: 2e-10 over 1.5 times 1.4529e-12", () => {
    const { material } = layerOf("conductivity: 0.029 W/(m K), permeability: 1.5 perm in", ", thickness: 50 mm");
    expect(material.vapourResistanceFactorDry).toBeCloseTo(2e-10 / (1.5 * 5.72e-11 * 0.0254), 3);
  });

  it("12 g/(m2 day) at 23 °C and 0/85 %: the pressure is 0.85 of 2809 Pa (saturation of ISO 13788 at 23 °C)", () => {
    const { material } = layerOf(
      "vapour transmission: { rate: 12 g/(m2·24 h), temperature: 23 °C, humidity: [0 %, 85 %] }",
    );
    const permeance = 12e-3 / 86_400 / (0.85 * 2809);
    expect(material.equivalentAirLayerThickness! / (2e-10 / permeance)).toBeCloseTo(1, 3);
  });

  it("sd > 1500 m is taken as 1500 m", () => {
    for (const sd of ['"> 1500 m"', '">1500 m"', "≥ 1500 m"])
      expect(layerOf(`sd: ${sd}`).material.equivalentAirLayerThickness).toBe(1500);
  });
});

describe("what a data sheet leaves open is asked", () => {
  it.each([
    ["R 3.5 of either unit", "resistance: R 3.5, vapour resistance factor: 1", ", thickness: 140 mm", "r-value-unit", ["3.5 m2 K/W", "3.5 h ft2 °F/BTU"]],
    ["a rate without its test", "permeance: 12 g/(m2 24 h)", "", "transmission-needs-test", ["vapour transmission: { rate: 12 g/(m2 day), temperature: … °C, humidity: [… %, … %] }"]],
    ["a comma with three digits", "sd: 1,500 m", "", "comma-in-braces", ["sd: 1500 m", "sd: 1.500 m"]],
    ["the same in quotation marks", "sd: '1,500 m'", "", "decimal-comma", ["1500 m", "1.500 m"]],
    ["a comma with one", "sd: 1,5 m", "", "comma-in-braces", ["sd: 1.5 m"]],
    ["a comma and a point", "sd: 12,500.5 m", "", "comma-in-braces", ["sd: 12500.5 m"]],
    ["a sign that YAML reads", "sd: > 1500 m", "", "yaml-more-than", ["1500 m", '"> 1500 m"']],
    ["imperial without brackets", "conductivity: 0.17 BTU in/h ft2 °F, vapour resistance factor: 5", ", thickness: 20 mm", "unit-unfit", ["0.17 BTU in/(h ft2 °F)"]],
  ])("%s", (_, material, more, code, write) => {
    expect(problemsOf(wall(material, more)).map((problem) => [problem.code, problem.write])).toEqual([[code, write]]);
  }); // biome-ignore format: a row a case

  it("and what it asks to be written can be read", () => {
    for (const text of ["3.5 m2 K/W", "3.5 h ft2 °F/BTU"])
      expect(readQuantity(text, "thermal resistance").ok).toBe(true);
    expect(readQuantity("0.17 BTU in/(h ft2 °F)", "conductivity").ok).toBe(true);
  });
});
