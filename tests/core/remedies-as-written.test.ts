import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse, stringify } from "yaml";
import { assessBuildUp } from "../../packages/core/src/assess-build-up.ts";
import { assessProject } from "../../packages/core/src/assess-project.ts";
import type { BuildUp } from "../../packages/core/src/project/types.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import { layerChanges } from "../../packages/core/src/remedies/changes-as-written.ts";
import { closeGaps } from "../../packages/core/src/remedies/close-gaps.ts";
import { roomChange } from "../../packages/core/src/remedies/room-as-written.ts";
import { tapeFraming } from "../../packages/core/src/remedies/tape-framing.ts";
import type { BuildUpResult, LayerChange, LayerResult, Remedy } from "../../packages/core/src/result/types.ts";
import { surroundingsOf } from "../../packages/core/src/surroundings/surroundings.ts";
import { caseFiles, textOfCase } from "../practice/cases.ts";

/**
 * Every remedy of the corpus, written into its project file and read again: what comes of it is what the remedy says.
 * The file's own reader and variants are the second way to the same build-up.
 */
interface Written {
  indoor?: { humidity?: unknown };
  rooms?: Record<string, { humidity?: unknown }>;
  "build-ups": { variants?: unknown; leak?: unknown; layers: unknown[] }[];
}

interface Found {
  title: string;
  text: string;
  index: number;
  buildUp: BuildUpResult;
  remedy: Remedy;
}

function wallBehind(humidity: string): string {
  return `project: Alder Row drying room
climate: de-bilt
indoor: { heating: 20 °C, humidity: ${humidity} }
build-ups:
  - name: Wall
    element: wall
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm }
      - { material: oriented strand board, thickness: 18 mm }
`;
}

const texts = [
  ...caseFiles().map((file) => ({ file, text: textOfCase(file) })),
  { file: "a damp room", text: wallBehind("class 5") },
  { file: "demo", text: readFileSync("shared/alder-row-pottery.yaml", "utf8") },
];
const found: Found[] = texts.flatMap(({ file, text }) =>
  assessProject(readProjectOrThrow(text)).buildUps.flatMap((buildUp, index) =>
    buildUp.remedies.map((remedy) => ({
      title: `${file}, ${buildUp.name}: ${remedy.change}`,
      text,
      index,
      buildUp,
      remedy,
    })),
  ),
);

/** The project file with a remedy's changes as a variant, its room as the remedy leaves it; tables by name are shipped. */
function withRemedy({ text, index, remedy }: Found): string {
  const written = parse(text) as Written;
  const { changes, roomChange } = remedy;
  for (const [at, buildUp] of written["build-ups"].entries()) {
    delete buildUp.variants;
    if (at === index) for (const key of remedy.removes) delete buildUp[key];
    if (at === index && changes.length > 0)
      buildUp.variants = [{ name: "remedy", changes: changes.map(({ change }) => change) }];
  }
  if (roomChange !== null) {
    const room = roomChange.room === "indoor" ? written.indoor! : written.rooms![roomChange.room]!;
    room.humidity = roomChange.humidity;
  }
  return stringify(written);
}

/** Names that a change gives and two layers of the build-up share. */
function sharesNames({ buildUp, remedy }: Found): boolean {
  const names = buildUp.layers.map(({ name }) => name);
  const given = remedy.changes.flatMap(({ change }) =>
    Object.values(change).filter((value) => typeof value === "string"),
  );
  return given.some((name) => names.filter((other) => other === name).length > 1);
}

