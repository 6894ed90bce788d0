import type { HumidityRule } from "../project/types.ts";
import type { DrierBy } from "../result/types.ts";
import { withRoom } from "../surroundings/surroundings.ts";
import { type Change, type ChangeStep, changeOf, EFFORT, type Situation } from "./types.ts";

/**
 * How many humidity classes a remedy lowers a room by [–] (this project's rule): the use of a room decides its class,
 * and no more than one class less can be promised. So a room of class 4 or 5 never comes below class 3.
 */
const FEWER_CLASSES = 1;
/** The driest class of a room in use [–] (this project's rule; 1 is stores). */
const DRIEST_CLASS = 2;
/** A stated relative humidity is lowered by these steps [–]: at most about one class in winter … */
const DRIER_BY = [0.05, 0.1] as const;
/** … but not below this [–]: nobody lives in drier rooms (this project's rule). */
const DRIEST = 0.3;
/** Air changes of a moisture balance are raised by these factors [–]. */
const MORE_AIR = [1.25, 1.5, 2, 3] as const;

/**
 * Keeps the room on the warm side drier: a lower humidity class, a lower relative humidity, or more air changes.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change, which comes last of all, smallest step first; none if there is no room on the warm side
 */
export function drierRoom({ buildUp, surroundings, warmSide }: Situation): Change[] {
  const room = surroundings.rooms.get(warmSide === "far side" ? buildUp.faces : buildUp.room);
  if (room === undefined) return [];
  const steps = drierRules(room.humidity).map(
    ({ humidity, by }): ChangeStep => ({
      does: [{ kind: "room kept drier", room: room.name, by }],
      buildUp: { ...buildUp, variants: [] },
      surroundings: withRoom(surroundings, { ...room, humidity }),
      room: { ...room, humidity },
      thicknessInside: 0,
      thicknessOutside: 0,
    }),
  );
  return changeOf({ key: "drier room", effort: EFFORT.drierRoom, steps });
}

function drierRules(rule: HumidityRule): { humidity: HumidityRule; by: DrierBy }[] {
  switch (rule.kind) {
    case "class":
      return ([4, 3, DRIEST_CLASS] as const)
        .filter((lower) => lower < rule.class && lower >= rule.class - FEWER_CLASSES)
        .map((lower) => ({
          humidity: { kind: "class", class: lower },
          by: { kind: "class", class: lower, was: rule.class },
        }));
    case "months":
      return DRIER_BY.filter((less) => Math.min(...rule.relativeHumidity) - less >= DRIEST - 1e-9).map((less) => ({
        humidity: { kind: "months", relativeHumidity: rule.relativeHumidity.map((share) => share - less) },
        by: { kind: "points", less },
      }));
    case "by outdoor temperature":
      return rule.level === "high" ? [{ humidity: { ...rule, level: "normal" }, by: { kind: "use" } }] : [];
    case "balance":
      return MORE_AIR.map((factor) => ({
        humidity: { ...rule, airChanges: rule.airChanges * factor },
        by: { kind: "air changes", airChanges: rule.airChanges * factor, was: rule.airChanges },
      }));
    case "as outdoors":
      return [];
  }
}
