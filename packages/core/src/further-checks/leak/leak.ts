import type { BuildUpCalculation, SectionCalculation } from "../../calculate-build-up.ts";
import { MONTH_NAMES } from "../../constants.ts";
import { mainInsulation } from "../../heat/main-insulation.ts";
import type { LeakData, Place } from "../../result/types.ts";
import { secondsOfMonth } from "../../year/month-balance.ts";
import { facesOfSlices, placeOf, slicesTouching } from "../section-nodes/places.ts";
import { limitAtPlane } from "../two-season/plane-limit.ts";
import { leakAirFlow, leakWaterFlow } from "./leak-flow.ts";

/**
 * Air leakage beside diffusion: water that air through a stated gap would deposit at the cold face of the main
 * insulation, in the section where it deposits most.
 *
 * @param calculation - the build-up's figures
 * @returns amounts by month and over the year, beside the condensate from diffusion; null when no gap is stated
 * Source: this project's rule (METHOD.md, Air leakage). An upper bound: air always flows outwards and all of it cools
 *   to the plane.
 */
export function leak(calculation: BuildUpCalculation): LeakData | null {
  const stated = calculation.buildUp.leak;
  if (stated === null) return null;
  const area = stated.length * stated.width;
  const airFlow = leakAirFlow(area, stated.pressure);
  const coldest = coldestPlane(calculation, airFlow);
  if (coldest === null) return null;
  const { amounts, total, place, limit } = coldest;
  const wetSeconds = amounts.reduce((sum, amount, month) => sum + (amount > 0 ? secondsOfMonth(month) : 0), 0);
  return {
    area,
    pressure: stated.pressure,
    airFlow,
    airVolume: airFlow * wetSeconds,
    months: MONTH_NAMES.map((month, index) => ({ month, amount: amounts[index]! })),
    total,
    diffusion: condensedByDiffusion(calculation),
    place,
    limit,
  };
}

/** Water from the leak at the cold face of the main insulation in one section [kg/m²]: by month, and over the year. */
interface LeakAtPlane {
  amounts: number[];
  total: number;
  place: Place;
  limit: number;
}

/**
 * The plane of the section that receives most. The gap may be anywhere, so the upper bound takes the coldest plane, not
 * that of the governing section: framing conducts heat to the plane and keeps it warmer.
 */
function coldestPlane(calculation: BuildUpCalculation, airFlow: number): LeakAtPlane | null {
  const main = mainInsulation(calculation.heat.counted);
  if (main === null) return null;
  const planes = calculation.sections.flatMap(
    (section) => leakAtPlane(section, main.index, calculation, airFlow) ?? [],
  );
  return planes.reduce<LeakAtPlane | null>(
    (most, plane) => (most === null || plane.total > most.total ? plane : most),
    null,
  );
}

/** Null where the section has no resistance at the main insulation. */
function leakAtPlane(
  { line, slices, climate, path }: SectionCalculation,
  insulation: number,
  { inside, buildUp }: BuildUpCalculation,
  airFlow: number,
): LeakAtPlane | null {
  const faces = facesOfSlices(line, slices);
  const slice = slices.findLastIndex(({ layer, resistance }) => layer === insulation && resistance > 0);
  const node = faces[slice]?.outer;
  if (node === undefined) return null;
  const amounts = MONTH_NAMES.map((_, month) => {
    const { temperature, vapourPressure } = inside;
    const plane = climate.temperature[month]![node]!;
    return leakWaterFlow(airFlow, vapourPressure[month]!, temperature[month]!, plane) * secondsOfMonth(month);
  });
  const total = amounts.reduce((sum, amount) => sum + amount, 0);
  const touching = slicesTouching(slices, faces, node);
  return { amounts, total, place: placeOf(touching), limit: limitAtPlane(touching, buildUp, path) };
}

/** All condensate from diffusion over the year, without subtracting evaporation [kg/m²]. */
function condensedByDiffusion({ governing }: BuildUpCalculation): number {
  return governing.year.change.reduce(
    (sum, month) => month.reduce((inMonth, change) => inMonth + Math.max(0, change), sum),
    0,
  );
}