describe("remedies written into the project file", () => {
  test("there are many, of layers, of rooms and of both", () => {
    expect(found.length).toBeGreaterThan(60);
    expect(found.some(({ remedy }) => remedy.roomChange !== null)).toBe(true);
    expect(
      found.every(({ remedy }) => remedy.changes.length + remedy.removes.length > 0 || remedy.roomChange !== null),
    ).toBe(true);
    expect(found.filter(sharesNames).length).toBeLessThan(found.length / 4);
  });

  test.each(found.filter((one) => !sharesNames(one)))("$title", (one) => {
    const project = readProjectOrThrow(withRemedy(one));
    const drawn = project.buildUps[one.index]!;
    const buildUp = one.remedy.changes.length > 0 ? drawn.variants[0]!.buildUp : drawn;
    const again = assessBuildUp(buildUp, surroundingsOf(project));
    expect(again.judgement.word).toBe(one.remedy.judgement);
    expect(again.moisture!.verdict).toBe(one.remedy.verdict);
    expect(again.moisture!.peak.month).toBe(one.remedy.peak.month);
    expect(again.moisture!.peak.amount).toBeCloseTo(one.remedy.peak.amount, 9);
    expect(again.heat!.transmittance).toBeCloseTo(one.remedy.transmittance, 9);
    expect(again.layers.map(placed)).toEqual(one.remedy.layers.map(placed));
  });

  test.each(found)("$title: by their places the changes come to the same layers", ({ buildUp, remedy }) => {
    expect(
      remedy.changes.reduce(
        changedAt,
        buildUp.layers.map(({ name }) => name),
      ),
    ).toEqual(remedy.layers.map(({ name }) => name));
  });
});

describe("changes that leave a layer in its place", () => {
  const text = `project: Alder Row tool store
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 4 }
build-ups:
  - name: Wall
    element: wall
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm, gaps: { width: 2 mm, spacing: 1.2 m } }
      - { material: foil-faced PIR board, thickness: 100 mm, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
`;
  const project = readProjectOrThrow(text);
  const situation = { buildUp: project.buildUps[0]!, surroundings: surroundingsOf(project), warmSide: "room" } as const;

  test.each([
    ["gaps closed", closeGaps, "gaps: 0 %"],
    ["framing taped over", tapeFraming, "taped: yes"],
  ])("%s", (_, kind, keys) => {
    const step = kind(situation)[0]!.steps[0]!;
    const changes = layerChanges(situation.buildUp, step.buildUp);
    expect(changes).toHaveLength(1);
    const [key, value] = keys.split(": ") as [string, string];
    expect(changes[0]!.change).toEqual({ set: situation.buildUp.layers[changes[0]!.at]!.name, [key]: value });
    const written = parse(text) as Written;
    written["build-ups"][0]!.variants = [{ name: "remedy", changes: changes.map(({ change }) => change) }];
    const again = readProjectOrThrow(stringify(written)).buildUps[0]!.variants[0]!.buildUp;
    const result = (buildUp: BuildUp) => assessBuildUp(buildUp, situation.surroundings);
    expect(result(again).moisture!.sections).toEqual(result(step.buildUp).moisture!.sections);
    expect(result(again).judgement.word).toBe(result(step.buildUp).judgement.word);
  });
});

describe("a room's humidity as the file takes it", () => {
  test.each([
    "class 4",
    "55 %",
    `[ ${[41, 42, 43, 44, 45, 46, 47, 48, 47, 46, 45, 44].map((share) => `${share} %`).join(", ")} ]`,
    "normal by outdoor temperature",
    "high by outdoor temperature",
    "{ production: 2.5 kg/day, volume: 90 m3, air changes: 0.7 /h }",
  ])("%s is read again as it was", (humidity) => {
    const room = readProjectOrThrow(wallBehind(humidity)).rooms.get("indoor")!;
    const written = parse(wallBehind(humidity)) as Written;
    written.indoor!.humidity = roomChange(room).humidity;
    const again = readProjectOrThrow(stringify(written)).rooms.get("indoor")!;
    expect(again.humidity.kind).toBe(room.humidity.kind);
    const rounded = (_: string, value: unknown): unknown =>
      typeof value === "number" ? Number(value.toPrecision(5)) : value;
    expect(JSON.stringify(again.humidity, rounded)).toBe(JSON.stringify(room.humidity, rounded));
  });
});

function placed({ name, thickness, sd, framing }: LayerResult): unknown {
  return { name, thickness: Number(thickness.toFixed(9)), sd: Number(sd.toFixed(6)), framing };
}

/** The names of layers after a change is made by its place. */
function changedAt(names: readonly string[], { at, to, change }: LayerChange): string[] {
  const called = (layer: { name?: string; material?: string }): string => layer.name ?? layer.material!;
  if ("move" in change) return names.toSpliced(at, 1).toSpliced(to!, 0, names[at]!);
  if ("remove" in change) return names.toSpliced(at, 1);
  if ("swap" in change) return names.with(at, called(change.for));
  if ("add" in change) return names.toSpliced(at, 0, called(change.add));
  return [...names];
}
