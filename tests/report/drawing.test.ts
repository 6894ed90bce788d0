import { governingView, sectionDrawing } from "@warmside/report";
import { describe, expect, test } from "vitest";
import { millimetres } from "../../packages/report/src/numbers.ts";
import { sideWords } from "../../packages/report/src/words.ts";
import { assessText } from "../core/corpus.ts";
import { demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";

describe.each([...demoResult().buildUps, ...everyPart().buildUps].map((buildUp) => [buildUp.name, buildUp] as const))(
  "drawing of %s",
  (_, buildUp) => {
    const svg = sectionDrawing(buildUp, governingView(buildUp), "d").text;
    const isUpright = buildUp.element === "wall" || buildUp.element === "partition";
    const rectangles = [
      ...svg.matchAll(/<rect x="([\d.]+)" y="([\d.]+)" width="([\d.]+)" height="([\d.]+)" fill="url\(#[^)]+\)"/g),
    ].map(([, x, y, width, height]) => {
      const [left, top, wide, high] = [x, y, width, height].map(Number) as [number, number, number, number];
      // Across the build-up and along it, whichever way it lies.
      return isUpright
        ? { across: wide, along: high, at: left, beside: top }
        : { across: high, along: wide, at: top, beside: left };
    });
    const solid = buildUp.layers.filter(({ type }) => type !== "sheet");
    const bodies = rectangles.slice(0, solid.length);
    const scale = bodies.reduce(
      (most, body, index) => {
        const one = body.across / solid[index]!.thickness;
        return solid[index]!.thickness > most.thickness ? { thickness: solid[index]!.thickness, perMetre: one } : most;
      },
      { thickness: 0, perMetre: 0 },
    ).perMetre;

    test("layers are as thick as they are, on one scale; a wall stands, a roof and a floor lie", () => {
      bodies.forEach((body, index) => {
        expect(Math.abs(body.across - solid[index]!.thickness * scale)).toBeLessThanOrEqual(0.11);
      });
      const order = bodies.map(({ at }) => at);
      const outwards = buildUp.element.endsWith("roof") ? [...order].reverse() : order;
      expect(outwards).toEqual([...outwards].sort((one, other) => one - other));
      expect(svg).toContain(isUpright ? 'class="drawing upright"' : 'class="drawing lying"');
    });

    test("framing is as wide, and as far apart, as it is", () => {
      const members = rectangles.slice(solid.length);
      const framing = buildUp.framings[0];
      if (!framing) {
        expect(members).toEqual([]);
        return;
      }
      expect(members.length).toBeGreaterThan(0);
      const length = bodies[0]!.along;
      const inside = members.filter(
        ({ beside, along }) => beside > bodies[0]!.beside && beside + along < bodies[0]!.beside + length,
      );
      if (framing.width && inside[0])
        expect(Math.abs(inside[0].along - framing.width * scale)).toBeLessThanOrEqual(0.2);
      if (framing.spacing && inside[1] && buildUp.framings.length === 1)
        expect(Math.abs(inside[1].beside - inside[0]!.beside - framing.spacing * scale)).toBeLessThanOrEqual(0.2);
    });

    test("every layer has its number, every thickness its dimension, and the sides have words", () => {
      for (const { number, thickness } of buildUp.layers) {
        expect(svg).toContain(`font-weight="bold" fill="#1c2326">${number}</text>`);
        if (thickness > 0) expect(svg).toContain(`>${millimetres(thickness)}</text>`);
      }
      const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0);
      expect(svg).toContain(`>${millimetres(total)} mm in all</text>`);
      const { room, far } = sideWords(buildUp);
      for (const side of [room, far]) expect(svg).toContain(`>${side}</text>`);
    });

    test("numbers do not lie on each other, nor do thicknesses", () => {
      const places = (of: RegExp): number[] => [...svg.matchAll(of)].map(([, x, y]) => Number(isUpright ? x : y));
      const rings = places(/<circle cx="([\d.]+)" cy="([\d.]+)" r="9"/g).sort((one, other) => one - other);
      expect(rings).toHaveLength(buildUp.layers.length);
      for (let index = 1; index < rings.length; index += 1)
        expect(rings[index]! - rings[index - 1]!).toBeGreaterThanOrEqual(17.9);
    });

    test("a heavy dashed line marks the vapour layer, and stands only where there is one", () => {
      const isLayer = buildUp.vapourLayer?.present === true && buildUp.vapourLayer.onWarmSide === true;
      expect(svg.includes('stroke-dasharray="11 5"')).toBe(isLayer);
    });

    test("temperature and dew point of the critical month lie over it, with degrees at the edge", () => {
      expect(svg.includes("°C</text>")).toBe(buildUp.moisture !== null);
      expect(svg.includes('stroke="#d55e00" stroke-width="2.5"')).toBe(buildUp.moisture !== null);
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
    const svg = sectionDrawing(buildUp, governingView(buildUp), "d").text;
    const line = /<path d="M[\d.]+ ([\d.]+)L[^>]*stroke-dasharray="11 5"/.exec(svg)!;
    const [deck, , underside] = [
      ...svg.matchAll(/<rect x="[\d.]+" y="([\d.]+)" width="[\d.]+" height="([\d.]+)"[^>]*fill="url/g),
    ].map(([, y, height]) => ({ top: Number(y), bottom: Number(y) + Number(height) }));
    return { warmSide: buildUp.vapourLayer!.warmSide, at: Number(line[1]), deck: deck!, underside: underside! };
  };

  test("stands on its outer face where vapour comes from the void, on its inner face where it comes from the room", () => {
    const hot = marked("melbourne-florida");
    expect(hot.warmSide).toBe("outside");
    expect(hot.at).toBeCloseTo(hot.underside.bottom, 0);
    const cold = marked("oslo");
    expect(cold.warmSide).toBe("inside");
    expect(cold.at).toBeCloseTo(cold.deck.top, 0);
  });
});
