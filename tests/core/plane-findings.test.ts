import { describe, expect, it, test } from "vitest";
import { assessProject } from "../../packages/core/src/assess-project.ts";
import { isFinding } from "../../packages/core/src/findings/is-finding.ts";
import { readProjectOrThrow } from "../../packages/core/src/read-project.ts";
import type { BuildUpResult } from "../../packages/core/src/result/types.ts";
import { textOfCase } from "../practice/cases.ts";

/** Foil-faced boards of 90 mm between studs, in a place and a room. */
const foilWall = (climate: string, humidity: string, joint = "", air = ""): BuildUpResult =>
  assessProject(
    readProjectOrThrow(`project: Alder Row pottery studio
climate: ${climate}
indoor: { heating: 20 °C, humidity: ${humidity} }
build-ups:
  - name: Workshop wall
    element: wall
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm, other timber: 0 % } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { air: 5 mm, ventilation: none, framing: studs${air} }
      - { material: foil-faced PIR board, thickness: 90 mm, framing: studs${joint} }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
`),
  ).buildUps[0]!;

describe("foil-faced boards between studs", () => {
  it("not said: run tight and untaped, asked for, with the taped case and a gap beside it", () => {
    const wall = foilWall("de-bilt", "class 3");
    const { figures, advice, message } = wall.findings.find(isFinding("interrupted-layer"))!;
    expect(figures).toMatchObject({ layers: [2], gap: 0, taped: { kind: "no" }, isSaid: { gap: false, taped: false } });
    expect(figures).toMatchObject({ level: "some", withTape: { verdict: "dry", strip: 0 } });
    expect(figures.withGap!.strip).toBeGreaterThan(3 * figures.strip);
    expect(message).toContain("`taped`");
    expect(advice).toContain("Tape the foil over the studs");
    expect(wall.judgement.word).toBe("sound with conditions");
    expect(wall.judgement.decisive).toBe("workshop-wall/interrupted-layer");
  });

  it("an air layer stated to have no resistance counts as one with next to none", () => {
    const strip = (air: string): number =>
      foilWall("de-bilt", "class 3", "", air).findings.find(isFinding("interrupted-layer"))!.figures.strip;
    expect(strip(", resistance: 0 m2 K/W")).toBeCloseTo(strip(", resistance: 0.001 m2 K/W"), 3);
  });

  it("straight sections see next to nothing of it", () => {
    const { moisture, plane } = foilWall("de-bilt", "class 3");
    expect(Math.max(...moisture!.sections.map(({ withinMonth }) => withinMonth.peak.amount))).toBeLessThan(0.001);
    expect(plane!.asBuilt.strip!.amount).toBeGreaterThan(0.05);
  });

  it("tape over the framing is the first remedy and makes it sound", () => {
    const [first] = foilWall("de-bilt", "class 3").remedies;
    expect(first!.change).toMatch(/^Foil tape over the studs/);
    expect(first!.judgement).toBe("sound");
    expect(foilWall("de-bilt", "class 3", ", taped: yes").judgement.word).toBe("sound");
  });

  test.each([
    [", gap beside framing: 2 mm, taped: no", "change it"],
    [", gap beside framing: 2 mm, taped: onto the framing 20 mm", "sound"],
    [", gap beside framing: 2 mm, taped: yes", "sound"],
  ])("%s: %s", (joint, word) => {
    const wall = foilWall("de-bilt", "class 3", joint);
    expect(wall.judgement.word).toBe(word);
    const { figures } = wall.findings.find(isFinding("interrupted-layer"))!;
    expect(figures.isSaid).toEqual({ gap: true, taped: true });
  });

  it("the whole is the mean of the months that are told, and a strip never holds less", () => {
    const { months, peak, strip } = foilWall("oslo", "class 4").plane!.asBuilt;
    expect(Math.max(...months.map(({ mean }) => mean))).toBeCloseTo(peak.amount, 12);
    expect(Math.max(...months.map((month) => month.strip))).toBeCloseTo(strip!.amount, 12);
    for (const month of months) expect(month.strip).toBeGreaterThanOrEqual(month.mean);
  });

  it("what stays wet in Oslo is a reason to change it", () => {
    const wall = foilWall("oslo", "class 4");
    const found = wall.findings.find(isFinding("interrupted-layer"))!;
    expect(found.figures).toMatchObject({ verdict: "stays wet", level: "stays" });
    expect(wall.judgement.reasons).toContain(found.id);
    expect(wall.judgement.word).toBe("change it");
  });
});

