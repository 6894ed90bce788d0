import type { ProblemPath } from "../../problems/types.ts";
import { inSpeech } from "../../problems/wording.ts";
import { isUpright } from "../is-upright.ts";
import { oddEndsOf } from "../odd-ends.ts";
import type { ReadingContext } from "../reading-context.ts";
import type { WrittenBuildUp } from "../schema/schema-build-up.ts";
import type { ReadValue } from "../schema/schema-values.ts";
import { makeSlug } from "../slug.ts";
import type { BuildUp, Element, Layer } from "../types.ts";
import { listAt, textAt } from "../value-at.ts";
import { WITHOUT_EFFECT } from "../without-effect.ts";
import { checkResistance } from "./check-resistance.ts";
import { checkWays } from "./check-ways.ts";
import { framingsApart } from "./framings-apart.ts";
import { looksTurnedRound, noteLayersOverlooked } from "./note-layers-overlooked.ts";
import { checkFacing, checkSpace, resolveFacing } from "./resolve-facing.ts";
import { resolveFramings } from "./resolve-framing.ts";
import { checkEdgeInsulation, resolveGround, resolveSpace, resolveVoid, resolveVoidClimate } from "./resolve-ground.ts";
import { type LayerSurroundings, resolveLayer } from "./resolve-layer.ts";
import { findRoom, type Rooms, USUAL_ROOM } from "./resolve-room.ts";
import { resolveTrappedWater } from "./resolve-trapped-water.ts";
import { resolveVariants, variantOf } from "./resolve-variants.ts";
import { stuffBesideGaps } from "./stuff-beside-gaps.ts";

/** Pressure across a leak unless stated [Pa]. Rule of this project. */
export const USUAL_LEAK_PRESSURE = 2;

/**
 * Reads one build-up, with all names looked up.
 *
 * @param path - where it stands
 * @param rooms - the project's rooms
 * @param slugs - slugs used so far
 * @param context - data, tables and problems
 * @returns the build-up, or null when it or one of its layers has problems
 */
export function resolveBuildUp(
  path: ProblemPath,
  rooms: Rooms,
  slugs: Set<string>,
  context: ReadingContext,
): BuildUp | null {
  const { data } = context.file;
  const before = context.collector.problems.length;
  const room = findRoom(textAt(data, [...path, "room"]) ?? USUAL_ROOM, [...path, "room"], rooms, context);
  const faces = resolveFacing(path, rooms, context);
  const surroundings = surroundingsOfLayers(path, context);
  const layers = resolveLayers(path, surroundings, context);
  const variants = resolveVariants(path, layers, surroundings, context);
  const written = context.shape.at<WrittenBuildUp>(path);
  if (written === null || room === null || faces === null) return null;
  checkFacing(written, path, room, faces, context);
  checkSpace(written, path, rooms.get(faces) ?? null, context);
  checkOpenings(written, path, context);
  checkResistance(layers, [...path, "layers"], context);
  if (layers.every((layer) => layer !== null)) checkWays(framingsApart(layers), [...path, "layers"], context);
  checkEdgeInsulation(written, path, context);
  const trappedWater = resolveTrappedWater(written, layers, path, context);
  if (context.collector.problems.length > before || layers.some((layer) => layer === null)) return null;
  noteLayersOverlooked(layers as Layer[], written, path, context);
  const looked = {
    room,
    faces,
    layers: stuffBesideGaps(framingsApart(layers as Layer[])),
    trappedWater,
    slug: makeSlug(written.name, slugs),
    rainOfHeatingSeason: context.shape.at<ReadValue>(["rain of the heating season"])?.value ?? null,
  };
  const buildUp = withOddEnds(makeBuildUp(written, looked), path, context);
  return { ...buildUp, variants: variants.map((variant) => variantOf(buildUp, variant, slugs)) };
}

type Looked = Pick<BuildUp, "room" | "faces" | "layers" | "trappedWater" | "slug" | "rainOfHeatingSeason">;

