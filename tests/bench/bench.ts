/** Measures how fast warmside is, in ratios that hold on any machine: `npm run bench`, with `-- --json` as data. */
import { bytesPerCall } from "./bytes-per-call.ts";
import { growthWithBuildUps, growthWithLayers } from "./growth.ts";
import { inThePlane } from "./in-the-plane.ts";
import { changesOnPage } from "./live-page.ts";
import { calculationOverFloor, judgementOverFloor } from "./over-floor.ts";
import { quadprogOverOurs } from "./over-quadprog.ts";
import { badOverValidFile } from "./reading.ts";
import { searchesOverAssessment } from "./remedies.ts";
import { spreadOnWorkers } from "./spread-on-workers.ts";
import { reportBytes, startOverPlot } from "./start.ts";
import { inTable, type Measure } from "./table.ts";

const asJson = process.argv.includes("--json");
const measures: Measure[] = [];
const steps: (() => Measure[] | Promise<Measure[]>)[] = [
  calculationOverFloor,
  judgementOverFloor,
  quadprogOverOurs,
  searchesOverAssessment,
  growthWithBuildUps,
  growthWithLayers,
  badOverValidFile,
  bytesPerCall,
  startOverPlot,
  reportBytes,
  inThePlane,
  spreadOnWorkers,
  changesOnPage,
];
for (const step of steps) measures.push(...(await step()));
process.stdout.write(asJson ? `${JSON.stringify(asObject(measures), null, 2)}\n` : inTable(measures));

function asObject(list: readonly Measure[]): Record<string, Omit<Measure, "name">> {
  return Object.fromEntries(list.map(({ name, ...rest }) => [name, rest]));
}
