import { relativeHumidity } from "../../air/humidity.ts";
import type { BuildUpCalculation, SectionCalculation } from "../../calculate-build-up.ts";
import { MONTH_NAMES, MONTHS_PER_YEAR } from "../../constants.ts";
import type { AirMonths, BuildUp, Material } from "../../project/types.ts";
import type { MonthName, Place, SectionId } from "../../result/types.ts";
import { humidityAtNode } from "../section-nodes/humidity-at-node.ts";
import { materialOfSlice } from "../section-nodes/material-of-slice.ts";
import { facesOfSlices, placeOf, slicesTouching, type Touching } from "../section-nodes/places.ts";
import { waterThatWets } from "../water-that-wets.ts";
import { growthLimit } from "./growth-limit.ts";

/** An interface counts only where its humidity exceeds that outdoors by this [–]: two points (this project's rule). */
export const MORE_HUMID_THAN_OUTDOORS = 0.02;

/** An interface where mould can grow, with the months in which it can. */
export interface HumidInterface {
  section: SectionId;
  node: number;
  place: Place;
  /** The material that would feed mould there, and whether it is timber or board. */
  food: string;
  isOnWood: boolean;
  /** Whether framing touches it; the water of its section or the bay that could wet it [kg/m²], null without limit. */
  isOnFraming: boolean;
  water: number | null;
  months: { month: MonthName; temperature: number; relativeHumidity: number; limit: number; outdoors: number }[];
}

/**
 * Interfaces that are humid but need not be wet: above mould's growth limit at their temperature, more humid than
 * outdoors, and next to a material that feeds mould. The room surface and the outermost node (the outer face, or the
 * face towards a well-ventilated layer) are left out.
 *
 * @param calculation - the build-up's figures
 * @param outdoor - twelve months of outdoor air [°C, Pa]
 * @returns interfaces with at least one such month, section by section from the room outwards
 * Source: this project's rule (METHOD.md, Mould between layers) on the growth limit of Hukka and Viitanen 1999.
 */
export function humidInterfaces(calculation: BuildUpCalculation, outdoor: AirMonths): HumidInterface[] {
  const outdoors = outdoor.vapourPressure.map((pressure, month) =>
    relativeHumidity(pressure, outdoor.temperature[month]!),
  );
  const bay = calculation.sections.find(({ path }) => path.through.length === 0);
  return calculation.sections.flatMap((section) => {
    const water = waterThatWets(bay === undefined ? [section] : [section, bay]);
    return interfacesOfSection(section, calculation.buildUp, outdoors, water);
  });
}

function interfacesOfSection(
  section: SectionCalculation,
  buildUp: BuildUp,
  outdoors: readonly number[],
  water: number | null,
): HumidInterface[] {
  const faces = facesOfSlices(section.line, section.slices);
  const found: HumidInterface[] = [];
  for (let node = 1; node < section.line.count - 1; node += 1) {
    const touching = slicesTouching(section.slices, faces, node);
    if (touching.inner === touching.outer || isInsideTimber(touching, buildUp)) continue;
    const food = foodForMould(touching, buildUp, section);
    if (food === null) continue;
    const months = monthsOverLimit(section, node, outdoors);
    if (months.length > 0)
      found.push({
        section: section.id,
        node,
        place: placeOf(touching),
        food: food.name,
        isOnWood: food.kind !== "paper",
        isOnFraming: isFraming(touching),
        water,
        months,
      });
  }
  return found;
}

function isFraming({ inner, outer }: Touching): boolean {
  return inner?.part === "framing" || outer?.part === "framing";
}

/** A timber that runs through several layers has no interfaces inside it. */
function isInsideTimber({ inner, outer }: Touching, { layers }: BuildUp): boolean {
  if (inner?.part !== "framing" || outer?.part !== "framing") return false;
  return layers[inner.layer]!.framing!.name === layers[outer.layer]!.framing!.name;
}

/** The innermost of the touching materials that feed mould, or null. */
function foodForMould({ inner, outer }: Touching, buildUp: BuildUp, section: SectionCalculation): Material | null {
  for (const slice of [inner, outer]) {
    const material = slice === null ? null : materialOfSlice(slice, buildUp, section.path);
    if (material?.kind === "wood" || material?.kind === "board" || material?.kind === "paper") return material;
  }
  return null;
}

function monthsOverLimit(
  section: SectionCalculation,
  node: number,
  outdoors: readonly number[],
): HumidInterface["months"] {
  const { year, climate } = section;
  const months: HumidInterface["months"] = [];
  for (let month = 0; month < MONTHS_PER_YEAR; month += 1) {
    const temperature = climate.temperature[month]![node]!;
    const humidity = humidityAtNode(year.pressure[month]!, climate.saturation[month]!, node);
    const limit = growthLimit(temperature);
    if (humidity > limit && humidity > outdoors[month]! + MORE_HUMID_THAN_OUTDOORS) {
      months.push({
        month: MONTH_NAMES[month]!,
        temperature,
        relativeHumidity: humidity,
        limit,
        outdoors: outdoors[month]!,
      });
    }
  }
  return months;
}
