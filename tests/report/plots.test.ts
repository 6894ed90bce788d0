import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type SpreadResult, varyThickness } from "@warmside/core";
import {
  comparisonPlot,
  governingView,
  type Plot,
  spreadPlot,
  toSvg,
  twelveMonthsPlot,
  vapourPlot,
  variationPlot,
} from "@warmside/report";
import { describe, expect, test } from "vitest";
import { keptApart } from "../../packages/report/src/label-spacing.ts";
import { stretchedSd } from "../../packages/report/src/plots/stretched-sd.ts";
import { thinLine } from "../../packages/report/src/plots/thin-line.ts";
import { trappedWaterPlot } from "../../packages/report/src/plots/trapped-water-plot.ts";
import { demoProject, demoResult } from "./demo.ts";
import { everyPart } from "./every-part.ts";
import { twoWalls } from "./fixture.ts";

/** The report's own vega and vega-lite: the workspace's root has none. */
const ofReport = createRequire(join(import.meta.dirname, "../../packages/report/package.json"));
const library = async (name: string): Promise<Record<string, unknown>> =>
  await import(pathToFileURL(ofReport.resolve(name)).href);
const compile = (await library("vega-lite")).compile as (spec: unknown) => unknown;
const metrics = (await library("vega")).textMetrics as { width: () => number };

const demo = demoResult();
const [wet, dry] = twoWalls().buildUps.map((buildUp) => governingView(buildUp)!);
const trapped = everyPart().buildUps.flatMap(({ trappedWater }) => trappedWater)[0]!;
const variation = varyThickness(demoProject(), { buildUp: 0, layer: 2, from: 0, to: 0.2, step: null });

/** A study made by hand: two verdicts, two judgements, three inputs. */
const often = (word: string, count: number) => ({ word, count, probability: count / 100, standardError: 0.03 });
const input = (name: string, influence: number) => ({
  name,
  influenceOnJudgement: influence,
  influenceOnWater: 0,
  influenceOnTransmittance: 0,
});
const quantiles = { one: 0, five: 0, fifty: 0.1, ninetyFive: 0.2, ninetyNine: 0.3 };
const studied = {
  ...{ samples: 100, asked: 100, seed: 1, transmittance: quantiles, peak: quantiles, carriedOver: quantiles },
  verdicts: [often("dry", 70), often("dries out", 30)],
  judgements: [often("sound", 97), often("change it", 3)],
  inputs: [input("μ of board", 0.7), input("gaps", -0.2), input("room", 0)],
  ...{ decidesJudgement: "μ of board", decidesWater: null, decidesTransmittance: null, message: "" },
} as unknown as SpreadResult;

const PLOTS: [string, Plot][] = [
  ["vapour, wet", vapourPlot(wet!, "Water gathers")],
  ["vapour, dry", vapourPlot(dry!, "No condensation")],
  ["twelve months", twelveMonthsPlot(wet!)],
  ["trapped water", trappedWaterPlot(trapped)],
  ["comparison", comparisonPlot(demo.comparison!.buildUps.find(({ slug }) => slug === "workshop-wall")!)!],
  ["variation", variationPlot(variation)!],
  ["spread", spreadPlot(studied)],
];

