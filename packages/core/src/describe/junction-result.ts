import { MONTH_NAMES } from "../constants.ts";
import { temperaturesOf } from "../field/plane-heat.ts";
import { planePicture } from "../field/plane-picture.ts";
import type { Box } from "../field/scene.ts";
import { junctionInWords } from "../findings/words/junction.ts";
import type { JunctionCheck } from "../plane-checks/junction-check.ts";
import type { JunctionResult, PlanePicture } from "../result/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";

/**
 * A junction in the shape of the result.
 *
 * @param check - its figures
 * @param site - outdoor air and rooms, for the month of the picture
 * @returns plain data with a picture
 */
export function junctionResult(check: JunctionCheck, site: Site): JunctionResult {
  const { junction, buildUps, beyond, assumed, required, heat, alternatives } = check;
  const meets = (factor: number): boolean | null => (required === null ? null : factor >= required.factor);
  const figures =
    heat === null
      ? null
      : {
          temperatureFactor: heat.temperatureFactor,
          required,
          meetsMould: meets(heat.temperatureFactor),
          linearTransmittance: heat.linearTransmittance,
          uncertainty: (heat.upper - heat.lower) / 2,
          alternatives: alternatives.map(({ change, temperatureFactor }) => ({
            change,
            temperatureFactor,
            meetsMould: meets(temperatureFactor),
          })),
        };
  return {
    name: junction.name,
    kind: junction.kind,
    buildUps: buildUps.map(({ slug }) => slug),
    beyond,
    assumed: [...assumed],
    ...junctionInWords({ name: junction.name, kind: junction.kind, beyond, assumed, figures }),
    figures: figures === null ? null : { ...figures, picture: pictureOf(check, site) },
  };
}

/** Length of the sides shown from the room's corner, and depth of the air shown [m]. */
const SHOWN = 0.22;
const AIR = 0.04;

function pictureOf({ junction, heat, buildUps, required }: JunctionCheck, { rooms, outdoor }: Site): PlanePicture {
  const { cell, field, place } = heat!;
  const { corner } = cell;
  const month = MONTH_NAMES.findIndex((name) => name === (required?.month ?? MONTH_NAMES[0]));
  const isWindow = junction.kind === "window side";
  const frame: Box = isWindow
    ? { x0: -cell.uprightLength, x1: SHOWN, y0: -AIR, y1: corner.y + AIR }
    : { x0: -AIR, x1: corner.x + SHOWN, y0: -AIR, y1: corner.y + SHOWN };
  const room = rooms.get(buildUps[0]!.room)!;
  return planePicture({
    field: field.corners,
    frame,
    view: junction.kind === "roof edge" ? "y downwards" : "y upwards",
    temperature: temperaturesOf(field.corners, [room.temperature[month]!, outdoor.temperature[month]!]),
    held: null,
    inside: isWindow ? [SHOWN / 2, corner.y + AIR / 2] : [corner.x + SHOWN / 2, corner.y + SHOWN / 2],
    outside: [frame.x1 / 2, -AIR / 2],
    coldest: [place.x, place.y],
    strip: null,
  });
}
