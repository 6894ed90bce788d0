import type { Material, SolidLayer } from "../project/types.ts";
import type { RemedyStep } from "../result/types.ts";
import { replaceLayer } from "./edit-layers.ts";
import { boardLayer, sheetLayer } from "./new-layers.ts";
import { isInsulating, layersBySide, nameWithCount, sdOf } from "./places.ts";
import { BREATHER_SHEETS, namedSheet, OPEN_BOARDS } from "./stock.ts";
import { type Change, type ChangeStep, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/** Outer boards up to this thickness count as sheathing that can be exchanged [m] (this project's rule). */
const THICKEST_SHEATHING = 0.03;

/**
 * Opens the outer side to vapour: exchanges a sheet for a breather membrane, or a board for a more open one.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for each layer outside the insulation that can be more open, if vapour comes from the room
 */
export function openColdSide(situation: Situation): Change[] {
  if (situation.warmSide !== "room") return [];
  return layersBySide(situation).cold.flatMap((index) => {
    const layer = situation.buildUp.layers[index]!;
    if (layer.type === "air" || mustStay(situation.buildUp, index)) return [];
    if (layer.type === "sheet") return openSheet(situation, layer, index);
    return isSheathing(situation, layer) ? openBoard(situation, layer, index) : [];
  });
}

function openSheet(situation: Situation, layer: SolidLayer, index: number): Change[] {
  const steps = BREATHER_SHEETS.filter((sheet) => sheet.equivalentAirLayerThickness! < sdOf(layer)).map((sheet) =>
    exchanged(situation, index, sheetLayer(sheet), {
      kind: "outer sheet opened",
      sheet: namedSheet(sheet),
      for: layer.name,
    }),
  );
  return changeOf({ key: `sheet opened: ${nameWithCount(situation.buildUp, index)}`, effort: EFFORT.openSheet, steps });
}

function openBoard(situation: Situation, layer: SolidLayer, index: number): Change[] {
  const steps = OPEN_BOARDS.filter((board) => sdOfBoard(board, layer.thickness) < sdOf(layer)).map((board) => {
    const by = { ...boardLayer(board, layer.thickness), framing: layer.framing };
    const sd = sdOfBoard(board, layer.thickness);
    return exchanged(situation, index, by, { kind: "outer board opened", board: board.name, sd, for: layer.name });
  });
  return changeOf({ key: `board opened: ${nameWithCount(situation.buildUp, index)}`, effort: EFFORT.openBoard, steps });
}

function exchanged({ buildUp }: Situation, index: number, by: SolidLayer, does: RemedyStep): ChangeStep {
  return {
    does: [does],
    buildUp: replaceLayer(buildUp, index, by),
    surroundings: null,
    thicknessInside: 0,
    thicknessOutside: 0,
  };
}

/**
 * Whether a layer is a board of a wall or pitched roof, thin enough to be sheathing. Decks carry load and stay.
 *
 * @param situation - its build-up
 * @param layer - a solid layer of it
 * @returns true for sheathing
 * Source: this project's rule.
 */
export function isSheathing({ buildUp }: Pick<Situation, "buildUp">, layer: SolidLayer): boolean {
  const { element } = buildUp;
  const kind = layer.material.kind;
  return (
    (element === "wall" || element === "partition" || element === "pitched roof") &&
    (kind === "board" || kind === "wood") &&
    layer.thickness <= THICKEST_SHEATHING &&
    !isInsulating(layer)
  );
}

function sdOfBoard(board: Material, thickness: number): number {
  return board.vapourResistanceFactorDry! * thickness;
}
