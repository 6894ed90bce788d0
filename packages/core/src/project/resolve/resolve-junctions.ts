import { comparable } from "../../problems/near-names.ts";
import type { ProblemPath } from "../../problems/types.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenJunction } from "../schema/schema-junction.ts";
import type { WrittenProject } from "../schema/schema-project.ts";
import type { BuildUp, Element, Junction, WindowFrame } from "../types.ts";

/** The elements that each part of a junction may be. */
const WALLS: readonly Element[] = ["wall"];
const FLOORS: readonly Element[] = ["floor"];
const ROOFS: readonly Element[] = ["flat roof", "pitched roof"];

/**
 * Reads the junctions of a project and looks up the build-ups that they name.
 *
 * @param written - the project, of the right shape
 * @param buildUps - its build-ups; null for those with problems
 * @param context - problems
 * @returns the junctions without those that have problems; none at all if a build-up has problems
 */
export function resolveJunctions(
  written: WrittenProject,
  buildUps: readonly (BuildUp | null)[],
  context: ReadingContext,
): Junction[] {
  if (buildUps.some((buildUp) => buildUp === null)) return [];
  const known = buildUps as readonly BuildUp[];
  return (written.junctions ?? []).flatMap(
    (junction, index) => resolveJunction(junction, ["junctions", index], known, context) ?? [],
  );
}

function resolveJunction(
  written: WrittenJunction,
  path: ProblemPath,
  known: readonly BuildUp[],
  context: ReadingContext,
): Junction | null {
  const { name } = written;
  const find = (key: keyof WrittenJunction, ...wanted: (readonly Element[])[]): string[] | null =>
    findBuildUps(written[key] as string | string[], [...path, key], wanted, known, context);
  const plates = written.plates ?? null;
  if (written["outer corner"] !== undefined) {
    const walls = find("outer corner", WALLS, WALLS);
    const posts = written.posts ?? null;
    return walls && { kind: "outer corner", name, walls: [walls[0]!, walls[1] ?? walls[0]!], posts };
  }
  if (written["floor edge"] !== undefined) {
    const met = find("floor edge", WALLS, FLOORS);
    const rim = written.rim?.value ?? null;
    return met && { kind: "floor edge", name, wall: met[0]!, floor: met[1]!, rim, plates };
  }
  if (written["roof edge"] !== undefined) {
    const met = find("roof edge", WALLS, ROOFS);
    const blocking = written.blocking?.value ?? null;
    return met && { kind: "roof edge", name, wall: met[0]!, roof: met[1]!, blocking, plates };
  }
  const met = find("window side", WALLS);
  const trimmers = written.trimmers ?? null;
  return met && { kind: "window side", name, wall: met[0]!, trimmers, frame: frameOf(written.frame!) };
}

/** The build-ups that a junction names, which may be written in any order, in the order of its kind. */
function findBuildUps(
  written: string | readonly string[],
  path: ProblemPath,
  wanted: readonly (readonly Element[])[],
  known: readonly BuildUp[],
  context: ReadingContext,
): string[] | null {
  const isList = typeof written !== "string";
  const names = isList ? written : [written];
  const found = names.map((name, index) => findBuildUp(name, isList ? [...path, index] : path, known, context));
  if (found.some((buildUp) => buildUp === null)) return null;
  const given = found as BuildUp[];
  const isCornerOfOne = given.length === 1 && wanted.every((elements) => elements === WALLS);
  const needed = isCornerOfOne ? wanted.slice(0, 1) : wanted;
  const left = [...given];
  const inOrder = needed.flatMap((elements) => {
    const at = left.findIndex(({ element }) => elements.includes(element));
    return at === -1 ? [] : left.splice(at, 1);
  });
  if (inOrder.length === needed.length && left.length === 0) return inOrder.map(({ slug }) => slug);
  context.collector.add("junction-parts", path, {
    wanted: needed.map((elements) => elements.join(" or ")),
    found: given.map(({ name, element }) => `${name} (${element})`),
  });
  return null;
}

function findBuildUp(
  name: string,
  path: ProblemPath,
  known: readonly BuildUp[],
  context: ReadingContext,
): BuildUp | null {
  const found = known.find((buildUp) => comparable(buildUp.name) === comparable(name));
  if (found !== undefined) return found;
  const names = known.map((buildUp) => buildUp.name);
  context.collector.add("build-up-unknown", path, { name, near: context.nearNames(name, names), known: names });
  return null;
}

function frameOf(written: NonNullable<WrittenJunction["frame"]>): WindowFrame {
  return {
    width: written.width.value,
    depth: written.depth.value,
    conductivity: written.conductivity?.value ?? null,
    setBack: written["set back"]?.value ?? null,
  };
}
