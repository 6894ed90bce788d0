import { saturationPressure } from "../air/saturation-pressure.ts";
import { DAYS_IN_MONTH } from "../constants.ts";
import { voidTransmittances } from "../heat/ground-floor.ts";
import type { HeatCalculation } from "../heat/types.ts";
import type { AirMonths, BuildUp, StatedMonths, UnderfloorVoid } from "../project/types.ts";

/** Month by month, outdoor air and the air of every room: all that a build-up can face. */
export interface Site {
  outdoor: AirMonths;
  rooms: ReadonlyMap<string, AirMonths>;
}

/** The air beyond a build-up's last layer, and in words how it was found. */
export interface FarSide {
  name: string;
  rule: string;
  months: AirMonths;
}

/**
 * The air on the outer side of a build-up: outdoors, another room, a ventilated void under a floor, or the ground.
 *
 * @param buildUp - the build-up
 * @param site - outdoor air and rooms
 * @param inside - the air of the build-up's own room
 * @param heat - its heat figures (a void's temperature follows from them)
 * @returns twelve months of temperature [°C] and vapour pressure [Pa]
 * @throws RangeError when it faces a room that the site does not have
 * Source: given at the function of each kind, below.
 */
export function farSideMonths(buildUp: BuildUp, site: Site, inside: AirMonths, heat: HeatCalculation): FarSide {
  if (buildUp.faces === "outdoors")
    return { name: "outdoors", rule: "monthly means of the climate", months: site.outdoor };
  if (buildUp.faces === "ground") {
    return {
      name: "ground",
      rule: "below the resistance of the ground, the yearly mean outdoor temperature, saturated",
      months: groundMonths(site.outdoor),
    };
  }
  if (buildUp.faces === "void") return voidSide(buildUp, site, inside, heat);
  return { name: buildUp.faces, rule: "the twelve months of the room", months: roomOf(site, buildUp.faces) };
}

/** The months of a room [°C, Pa]. @throws RangeError when the site does not have it */
export function roomOf(site: Site, name: string): AirMonths {
  const room = site.rooms.get(name);
  if (room === undefined) throw new RangeError(`no room is called ${name}`);
  return room;
}

/**
 * The ground under a slab: the year's mean outdoor temperature, saturated.
 *
 * @param outdoor - twelve months of outdoor air
 * @returns twelve equal months
 * Source: ISO 13788:2012 clause 4.2.3 (from memory).
 */
export function groundMonths(outdoor: AirMonths): AirMonths {
  const temperature = yearlyMean(outdoor.temperature);
  return {
    temperature: outdoor.temperature.map(() => temperature),
    vapourPressure: outdoor.temperature.map(() => saturationPressure(temperature)),
  };
}

/** Mean over the year weighted by the days of the months [unit of the values]. */
export function yearlyMean(values: readonly number[]): number {
  const days = DAYS_IN_MONTH.reduce((sum, count) => sum + count, 0);
  return values.reduce((sum, value, month) => sum + value * DAYS_IN_MONTH[month]!, 0) / days;
}

function voidSide(buildUp: BuildUp, site: Site, inside: AirMonths, heat: HeatCalculation): FarSide {
  if (buildUp.voidClimate !== null) {
    return { name: "void", rule: "temperature and humidity as stated", months: statedMonths(buildUp.voidClimate) };
  }
  const space = buildUp.void!;
  const floorResistance = heat.resistance - heat.surfaceResistances.inside - heat.surfaceResistances.outside;
  return {
    name: "void",
    rule: "temperature from the floor, the ground and ventilation (ISO 13370:2017 transmittances); vapour pressure of outdoor air, at most saturation",
    months: ventilatedVoidMonths(space, floorResistance, inside, site.outdoor),
  };
}

/**
 * Air of a ventilated void under a floor.
 *
 * @param space - the void
 * @param floorResistance - Rf of the floor [m²·K/W]
 * @param inside - room air
 * @param outdoor - outdoor air
 * @returns θu = (Uf·θi + Ug·θe,year + Ux·θe)/(Uf + Ug + Ux) [°C] and the outdoor vapour pressure, at most saturation [Pa]
 * Source: this project's balance on the transmittances of ISO 13370:2017 clause 7.3.
 */
export function ventilatedVoidMonths(
  space: UnderfloorVoid,
  floorResistance: number,
  inside: AirMonths,
  outdoor: AirMonths,
): AirMonths {
  const { floor, ground, outdoors } = voidTransmittances(space, floorResistance);
  const groundTemperature = yearlyMean(outdoor.temperature);
  const temperature = outdoor.temperature.map((outdoorTemperature, month) => {
    const heatIn = floor * inside.temperature[month]! + ground * groundTemperature + outdoors * outdoorTemperature;
    return heatIn / (floor + ground + outdoors);
  });
  const vapourPressure = temperature.map((value, month) =>
    Math.min(outdoor.vapourPressure[month]!, saturationPressure(value)),
  );
  return { temperature, vapourPressure };
}

function statedMonths(stated: StatedMonths): AirMonths {
  return {
    temperature: stated.temperature,
    vapourPressure: stated.temperature.map(
      (value, month) => stated.relativeHumidity[month]! * saturationPressure(value),
    ),
  };
}
