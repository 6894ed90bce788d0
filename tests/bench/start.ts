import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { median } from "./measure.ts";
import type { Measure } from "./table.ts";

const ROUNDS = 7;
export const COMMAND = "packages/report/bundle/warmside.mjs";
export const DEMO = "shared/alder-row-pottery.yaml";

/** Imports vega and vega-lite and draws one plot: what any such report has to do. */
const ONE_PLOT = `
import * as vega from "vega";
import { compile } from "vega-lite";
const { spec } = compile({
  data: { values: [{ a: 1, b: 2 }, { a: 2, b: 3 }] },
  mark: "line",
  encoding: { x: { field: "a", type: "quantitative" }, y: { field: "b", type: "quantitative" } },
});
const svg = await new vega.View(vega.parse(spec), { renderer: "none" }).toSVG();
if (!svg.startsWith("<svg")) process.exit(1);
`;

/** The whole command on the demo, from a cold start, over a process that does no more than draw one plot. */
export function startOverPlot(): Measure[] {
  const folder = mkdtempSync(join(tmpdir(), "warmside-bench-"));
  // Beside the sources, so that its imports are found.
  const plot = join(process.cwd(), "packages/report/bundle", `one-plot-${process.pid}.mjs`);
  writeFileSync(plot, ONE_PLOT);
  try {
    const ratios: number[] = [];
    const times: number[] = [];
    for (let round = 0; round < ROUNDS; round += 1) {
      const command = timeOfProcess([COMMAND, "assess", DEMO, "--out", join(folder, "report.html")]);
      ratios.push(command / timeOfProcess([plot]));
      times.push(command);
    }
    return [
      {
        name: "startToFloor",
        value: median(ratios),
        unit: "times",
        goal: { atMost: 2.5 },
        what: "the command on the demo over a process that draws one plot",
      },
      {
        name: "startTime",
        value: median(times),
        unit: "s",
        goal: null,
        what: "the command on the demo, with its report",
      },
    ];
  } finally {
    rmSync(plot, { force: true });
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Size of the demo's report. */
export function reportBytes(): Measure[] {
  const folder = mkdtempSync(join(tmpdir(), "warmside-bench-"));
  const report = join(folder, "report.html");
  timeOfProcess([COMMAND, "assess", DEMO, "--out", report]);
  const { size } = statSync(report);
  rmSync(folder, { recursive: true, force: true });
  return [{ name: "reportBytes", value: size, unit: "bytes", goal: null, what: "the demo's report (seven build-ups)" }];
}

function timeOfProcess(words: readonly string[]): number {
  const start = performance.now();
  const done = spawnSync(process.execPath, words, { encoding: "utf8" });
  if (done.status !== 0) throw new Error(`${words.join(" ")} ended with ${done.status}: ${done.stderr}`);
  return (performance.now() - start) / 1000;
}
