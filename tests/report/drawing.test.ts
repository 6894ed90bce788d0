import { buildUpDrawing, governingView } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { assessText } from "../core/corpus.ts";
import { demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";

describe.each([...demoResult().buildUps, ...everyPart().buildUps].map((buildUp) => [buildUp.name, buildUp] as const))(
  "drawing of %s",
  (_, buildUp) => {
    const svg = buildUpDrawing(buildUp, governingView(buildUp), "d").text;
    const rectangles = [
      ...svg.matchAll(/<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)" fill="url\(#([^)]+)\)"/g),
    ].map(([, x, y, width, height, fill]) => ({
      x: Number(x),
      y: Number(y),
      width: Number(width),
      height: Number(height),
      fill,
    }));
    const solid = buildUp.layers.filter(({ type }) => type !== "sheet");
    const bodies = rectangles.slice(0, solid.length);

    test("layers are as wide as they are thick, on one scale, room to outside", () => {
      const scale = bodies[0]!.width / solid[0]!.thickness;
      bodies.forEach((body, index) => {
        expect(Math.abs(body.width - solid[index]!.thickness * scale)).toBeLessThanOrEqual(
          0.06 + 0.1 * (solid[index]!.thickness / solid[0]!.thickness),
        );
        if (index > 0) expect(body.x).toBeGreaterThanOrEqual(bodies[index - 1]!.x + bodies[index - 1]!.width - 0.2);
      });
    });

    test("framing is as wide and as far apart as it is, on the same scale", () => {
      const total = solid.reduce((sum, { thickness }) => sum + thickness, 0);
      const drawn = bodies.at(-1)!.x + bodies.at(-1)!.width - bodies[0]!.x;
      const scale = drawn / total;
      /** Edges are drawn to a tenth of a pixel: the scale read from them is no better than this. */
      const loose = (length: number): number => 0.11 + (0.1 / drawn) * length * scale;
      const framing = buildUp.framings[0];
      const members = rectangles.slice(solid.length);
      if (!framing) {
        expect(members).toEqual([]);
        return;
      }
      if (!framing.spacing) {
        const [member] = members;
        const height = bodies[0]!.height;
        expect(members).toHaveLength(1);
        expect(Math.abs(member!.height - framing.share * height)).toBeLessThanOrEqual(0.2);
        expect(Math.abs(member!.y + member!.height / 2 - bodies[0]!.y - height / 2)).toBeLessThanOrEqual(0.2);
        return;
      }
      expect(members.length).toBeGreaterThanOrEqual(2);
      expect(Math.abs(members[0]!.height - framing.width! * scale)).toBeLessThanOrEqual(loose(framing.width!));
      const apart = members[1]!.y - members[0]!.y;
      expect(Math.abs(apart - framing.spacing! * scale)).toBeLessThanOrEqual(loose(framing.spacing!));
    });

    test("every layer has its number, and the sides, the thickness and the water have words", () => {
      for (const { number } of buildUp.layers)
        expect(svg.includes(`font-weight="bold" fill="#1c2326">${number}</text>`)).toBe(true);
      const sides = [...svg.matchAll(/rotate\(-90\)"[^>]*font-weight="bold"[^>]*>([^<]+)</g)].map(([, word]) => word);
      expect(sides).toHaveLength(2);
      const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0) * 1000;
      expect(svg.includes(`>${Number(total.toFixed(2))} mm</text>`)).toBe(true);
      const peak = buildUp.moisture?.peak;
      expect(svg.includes("Water at the drops: most in")).toBe((peak?.amount ?? 0) > 0);
      if (peak?.month) expect(svg.includes(`most in ${peak.month}`)).toBe(true);
    });
  },
);

describe("the mark of the vapour layer", () => {
  const marked = (climate: string) => {
    const buildUp = assessText(`
project: Alder Row glaze store
climate: ${climate}
indoor: { temperature: 22 °C, humidity: 50 % }
build-ups:
  - name: Floor
    element: floor
    faces: void
    void: { area: 40 m2, perimeter: 26 m }
    layers:
      - { material: plywood, thickness: 20 mm, name: deck }
      - { material: mineral wool slab, thickness: 150 mm }
      - { material: plywood, thickness: 18 mm, name: underside }
`);
    const svg = buildUpDrawing(buildUp, governingView(buildUp), "d").text;
    const line = /<path d="M([\d.]+) [^>]*stroke-dasharray="12 5"/.exec(svg)!;
    const [deck, , underside] = [...svg.matchAll(/<rect x="([\d.]+)" y="[\d.]+" width="([\d.]+)"[^>]*fill="url/g)].map(
      ([, x, width]) => ({ left: Number(x), right: Number(x) + Number(width) }),
    );
    return { warmSide: buildUp.vapourLayer!.warmSide, at: Number(line[1]), deck: deck!, underside: underside! };
  };

  test("stands on its outer face where vapour comes from the void, on its inner face where it comes from the room", () => {
    const hot = marked("melbourne-florida");
    expect(hot.warmSide).toBe("outside");
    expect(hot.at).toBeCloseTo(hot.underside.right, 0);
    const cold = marked("oslo");
    expect(cold.warmSide).toBe("inside");
    expect(cold.at).toBeCloseTo(cold.deck.left, 0);
  });
});
