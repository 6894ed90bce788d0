import { climateMonths } from "../../packages/core/src/climate/climate-months.ts";
import { applySeverity, ONE_IN_TEN_COLDER, ONE_IN_TEN_WARMER } from "../../packages/core/src/climate/severity.ts";
import type { BuildUp, Layer, OutdoorClimate, Room } from "../../packages/core/src/project/types.ts";
import { roomMonths } from "../../packages/core/src/rooms/room-months.ts";
import { wetterRoom } from "../../packages/core/src/rooms/wetter-room.ts";
import type { Site } from "../../packages/core/src/surroundings/far-side-months.ts";
import type { Surroundings } from "../../packages/core/src/surroundings/surroundings.ts";
import { air, buildUp, framing, material, sheet, solid } from "../published/build-up-by-hand.ts";

/** Invented months of a mild maritime place; only how long the sums take depends on them. */
const OUTDOORS: OutdoorClimate = {
  name: "invented",
  origin: [],
  latitude: null,
  longitude: null,
  altitude: null,
  temperature: [3.1, 3.3, 5.9, 9.2, 12.9, 15.7, 17.8, 17.4, 14.7, 10.9, 6.8, 3.9],
  relativeHumidity: [0.89, 0.86, 0.82, 0.76, 0.74, 0.75, 0.76, 0.78, 0.83, 0.87, 0.9, 0.9],
};

const STUDIO: Room = {
  name: "indoor",
  temperature: { kind: "heated", setPoint: 20, daysPerWeek: 7, otherwise: null },
  cooling: null,
  humidity: { kind: "class", class: 3 },
  humidityWhenCooled: null,
  burstsOfSteam: false,
  pool: false,
};

/**
 * A timber wall of six layers with studs through the insulation: two sections.
 *
 * @param vapourLayer - sd of the sheet behind the plasterboard [m]: 50 keeps it dry, 0.1 lets water condense and dry out
 * @returns the build-up
 */
export function sixLayerWall(vapourLayer: number): BuildUp {
  const studs = framing("studs", 0.15);
  const layers = [
    solid(0.0125, 0.25, { name: "plasterboard", material: material(0.25, 10, { kind: "mineral" }) }),
    sheet(vapourLayer),
    solid(0.14, 0.035, {
      name: "mineral wool",
      framing: studs,
      material: material(0.035, 1, { kind: "mineral", density: 20, group: "insulation" }),
    }),
    solid(0.011, 0.13, { name: "board", material: material(0.13, 50, { kind: "board", density: 650 }) }),
    sheet(0.05),
    solid(0.02, 0.13, { name: "boarding", material: material(0.13, 50, { kind: "wood", density: 450 }) }),
  ];
  return buildUp(layers, { name: `wall with a sheet of sd ${vapourLayer} m`, slug: `wall-${vapourLayer}` });
}

/** The same wall with its insulation and board divided among so many layers, for the growth with layers. */
export function wallOfLayers(count: number): BuildUp {
  const layers: Layer[] = Array.from({ length: count }, (_, index) =>
    index % 2 === 0
      ? solid(0.01, 0.04, { material: material(0.04, 1 + (index % 5)) })
      : solid(0.01, 0.06, { material: material(0.06, 20 + (index % 7)) }),
  );
  return buildUp([...layers, air(0.025, { ventilation: "well" })], { slug: `wall-of-${count}` });
}

/** Outdoor air and the room of the reported year, and what else an assessment works out. */
export function surroundings(): Surroundings {
  const reported = siteOf(OUTDOORS, STUDIO);
  return {
    rooms: new Map([["indoor", STUDIO]]),
    humidityMargin: 1,
    sites: {
      reported,
      mean: reported,
      colder: siteOf(applySeverity(OUTDOORS, ONE_IN_TEN_COLDER), STUDIO),
      warmer: siteOf(applySeverity(OUTDOORS, ONE_IN_TEN_WARMER), STUDIO),
      wetter: siteOf(OUTDOORS, wetterRoom(STUDIO)),
      heatedDaily: siteOf(OUTDOORS, STUDIO),
    },
  };
}

function siteOf(climate: OutdoorClimate, room: Room): Site {
  const outdoor = climateMonths(climate);
  return { outdoor, rooms: new Map([["indoor", roomMonths(room, outdoor, 1)]]) };
}