function makeBuildUp(written: WrittenBuildUp, looked: Looked): BuildUp {
  return {
    name: written.name,
    element: written.element,
    ...looked,
    target: written.target?.value ?? null,
    pitch: written.pitch?.value ?? null,
    span: written.span?.value ?? null,
    clearSky: written["clear sky"] ?? false,
    ground: resolveGround(written.ground),
    void: resolveVoid(written.void),
    voidClimate: resolveVoidClimate(written.void),
    space: resolveSpace(written.space),
    roofSpace: written["roof space"] ?? null,
    area: written.area?.value ?? null,
    openings: written.openings?.value ?? null,
    length: written.length?.value ?? null,
    rainOfHeatingSeason: looked.rainOfHeatingSeason,
    wettedByRain: written["wetted by rain"] ?? null,
    unheatedSkin: written["unheated skin"] ?? false,
    junctionFactors: written["junction factors"]?.map(({ name, factor }) => ({ name, factor: factor.value })) ?? [],
    oddEnds: null,
    twoSeasonCheck: written["two-season check"] ?? false,
    leak: leakOf(written.leak),
    variableResistance: written["variable resistance"] ?? false,
    variants: [],
  };
}

/** Notes a list that seems to run from outside; unless the file accepts the note, the build-up is marked with it. */
function withOddEnds(buildUp: BuildUp, path: ProblemPath, context: ReadingContext): BuildUp {
  const oddEnds = oddEndsOf(buildUp);
  if (oddEnds === null || looksTurnedRound(buildUp.layers)) return buildUp;
  const hardlyEver = (["innermost", "outermost"] as const).flatMap((end) => {
    const at = oddEnds[end];
    return at === null ? [] : `${buildUp.layers[at]!.name} is hardly ever the ${end} layer`;
  });
  const sentence = `${inSpeech(hardlyEver, "and")}: layers run from the room outwards. Turn the list round, or accept it`;
  context.note(FROM_OUTSIDE, [...path, "layers"], sentence);
  return listAt(context.file.data, ["accept"]).includes(FROM_OUTSIDE) ? buildUp : { ...buildUp, oddEnds };
}

const FROM_OUTSIDE = "layers-from-outside";

function leakOf(written: WrittenBuildUp["leak"]): BuildUp["leak"] {
  if (written === undefined) return null;
  const pressure = written.pressure?.value ?? USUAL_LEAK_PRESSURE;
  return { length: written.length.value, width: written.width.value, pressure };
}

function surroundingsOfLayers(path: ProblemPath, context: ReadingContext): LayerSurroundings {
  const element = (textAt(context.file.data, [...path, "element"]) ?? "wall") as Element;
  const framings = resolveFramings(path, element, context);
  return { element, isUpright: isUpright({ element, pitch: pitchAt(path, context) }), framings };
}

/** Layers are read one by one, so that each reports its own problems, even in a list that is too long. */
function resolveLayers(path: ProblemPath, surroundings: LayerSurroundings, context: ReadingContext): (Layer | null)[] {
  return listAt(context.file.data, [...path, "layers"]).map((_, index) =>
    resolveLayer([...path, "layers", index], surroundings, context),
  );
}

/** The pitch of a build-up, even if it has other problems [degrees from level]. */
function pitchAt(path: ProblemPath, context: ReadingContext): number | null {
  return context.shape.at<ReadValue>([...path, "pitch"])?.value ?? null;
}

/** Checks that the area is more than its openings; notes openings given without an area. */
function checkOpenings(written: WrittenBuildUp, path: ProblemPath, context: ReadingContext): void {
  const { area, openings } = written;
  if (area === undefined && openings !== undefined) {
    const sentence = "openings change nothing: they are taken off the area, and none is given";
    context.note(WITHOUT_EFFECT, [...path, "openings"], sentence);
  }
  if (area === undefined || openings === undefined || openings.value < area.value) return;
  const whole = context.file.source.writtenAt([...path, "area"]) ?? "";
  context.collector.add("openings-fill-all", [...path, "openings"], { area: whole });
}
