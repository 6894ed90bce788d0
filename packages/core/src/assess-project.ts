import { assessBuildUp } from "./assess-build-up.ts";
import { junctionResult } from "./describe/junction-result.ts";
import { monthsOfAir } from "./describe/months-of-air.ts";
import { refuseFaults } from "./given/faults.ts";
import { checkProject } from "./given/project.ts";
import { checkJunctions, withJunctions } from "./plane-checks/project-junctions.ts";
import type { BuildUp, Project, Room } from "./project/types.ts";
import { usedRooms } from "./project/used-rooms.ts";
import { findRemedies } from "./remedies/find-remedies.ts";
import { requireFunction } from "./require.ts";
import type { BuildUpResult, ProjectResult, RoomResult } from "./result/types.ts";
import { describeRoom } from "./rooms/describe-room.ts";
import { compareVariants } from "./studies/variants.ts";
import type { Site } from "./surroundings/far-side-months.ts";
import { type Surroundings, surroundingsOf } from "./surroundings/surroundings.ts";

/**
 * Assesses every build-up of a project.
 *
 * @param written - the project, as `readProject` returns it
 * @param reached - called after each build-up and each variant, with the number done and the total
 * @returns plain data, unrounded SI
 * @throws TypeError or RangeError when a value is of the wrong kind or out of range
 */
export function assessProject(written: Project, reached: Reached = () => undefined): ProjectResult {
  requireFunction(reached, "reached");
  refuseFaults(checkProject(written, ["project"]));
  const surroundings = surroundingsOf(written);
  const site = surroundings.sites.reported;
  const junctions = checkJunctions(written, site);
  const project = withJunctions(written, junctions);
  const next = countedUp(project, reached);
  const buildUps = project.buildUps.map((buildUp) => next(assessWithRemedies(buildUp, surroundings)));
  const comparison = compareVariants(project, buildUps, next);
  return {
    format: 2,
    method: "ISO 13788:2012 clause 6",
    project: project.name,
    reference: project.reference,
    query: project.query === null ? null : { ...project.query },
    climate: {
      name: project.climate.name,
      severity: project.severity.name,
      origin: project.climate.origin,
      latitude: project.climate.latitude,
      longitude: project.climate.longitude,
      altitude: project.climate.altitude,
      altitudeCorrection: altitudeCorrection(project),
      months: monthsOfAir(surroundings.sites.reported.outdoor),
    },
    rooms: usedRooms(project).map((room) => roomResult(room, project.humidityMargin, surroundings.sites.reported)),
    buildUps,
    junctions: junctions.map((junction) => junctionResult(junction, site)),
    oddities: project.oddities.map((oddity) => ({ ...oddity })),
    ...(comparison === null ? {} : { comparison }),
  };
}

/** Is told how many build-ups and variants are done, and how many there are. */
export type Reached = (done: number, of: number) => void;

/** Counts and passes on whatever it is given. */
function countedUp({ buildUps }: Project, reached: Reached): <Done>(done: Done) => Done {
  const of = buildUps.reduce((sum, { variants }) => sum + 1 + variants.length, 0);
  let count = 0;
  return (done) => {
    count += 1;
    reached(count, of);
    return done;
  };
}

function assessWithRemedies(buildUp: BuildUp, surroundings: Surroundings): BuildUpResult {
  const assessed = assessBuildUp(buildUp, surroundings);
  const { remedies, search } = findRemedies(buildUp, surroundings, assessed);
  return { ...assessed, remedies, remedySearch: search };
}

function roomResult(room: Room, humidityMargin: number, site: Site): RoomResult {
  return { name: room.name, ...describeRoom(room, humidityMargin), months: monthsOfAir(site.rooms.get(room.name)!) };
}

function altitudeCorrection({ altitudeCorrection }: Project): ProjectResult["climate"]["altitudeCorrection"] {
  if (altitudeCorrection === null) return null;
  return { siteAltitude: altitudeCorrection.altitude, lapseRate: altitudeCorrection.lapseRate };
}
