import { describe, expect, test } from "vitest";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { findRemedies } from "../../packages/core/src/remedies/find-remedies.ts";
import type { Remedy } from "../../packages/core/src/result/types.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { textOfCase } from "../practice/cases.ts";
import { assessText } from "./corpus.ts";

/**
 * A remedy as a reader follows it: the change is written into the project file by hand, the file is read and assessed,
 * and that gives what the remedy lists.
 */
interface Written {
  file: string;
  buildUp?: number;
  /** What the file's text is changed to before anything is sought. */
  given?: [string, string];
  /** Words of the remedy. */
  change: string;
  /** What is put in the place of what, in the file's text. */
  edits: [string, string][];
}

const WOOL_140 = "      - { material: mineral wool slab, thickness: 140 mm, framing: studs }";

const written: Written[] = [
  {
    file: "02-stud-wall-no-vapour-layer.yaml",
    change: "Vapour control layer sd 5 m added on the warm side, between gypsum plasterboard and mineral wool slab",
    edits: [[WOOL_140, `      - { material: vapour control layer sd 5 m }\n${WOOL_140}`]],
  },
  {
    file: "02-stud-wall-no-vapour-layer.yaml",
    change:
      "195 mm of wood fibre insulation board outside, without a break, between oriented strand board and breather membrane",
    edits: [
      [
        "      - { material: breather membrane }",
        "      - { material: wood fibre insulation board, thickness: 195 mm }\n      - { material: breather membrane }",
      ],
    ],
  },
  {
    file: "02-stud-wall-no-vapour-layer.yaml",
    change:
      "The insulation moved out of the frame: 70 mm of polyurethane foam unfaced outside oriented strand board, the frame left empty",
    edits: [
      [WOOL_140, "      - { air: 140 mm, ventilation: none, framing: studs }"],
      [
        "      - { material: breather membrane }",
        "      - { material: polyurethane foam unfaced, thickness: 70 mm }\n      - { material: breather membrane }",
      ],
    ],
  },
  {
    file: "05-sheet-on-the-cold-side.yaml",
    change:
      "Polyethylene sheet 0.15 mm moved to the warm side, between gypsum plasterboard and mineral wool slab, with a breather membrane in its old place",
    edits: [
      ["      - { material: polyethylene sheet 0.15 mm }", "      - { material: breather membrane }"],
      [WOOL_140, `      - { material: polyethylene sheet 0.15 mm }\n${WOOL_140}`],
    ],
  },
  {
    file: "08-cooled-shop-vinyl-wallpaper.yaml",
    change: "Vinyl wallpaper left out",
    edits: [["      - { material: vinyl wallpaper }\n", ""]],
  },
  {
    file: "19-torn-vapour-layer.yaml",
    change: "The gaps in polyethylene sheet 0.15 mm closed: laps, edges and holes taped",
    edits: [[", gaps: 1 %", ""]],
  },
  {
    file: "24-steel-box-drying-clay.yaml",
    change:
      "45 mm of polyurethane foam unfaced outside, without a break, on the outer face of steel, behind ventilated cladding (not counted)",
    edits: [
      [
        "      - { material: steel, thickness: 2 mm }",
        "      - { material: steel, thickness: 2 mm }\n      - { material: polyurethane foam unfaced, thickness: 45 mm }",
      ],
    ],
  },
  {
    file: "32-cold-roof-one-end.yaml",
    change: "50 mm of ventilated height above the insulation, open at both ends by a continuous 25 mm",
    edits: [["open: one end", "open: both ends"]],
  },
  {
    file: "34-cold-roof-too-thin-an-air-layer.yaml",
    change: "50 mm of ventilated height above the insulation, open at both ends by a continuous 25 mm",
    edits: [["air: 25 mm", "air: 50 mm"]],
  },
  {
    file: "40-raised-floor-polythene-below.yaml",
    change: "Breather membrane (sd 0.2 m) outside instead of polyethylene sheet 0.25 mm",
    edits: [["material: polyethylene sheet 0.25 mm", "material: breather membrane"]],
  },
  {
    file: "28-warm-roof-over-half-below.yaml",
    change:
      "The insulation moved out of the frame: 80 mm of polyurethane foam unfaced outside expanded polystyrene: a warm roof, the frame left empty",
    edits: [
      ["material: mineral wool slab, thickness: 150 mm", "air: 150 mm, ventilation: none"],
      [
        "      - { material: bitumen sheet",
        "      - { material: polyurethane foam unfaced, thickness: 80 mm }\n      - { material: bitumen sheet",
      ],
    ],
  },
  {
    file: "28-warm-roof-over-half-below.yaml",
    change:
      "240 mm of mineral wool roof board outside, without a break, between expanded polystyrene and bitumen sheet",
    edits: [
      [
        "      - { material: bitumen sheet",
        "      - { material: mineral wool roof board, thickness: 240 mm }\n      - { material: bitumen sheet",
      ],
    ],
  },
  {
    file: "02-stud-wall-no-vapour-layer.yaml",
    given: ["humidity: class 3", "humidity: class 5"],
    change:
      "The room kept drier: humidity class 4 instead of 5 (a change of use or ventilation, not of the build-up; it must really happen); " +
      "and the insulation moved out of the frame: 70 mm of polyurethane foam unfaced outside oriented strand board, the frame left empty",
    edits: [
      ["humidity: class 5", "humidity: class 4"],
      [WOOL_140, "      - { air: 140 mm, ventilation: none, framing: studs }"],
      [
        "      - { material: breather membrane }",
        "      - { material: polyurethane foam unfaced, thickness: 70 mm }\n      - { material: breather membrane }",
      ],
    ],
  },
  {
    file: "19-torn-vapour-layer.yaml",
    given: ["humidity: class 4", "humidity: class 5"],
    change:
      "The room kept drier: humidity class 4 instead of 5 (a change of use or ventilation, not of the build-up; it must really happen); " +
      "and the gaps in polyethylene sheet 0.15 mm closed: laps, edges and holes taped",
    edits: [
      ["humidity: class 5", "humidity: class 4"],
      [", gaps: 1 %", ""],
    ],
  },
];

function remediesOf(text: string, index: number): Remedy[] {
  const project = readProjectOrThrow(text);
  const surroundings = surroundingsOf(project);
  return findRemedies(project.buildUps[index]!, surroundings, assessText(text, index)).remedies;
}

describe("a remedy written into the project file gives what it lists", () => {
  test.each(written)("$file: $change", ({ file, buildUp = 0, given = ["", ""], change, edits }) => {
    expect(textOfCase(file)).toContain(given[0]);
    const text = textOfCase(file).replace(...given);
    const remedy = remediesOf(text, buildUp).find((one) => one.change === change);
    expect(
      remedy,
      remediesOf(text, buildUp)
        .map((one) => one.change)
        .join("\n"),
    ).toBeDefined();
    const changed = edits.reduce((now, [from, to]) => {
      expect(now).toContain(from);
      return now.replace(from, to);
    }, text);
    const result = assessText(changed, buildUp);
    expect(result.judgement.word).toBe(remedy!.judgement);
    expect(result.moisture!.verdict).toBe(remedy!.verdict);
    expect(result.heat!.transmittance).toBeCloseTo(remedy!.transmittance, 12);
    expect(result.moisture!.peak.amount).toBeCloseTo(remedy!.peak.amount, 12);
    expect(result.moisture!.peak.month).toBe(remedy!.peak.month);
  });
});