describe("steel studs", () => {
  const text = textOfCase("55-steel-studs.yaml");
  const assessed = (framing: string): BuildUpResult =>
    assessProject(readProjectOrThrow(text.replace("fraction: 0.3 %", framing))).buildUps[0]!;
  const channels = assessed("channel: { sheet: 1.5 mm, flange: 50 mm, lip: 12 mm }, spacing: 600 mm");

  it("by a share: beyond the method, and what to write instead", () => {
    const wall = assessed("fraction: 0.3 %");
    expect(wall.judgement.word).toBe("beyond this method");
    expect(wall.heat).toBeNull();
    expect(wall.plane).toBeNull();
    expect(wall.beyond!.askFor).toContain("channel:");
  });

  it("by a channel: U from the plane, within its bounds, and the colder surface over the stud", () => {
    const { transmittance, lower, upper, temperatureFactor, wholeTemperatureFactor } = channels.plane!.channel!;
    expect(channels.heat!.transmittance).toBe(transmittance);
    expect(lower).toBeLessThan(transmittance);
    expect(upper).toBeGreaterThan(transmittance);
    expect(transmittance).toBeGreaterThan(1.5 * channels.heat!.clearTransmittance);
    expect(channels.heat!.temperatureFactor).toBe(temperatureFactor);
    expect(temperatureFactor).toBeLessThan(wholeTemperatureFactor - 0.1);
  });

  it("steel makes no straight way for vapour", () => {
    expect(channels.moisture!.sections.map(({ name }) => name)).toEqual(["between framing"]);
  });
});

describe("junctions", () => {
  const DEMO_WALL = `
  - name: Studio wall
    element: wall
    framings: { studs: { material: softwood timber, width: 45 mm, spacing: 600 mm } }
    layers:
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: polyethylene sheet 0.15 mm }
      - { material: mineral wool slab, thickness: WOOL, framing: studs }
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well }
`;
  const project = (junction: string, wool = "140 mm", more = "") =>
    assessProject(
      readProjectOrThrow(`project: Alder Row pottery studio
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
rooms: { store: { unheated: true } }
junctions: [ ${junction} ]
build-ups:${DEMO_WALL.replace("WOOL", wool)}${more}`),
    );

  it("a corner that meets what the month asks is told and no reason against the wall", () => {
    const { junctions, buildUps } = project("{ name: Corner, outer corner: Studio wall, posts: 2 }");
    const { figures, assumed, advice } = junctions[0]!;
    expect(figures).toMatchObject({ meetsMould: true, required: { month: "December" } });
    expect(assumed).toEqual([]);
    expect(advice).toBeNull();
    expect(buildUps[0]!.findings.some(isFinding("junction-mould"))).toBe(false);
  });

  it("a solid corner of a thin wall falls short: fewer posts are told, and the wall is judged by it", () => {
    const { junctions, buildUps } = project("{ name: Corner, outer corner: Studio wall }", "89 mm");
    const { figures, assumed, message, advice } = junctions[0]!;
    expect(assumed).toEqual([{ key: "posts", value: "solid" }]);
    expect(figures!.meetsMould).toBe(false);
    const two = figures!.alternatives.find(({ change }) => change.kind === "posts" && change.posts === 2)!;
    expect(two.temperatureFactor).toBeGreaterThan(figures!.temperatureFactor);
    expect(message).toContain("does not say posts");
    expect(message).toContain("three sides meet");
    expect(advice).not.toBeNull();
    const found = buildUps[0]!.findings.find(isFinding("junction-mould"))!;
    expect(found.figures).toMatchObject({ name: "Corner", workedOut: true, factor: figures!.temperatureFactor });
    expect(buildUps[0]!.judgement.reasons).toContain(found.id);
  });

  it("U is the same whatever the corner is: ψ is told beside it", () => {
    const other = project("{ name: Corner, outer corner: Studio wall, posts: 2 }").buildUps[0]!.heat!.transmittance;
    const { junctions, buildUps } = project("{ name: Corner, outer corner: Studio wall, posts: 3 }");
    expect(buildUps[0]!.heat!.transmittance).toBe(other);
    expect(Math.abs(junctions[0]!.figures!.linearTransmittance)).toBeGreaterThan(0.001);
    expect(junctions[0]!.figures!.uncertainty).toBeLessThan(0.005);
  });

  it("build-ups of different rooms are not worked out, and it is said", () => {
    const other = DEMO_WALL.replace("Studio wall", "Store front")
      .replace("element: wall", "element: wall\n    room: store")
      .replace("WOOL", "140 mm");
    const { junctions } = project("{ name: Corner, outer corner: [Studio wall, Store front] }", "140 mm", other);
    expect(junctions[0]).toMatchObject({ beyond: "other rooms", figures: null });
    expect(junctions[0]!.short).toContain("different rooms");
  });
});
