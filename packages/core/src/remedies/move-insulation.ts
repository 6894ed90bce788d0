import { THICKEST_STILL_AIR } from "../constants.ts";
import { isRoof } from "../project/is-roof.ts";
import type { AirLayer, BuildUp, Layer, SolidLayer } from "../project/types.ts";
import { TIGHT } from "../vapour/tight.ts";
import { holdsStatedWater, insertLayers, removeLayer, replaceLayer, spliceLayers } from "./edit-layers.ts";
import { boardsFor, outerPlace, thicknesses } from "./insulate-outside.ts";
import { boardLayer, emptiedLayer, sheetLayer } from "./new-layers.ts";
import { outerProtection } from "./outer-protection.ts";
import { type InsulationExtent, insulationExtent, isVapourSheet, sdOf } from "./places.ts";
import { DECK_SHEET, namedSheet } from "./stock.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/**
 * Moves the insulation outside the frame: leaves the studs of a wall empty, or makes a cold roof a warm one with a
 * vapour layer on the deck. Never offered if that would close ventilated air.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for each kind of board, thinnest first; only thicknesses that do not raise U count
 */
export function moveInsulation(situation: Situation): Change[] {
  const { buildUp, warmSide } = situation;
  const { element } = buildUp;
  if (warmSide === "far side" || (element !== "wall" && !isRoof(buildUp))) return [];
  const emptied = emptyTheFrame(buildUp);
  if (emptied === null) return [];
  const at = outerPlace(emptied);
  const onDeck = isRoof(buildUp);
  const sheets =
    onDeck && !hasSheetOnDeck(emptied, at) ? [{ ...sheetLayer(DECK_SHEET), purpose: "vapour layer" as const }] : [];
  const outermost = emptied.layers[at - 1]!;
  return boardsFor(buildUp).flatMap((board) => {
    const steps = thicknesses(board).map((thickness) => ({
      does: [
        {
          kind: "insulation moved" as const,
          board: board.name,
          thickness,
          outside: outermost.type === "air" ? null : outermost.name,
          sheet: sheets.length > 0 ? namedSheet(DECK_SHEET) : null,
          protection: outerProtection({ ...situation, buildUp: emptied }, board, at),
          isRoof: onDeck,
          takenOut: sheetsTakenOut(buildUp, emptied),
        },
      ],
      buildUp: insertLayers(emptied, at, ...sheets, boardLayer(board, thickness)),
      surroundings: null,
      thicknessInside: 0,
      thicknessOutside: thickness,
    }));
    return changeOf({
      key: `insulation moved: ${board.name}`,
      effort: EFFORT.moveInsulation,
      steps,
      keepsWarmth: true,
    });
  });
}

/** Names of the sheets that the change removes, so that nobody thinks they stay. */
function sheetsTakenOut(before: BuildUp, after: BuildUp): string[] {
  const gone = before.layers.filter((layer) => layer.type === "sheet" && !after.layers.includes(layer));
  return gone.map(({ name }) => name);
}

/** Whether a tight sheet lies between the empty frame and the new layers: the deck then has its vapour layer. */
function hasSheetOnDeck(emptied: BuildUp, at: number): boolean {
  const frame = emptied.layers.findIndex((layer) => layer.type === "air");
  return emptied.layers.some(
    (layer, index) => index > frame && index < at && layer.type === "sheet" && sdOf(layer) >= TIGHT,
  );
}

/** The build-up with still air in place of framed insulation, a roof also without the sheet below; or null. */
function emptyTheFrame(buildUp: BuildUp): BuildUp | null {
  const extent = insulationExtent(buildUp);
  if (extent === null || isVentilatedWithin(buildUp)) return null;
  const framed = buildUp.layers.flatMap((layer, index) => (isFramedInsulation(layer, extent, index) ? [index] : []));
  if (framed.length === 0 || framed.some((index) => holdsStatedWater(buildUp, index))) return null;
  const emptied = mergeStillAir(framed.reduce(emptyLayer, buildUp));
  if (emptied.layers.some((layer) => layer.type === "air" && layer.thickness > THICKEST_STILL_AIR)) return null;
  if (buildUp.element === "wall") return emptied;
  const sheet = emptied.layers.findIndex((layer, index) => index < extent.first && isVapourSheet(layer));
  return sheet === -1 || mustStay(emptied, sheet) || holdsStatedWater(emptied, sheet)
    ? emptied
    : removeLayer(emptied, sheet);
}

/**
 * Whether there is ventilated air that insulation outside would close or make useless: anywhere in a flat roof, and
 * inside the new insulation in other elements.
 */
function isVentilatedWithin(buildUp: BuildUp): boolean {
  const within = buildUp.element === "flat roof" ? buildUp.layers : buildUp.layers.slice(0, outerPlace(buildUp));
  return within.some((layer) => layer.type === "air" && layer.ventilation !== "none");
}

function isFramedInsulation(layer: Layer, extent: InsulationExtent, index: number): boolean {
  return layer.type === "material" && layer.framing !== null && index >= extent.first && index <= extent.last;
}

function emptyLayer(buildUp: BuildUp, index: number): BuildUp {
  return replaceLayer(buildUp, index, emptiedLayer(buildUp.layers[index] as SolidLayer));
}

/** Joins neighbouring layers of still air into one. */
function mergeStillAir(buildUp: BuildUp): BuildUp {
  const index = buildUp.layers.findIndex((layer, at) => isClosedSpace(layer) && isClosedSpace(buildUp.layers[at + 1]));
  if (index === -1 || holdsStatedWater(buildUp, index) || holdsStatedWater(buildUp, index + 1)) return buildUp;
  const inner = buildUp.layers[index] as AirLayer;
  const outer = buildUp.layers[index + 1] as AirLayer;
  const space = { ...inner, thickness: inner.thickness + outer.thickness, framing: inner.framing ?? outer.framing };
  return mergeStillAir(spliceLayers(buildUp, index, 2, [space]));
}

function isClosedSpace(layer: Layer | undefined): boolean {
  return layer?.type === "air" && layer.ventilation === "none" && layer.resistance === null;
}
