import { describe, expect, test } from "vitest";
import { assessText } from "./corpus.ts";

/** The same thing said in two ways of a project file comes to the same. Invented build-ups. */
const wall = (layers: readonly string[], of = ""): string => `project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 4 }
build-ups:
  - name: Wall
    element: wall
${of}    layers:
${layers.map((layer) => `      - { ${layer} }\n`).join("")}`;
const lining = "material: gypsum plasterboard, thickness: 12.5 mm";
const wool = "material: mineral wool slab, thickness: 140 mm";
const sheathing = "material: oriented strand board, thickness: 11 mm";
const runOf = (text: string, name: string) => assessText(text).sensitivity.find((run) => run.name === name)!;

describe("ten times more open", () => {
  test("is a tenth of the sd that the layer has with its gaps", () => {
    const gappy = wall([lining, "material: polyethylene sheet 0.15 mm, gaps: 0.1 %", wool, sheathing]);
    // 1/(0.999/50 + 0.001/0.01) = 8.3347 m
    const whole = wall([lining, "material: { name: sheet, sd: 8.3347 m }", wool, sheathing]);
    const stated = wall([lining, "material: { name: sheet, sd: 0.83347 m }", wool, sheathing]);
    const opened = runOf(gappy, "vapour layer ten times more open").peak.amount;
    expect(opened).toBeCloseTo(runOf(whole, "vapour layer ten times more open").peak.amount, 4);
    expect(opened).toBeCloseTo(assessText(stated).moisture!.peak.amount, 4);
    expect(opened).toBeGreaterThan(0.5);
  });
});

describe("a sheet whose sd is given by humidity", () => {
  const smart = (points: string) =>
    wall([lining, `material: { name: sheet, sd by humidity: ${points} }`, wool, sheathing]);
  const text = smart("[ [20 %, 10 m], [40 %, 0.3 m] ]");

  test("has its most open sd in the unfavourable run", () => {
    const open = wall([lining, "material: { name: sheet, sd: 0.3 m }", wool, sheathing]);
    const unfavourable = runOf(text, "unfavourable vapour resistance").peak.amount;
    expect(unfavourable).toBeCloseTo(runOf(open, "unfavourable vapour resistance").peak.amount, 9);
    expect(assessText(text).layers[1]!.sdUnfavourable).toBe(0.3);
  });

  test("makes a condition where the run by humidity is worse than that with its dry value", () => {
    const { variableResistance, moisture, findings, judgement } = assessText(text);
    expect([moisture!.verdict, variableResistance!.verdict]).toEqual(["dry", "dries out"]);
    const finding = findings.find(({ code }) => code === "variable-resistance")!;
    expect(judgement.reasons).toContain(finding.id);
  });
});

describe("a roof space beyond well-ventilated air", () => {
  const ceiling = (of: string, air: string): string =>
    wall([lining, wool, ...(air === "" ? [] : [air])], of).replace("element: wall", "element: pitched roof");
  test("counts for nothing", () => {
    const air = "air: 50 mm, ventilation: well, open: both ends";
    const withSpace = assessText(ceiling("    roof space: felt or boards\n", air)).heat!;
    expect(withSpace.transmittance).toBe(assessText(ceiling("", air)).heat!.transmittance);
  });
  test("and counts without it", () => {
    const withSpace = assessText(ceiling("    roof space: felt or boards\n", "")).heat!;
    expect(withSpace.resistance - assessText(ceiling("", "")).heat!.resistance).toBeCloseTo(0.2, 12);
  });
});
