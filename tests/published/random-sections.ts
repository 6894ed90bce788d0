import fc from "fast-check";
import { vapourPressure } from "../../packages/core/src/air/humidity.ts";
import type { AirMonths } from "../../packages/core/src/project/types.ts";
import type { NodeLine } from "../../packages/core/src/vapour/node-line.ts";
import type { DrivenSection } from "../../packages/core/src/year/month-balance.ts";
import { drivenSection, type PlainLayer } from "./plain-section.ts";

/** A number between two, all alike (fast-check's own doubles favour the smallest). */
export const between = (least: number, most: number): fc.Arbitrary<number> =>
  fc.nat({ max: 1_000_000 }).map((step) => least + ((most - least) * step) / 1_000_000);

/** A number between two, spread evenly over its powers of ten. */
export const overPowers = (least: number, most: number): fc.Arbitrary<number> =>
  between(Math.log(least), Math.log(most)).map((power) => Math.min(most, Math.max(least, Math.exp(power))));

/** A layer's resistance: none, as a sheet, or some. */
const resistances = fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 4, arbitrary: between(0.001, 2.5) });

/** Layers whose parts (ten at most) differ in sd by less than 10⁴: 0.005 m to 20 m. */
export const plainLayers: fc.Arbitrary<PlainLayer[]> = fc.array(
  fc.record({ resistance: resistances, sd: overPowers(0.05, 20) }),
  { minLength: 1, maxLength: 6 },
);

/** Twelve months of air, each on its own. */
export const airMonths = (coldest: number, warmest: number, driest: number, dampest: number): fc.Arbitrary<AirMonths> =>
  fc
    .array(fc.tuple(between(coldest, warmest), between(driest, dampest)), { minLength: 12, maxLength: 12 })
    .map((months) => ({
      temperature: months.map(([temperature]) => temperature),
      vapourPressure: months.map(([temperature, humidity]) => vapourPressure(humidity, temperature)),
    }));

export const rooms = airMonths(5, 26, 0.2, 0.95);
export const outdoors = airMonths(-20, 32, 0.3, 1);

/** A section between two airs, with its node line and climate. */
export interface RandomSection extends DrivenSection {
  layers: PlainLayer[];
  inside: AirMonths;
  outside: AirMonths;
  line: NodeLine;
}

export const sections: fc.Arbitrary<RandomSection> = fc
  .record({ layers: plainLayers, inside: rooms, outside: outdoors })
  .map(({ layers, inside, outside }) => ({ layers, inside, outside, ...drivenSection(layers, inside, outside) }));

/** A month of the year, 0 to 11. */
export const months = fc.nat({ max: 11 });

/** Which of so many nodes hold water: about a third of the inner ones. */
export const wetNodes = (count: number): fc.Arbitrary<Uint8Array> =>
  fc
    .array(fc.nat({ max: 2 }), { minLength: count, maxLength: count })
    .map((draws) => Uint8Array.from(draws, (draw, node) => (draw === 0 && node > 0 && node < count - 1 ? 1 : 0)));
