import {
  airPlot,
  governingView,
  type Plot,
  temperaturePlot,
  toSvg,
  twelveMonthsPlot,
  vapourPlot,
  woodMoisturePlot,
  yearOfWaterPlot,
} from "@warmside/report";
import { describe, expect, test } from "vitest";
import { textWidth } from "../../packages/report/src/plots/text-width.ts";
import { thinLine } from "../../packages/report/src/plots/thin-line.ts";
import { spread } from "../../packages/report/src/spread.ts";
import { demoResult } from "./demo.ts";
import { twoWalls } from "./fixture.ts";

const result = twoWalls();
const [wet, dry] = result.buildUps.map((buildUp) => governingView(buildUp)!);
const outdoors = { name: "outdoors", months: result.climate.months };

const PLOTS: [string, Plot][] = [
  ["temperature-wet", temperaturePlot(wet!)],
  ["temperature-dry", temperaturePlot(dry!)],
  ["vapour-wet", vapourPlot(wet!)],
  ["vapour-dry", vapourPlot(dry!)],
  ["twelve-months-wet", twelveMonthsPlot(wet!)],
  ["year-of-water", yearOfWaterPlot(wet!)],
  ["wood-moisture", woodMoisturePlot(result.buildUps[1]!.wood)],
  ["air-outdoors", airPlot([outdoors], "Outdoor air")],
  ["air-room", airPlot([outdoors, { name: "indoor", months: result.rooms[0]!.months }], "Air of the room")],
];

describe.each(PLOTS)("plot %s", (name, plot) => {
  test("specification as snapshot (of our own making; proves nothing about truth)", async () => {
    const digits = (_: string, value: unknown): unknown =>
      typeof value === "number" ? Number(value.toPrecision(6)) : value;
    await expect(`${JSON.stringify(plot.spec, digits, 1)}\n`).toMatchFileSnapshot(`snapshots/${name}.json`);
  });

  test("is drawn without a warning, named, described, to a tenth of a pixel, asking for nothing", async () => {
    const { text } = await toSvg(plot, "here");
    expect(text.startsWith('<svg id="here" class="plot" role="img" aria-labelledby="here-title here-text"')).toBe(true);
    expect(/<title id="here-title">(.+?)<\/title>/.exec(text)?.[1]).toBe(plot.title);
    expect(/<desc id="here-text">(.+?)<\/desc>/.exec(text)?.[1]?.length).toBeGreaterThan(30);
    expect(text.match(/="[^"]*\d\.\d\d+[^"]*"/g)?.filter((attribute) => !attribute.includes("url"))).toBeUndefined();
    expect(text.match(/NaN|undefined|http|href|style=/g)).toBeNull();
    expect((text.match(/<path|<line/g) ?? []).length).toBeGreaterThan(5);
  });

  test("is drawn the same twice in one process", async () => {
    expect((await toSvg(plot, "here")).text).toBe((await toSvg(plot, "here")).text);
  });
});

describe("what the plots say", () => {
  test("a wet month names its place, amount and month; a dry one says that the lines do not meet", async () => {
    const { text } = await toSvg(temperaturePlot(wet!), "here");
    expect(text).toMatch(/>\d+\u00a0g\/m² condenses in January</);
    expect(temperaturePlot(wet!).description).toContain(
      "They meet between layer 2, mineral wool slab, and layer 3, oriented strand board",
    );
    expect(temperaturePlot(dry!).description).toContain("They do not meet");
  });

  test("a vega warning is a fault", async () => {
    const plot = PLOTS[0]![1];
    const spec = {
      ...plot.spec,
      mark: "line",
      layer: undefined,
      data: { values: [] },
      encoding: { order: { field: "a", type: "nominal" } },
    };
    await expect(toSvg({ ...plot, spec: spec as never }, "here")).rejects.toThrow(/gave a warning/);
  });

  test("every plot of the demo is drawn without a warning", async () => {
    for (const buildUp of demoResult().buildUps) {
      const view = governingView(buildUp);
      if (!view) continue;
      const plots = [
        temperaturePlot(view),
        vapourPlot(view),
        twelveMonthsPlot(view),
        ...(view.wetNodes.length > 0 ? [yearOfWaterPlot(view)] : []),
      ];
      for (const plot of plots)
        expect((await toSvg(plot, "x")).text.length, `${buildUp.name}: ${plot.title}`).toBeGreaterThan(1000);
    }
  }, 60_000);
});

describe("helpers of the plots", () => {
  test("labels that would overlap are spread around their places, and stay within the ends", () => {
    expect(spread([10, 11, 40], 8, 0, 100)).toEqual([6.5, 14.5, 40]);
    expect(spread([1, 2, 3], 10, 0, 100)).toEqual([0, 10, 20]);
    expect(spread([99, 100], 10, 0, 100)).toEqual([90, 100]);
    expect(spread([], 10, 0, 100)).toEqual([]);
  });

  test("a thinned line keeps its ends and its bends, and strays no further than allowed", () => {
    const points = Array.from({ length: 50 }, (_, index) => ({ at: index, value: Math.sin(index / 8) }));
    const thin = thinLine(points, 0.02);
    expect([thin[0], thin.at(-1)]).toEqual([points[0], points.at(-1)]);
    expect(thin.length).toBeLessThan(25);
    for (const { at, value } of points) {
      const after = thin.findIndex((point) => point.at >= at);
      const [from, to] = [thin[Math.max(0, after - 1)]!, thin[after]!];
      const line =
        to.at === from.at ? to.value : from.value + ((at - from.at) * (to.value - from.value)) / (to.at - from.at);
      expect(Math.abs(line - value)).toBeLessThanOrEqual(0.02 + 1e-12);
    }
    const step = [
      { at: 0, value: 0 },
      { at: 1, value: 0 },
      { at: 1, value: 5 },
      { at: 2, value: 5 },
    ];
    expect(thinLine(step, 0.02)).toEqual(step);
  });

  test("texts are as wide as in Arial: R 722, o 556 twice, m 833, space 278, figures 556 thousandths", () => {
    expect(textWidth("Room 20", 10, false)).toBeCloseTo(40.57, 2);
    expect(textWidth("Room 20", 10, true)).toBeGreaterThan(textWidth("Room 20", 10, false));
  });
});

describe("many wooden layers in one plot", () => {
  const [layer] = result.buildUps[1]!.wood;
  const many = Array.from({ length: 12 }, (_, number) => ({
    ...layer!,
    layer: number,
    name: `board ${number}`,
    months: layer!.months.map((month) => ({ ...month, inner: 0.1, outer: 0.1 + (number % 6) / 100 + number / 10_000 })),
  }));

  test("the eight wettest have a line and a place in the legend each, and the description says so", async () => {
    const plot = woodMoisturePlot(many);
    const drawn = new Set(JSON.stringify(plot.spec).match(/board \d+/g));
    const wettest = [...many].sort((one, other) => other.months[0]!.outer - one.months[0]!.outer).slice(0, 8);
    expect([...drawn].sort()).toEqual(wettest.map(({ name }) => name).sort());
    expect(plot.description).toContain("the 8 wettest wooden layers");
    await expect(toSvg(plot, "many")).resolves.toBeDefined();
  });
});
