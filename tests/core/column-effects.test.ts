import { assessProject, spreadQuestion, surroundingsOf } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { MATERIAL_COLUMNS } from "../../packages/core/src/materials/read-material-table.ts";
import { projectOf } from "./project-texts.ts";

/** Two cells of a column, and the part of the answer that must differ: the results, unless another part is named. */
const EFFECTS: Readonly<Record<string, readonly [one: string, other: string, part?: "layers" | "spread"]>> = {
  conductivity_W_mK: ["0.13", "0.15"],
  mu_dry: ["50", "60"],
  mu_wet: ["20", "10"],
  kind: ["wood", "mineral"],
  density_kg_m3: ["100", "700"],
  emissivity: ["0.9", "0.5"],
  facing_sd_m: ["5", "10"],
  facing_emissivity: ["0.9", "0.05"],
  spread_class: ["tabulated", "assumed", "spread"],
  group: ["timber", "board", "layers"],
  source: ["a leaflet", "a label", "layers"],
};

/** The monthly method stores no heat; name and sd have tests of their own: a name is what is looked up, sd makes a sheet. */
const WITHOUT = ["specific_heat_J_kgK", "name", "sd_m"];

const PROJECT = `project: Alder Row pottery studio
climate: de-bilt
materials: own.csv
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: my board, thickness: 12 mm }
      - { air: 25 mm, ventilation: none }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: my board, thickness: 11 mm }
`;

/** The part of the answer, with one cell of the board's row set. */
function told(column: string, cell: string, part: "worked" | "layers" | "spread"): string {
  const usual = { conductivity_W_mK: "0.13", mu_dry: "50", sd_m: "", kind: "wood", density_kg_m3: "100" };
  const row = { name: "my board", ...usual, [column]: cell };
  const table = `${Object.keys(row).join(",")}\n${Object.values(row).join(",")}\n`;
  const project = projectOf(PROJECT, { "own.csv": table });
  const [{ layers, ...worked }] = assessProject(project).buildUps as [ReturnType<typeof assessProject>["buildUps"][0]];
  const spread = () => spreadQuestion(project.buildUps[0]!, surroundingsOf(project)).inputs;
  return JSON.stringify({ worked: () => worked, layers: () => layers, spread }[part]());
}

describe("every column of a material table makes the difference that it is there for", () => {
  it.each(Object.keys(EFFECTS))("%s", (column) => {
    const [one, other, part = "worked"] = EFFECTS[column]!;
    expect(told(column, one, part)).not.toBe(told(column, other, part));
  });

  it("none is left out", () => {
    const columns = [...MATERIAL_COLUMNS.required, ...MATERIAL_COLUMNS.optional];
    expect(columns.filter((column) => !(column in EFFECTS) && !WITHOUT.includes(column))).toEqual([]);
  });
});
