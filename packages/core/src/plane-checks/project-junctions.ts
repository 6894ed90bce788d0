import { figuresOfBuildUp } from "../calculate-build-up.ts";
import { checkBuildUp } from "../given/build-up.ts";
import { refuseFaults } from "../given/faults.ts";
import { checkProject } from "../given/project.ts";
import type { BuildUp, Project } from "../project/types.ts";
import type { Site } from "../surroundings/far-side-months.ts";
import { surroundingsOf } from "../surroundings/surroundings.ts";
import { type JunctionCheck, junctionCheck, partsOf } from "./junction-check.ts";

/**
 * Calculates every junction of a project.
 *
 * @param project - the project
 * @param site - outdoor air and rooms of the reported year
 * @returns their figures, in the order of the file
 */
export function checkJunctions({ junctions, buildUps }: Project, site: Site): JunctionCheck[] {
  return junctions.map((junction) => {
    const meeting = partsOf(junction).map((slug) => buildUps.find((buildUp) => buildUp.slug === slug)!);
    const heats = meeting.map((buildUp) => figuresOfBuildUp(buildUp, site, { runOn: false }).heat);
    return junctionCheck(junction, meeting, heats, site);
  });
}

/**
 * A project in which build-ups and their variants have the factors of their calculated junctions as well as those
 * stated in the file. Variants have the factors of their build-up.
 *
 * @param project - the project
 * @param junctions - its junctions
 * @returns the project
 */
export function withJunctions(project: Project, junctions: readonly JunctionCheck[]): Project {
  return { ...project, buildUps: project.buildUps.map((buildUp) => withOwnJunctions(buildUp, junctions)) };
}

/**
 * One build-up of a project with the factors of its junctions, as `assessProject` judges it: `assessBuildUp` alone
 * knows only those stated in the file.
 *
 * @param project - the project
 * @param buildUp - a build-up of it
 * @returns the build-up; itself where no junction names it
 * @throws RangeError when a value is out of range
 */
export function withFactorsOfJunctions(project: Project, buildUp: BuildUp): BuildUp {
  refuseFaults([...checkProject(project, ["project"]), ...checkBuildUp(buildUp, ["buildUp"])]);
  const own = project.junctions.filter((junction) => partsOf(junction).includes(buildUp.slug));
  if (own.length === 0) return buildUp;
  const site = surroundingsOf(project).sites.reported;
  return withOwnJunctions(buildUp, checkJunctions({ ...project, junctions: own }, site));
}

function withOwnJunctions(buildUp: BuildUp, junctions: readonly JunctionCheck[]): BuildUp {
  const own = junctions.flatMap(({ junction, buildUps, heat }) =>
    heat !== null && buildUps.some(({ slug }) => slug === buildUp.slug)
      ? [{ name: junction.name, factor: heat.temperatureFactor, workedOut: true }]
      : [],
  );
  if (own.length === 0) return buildUp;
  const withFactors = (one: BuildUp): BuildUp => ({ ...one, junctionFactors: [...one.junctionFactors, ...own] });
  const variants = buildUp.variants.map((variant) => ({ ...variant, buildUp: withFactors(variant.buildUp) }));
  return { ...withFactors(buildUp), variants };
}