describe.each(PLOTS)("plot: %s", (_, plot) => {
  test("its kind is portable: plain data that any vega-lite compiles", () => {
    const copy = JSON.parse(JSON.stringify(plot.kind.spec));
    expect(copy).toEqual(plot.kind.spec);
    expect(copy.$schema).toBe("https://vega.github.io/schema/vega-lite/v6.json");
    expect(() => compile(copy)).not.toThrow();
  });

  test("every data set that it gives is one of its kind's", () => {
    const named = JSON.stringify(plot.kind.spec)
      .match(/"data":\{"name":"(\w+)"/g)!
      .map((text) => /"(\w+)"$/.exec(text)![1]);
    expect([...new Set(named)].sort()).toEqual(Object.keys(plot.data).sort());
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

  test("hangs on no width of a text, and changes nothing for the whole process", async () => {
    const before = metrics.width;
    const drawn = (await toSvg(plot, "here")).text;
    expect(metrics.width).toBe(before);
    try {
      metrics.width = () => 300;
      expect((await toSvg(plot, "here")).text === drawn).toBe(true);
    } finally {
      metrics.width = before;
    }
  });
});

test("plots are drawn where code made from text is forbidden", () => {
  const root = join(import.meta.dirname, "../..");
  const script = `import{build}from"esbuild";
const made=await build({entryPoints:["packages/report/src/index.ts"],bundle:true,write:false,platform:"node",format:"esm",logLevel:"error",
alias:{"@warmside/core":"./packages/core/src/index.ts"},nodePaths:["packages/report/node_modules","packages/core/node_modules"],
stdin:undefined,banner:{js:"import{createRequire as r}from'node:module';const require=r(import.meta.url);"}});
const {writeFileSync,mkdtempSync}=await import("node:fs");const {tmpdir}=await import("node:os");
const file=mkdtempSync(tmpdir()+"/plots-")+"/report.mjs";writeFileSync(file,made.outputFiles[0].text);
const {toSvg}=await import(file);
const rows=[{at:0,value:1,line:"saturation"},{at:1,value:2,line:"saturation"}];
process.stdin.setEncoding("utf8");let text="";for await(const part of process.stdin)text+=part;
process.stdout.write((await toSvg(JSON.parse(text),"here")).text);`;
  const ended = spawnSync(
    process.execPath,
    ["--disallow-code-generation-from-strings", "--input-type=module", "-e", script],
    {
      cwd: root,
      input: JSON.stringify(PLOTS[0]![1]),
      encoding: "utf8",
    },
  );
  expect(ended.stderr).toBe("");
  expect(ended.stdout).toContain('<svg id="here" class="plot"');
});

describe("what the plots say", () => {
  test("a wet month names where the lines meet; a dry one says that they do not", () => {
    expect(PLOTS[0]![1].description).toContain(
      "They meet between layer 2, mineral wool slab, and layer 3, oriented strand board",
    );
    expect(PLOTS[1]![1].description).toContain("They do not meet");
  });

  test("a vega warning is a fault", async () => {
    const kind = {
      spec: {
        ...PLOTS[2]![1].kind.spec,
        mark: "line",
        facet: undefined,
        spec: undefined,
        encoding: { order: { field: "a", type: "nominal" } },
      } as never,
    };
    await expect(toSvg({ ...PLOTS[2]![1], kind }, "here")).rejects.toThrow(/gave a warning|went wrong/);
  });

  test("every plot of the demo is drawn without a warning", async () => {
    for (const buildUp of demo.buildUps) {
      const view = governingView(buildUp);
      if (!view) continue;
      for (const plot of [vapourPlot(view, buildUp.name), twelveMonthsPlot(view)])
        expect((await toSvg(plot, "x")).text.length, `${buildUp.name}: ${plot.title}`).toBeGreaterThan(1000);
    }
  });

  test("both curves run through the air on both sides to the edge of the plot", () => {
    for (const line of ["saturation", "vapour"]) {
      const own = PLOTS[0]![1].data.points!.filter((point) => point.line === line);
      expect([own[0]!.at, own.at(-1)!.at]).toEqual([0, 1]);
    }
  });
});

describe("layers over sd", () => {
  test("share the width in proportion; a layer that dwarfs the rest is drawn narrower and said to be broken", () => {
    for (const buildUp of demo.buildUps) {
      const view = governingView(buildUp);
      if (!view) continue;
      const { bands, at } = stretchedSd(view);
      const whole = bands.filter(({ broken }) => !broken);
      const perMetre = whole.map(({ from, to, sd }) => (to - from) / sd);
      for (const one of perMetre) expect(one / perMetre[0]!).toBeCloseTo(1, 6);
      expect(bands[0]!.from).toBeCloseTo(0.07, 9);
      expect(bands.at(-1)!.to).toBeCloseTo(0.93, 9);
      for (const { broken, from, to, sd } of bands) if (broken) expect((to - from) / sd).toBeLessThan(perMetre[0]!);
      let sd = 0;
      for (const band of bands) {
        sd += band.sd;
        expect(at(sd)).toBeCloseTo(band.to, 6);
      }
    }
  });
});

describe("helpers of the plots", () => {
  test("labels that would overlap are spread around their places, and stay within the ends", () => {
    expect(keptApart([10, 11, 40], 8, 0, 100)).toEqual([6.5, 14.5, 40]);
    expect(keptApart([1, 2, 3], 10, 0, 100)).toEqual([0, 10, 20]);
    expect(keptApart([99, 100], 10, 0, 100)).toEqual([90, 100]);
    expect(keptApart([], 10, 0, 100)).toEqual([]);
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
  });
});
