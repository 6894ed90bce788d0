import { isRoof } from "../project/is-roof.ts";
import type { BuildUp, Material } from "../project/types.ts";
import { TIGHT } from "../vapour/tight.ts";
import { insertLayers } from "./edit-layers.ts";
import { boardLayer } from "./new-layers.ts";
import { outerProtection } from "./outer-protection.ts";
import { betweenLayers, endOfCounted, sdOf } from "./places.ts";
import { FOAM, ROOF_WOOL, WOOD_FIBRE } from "./stock.ts";
import { type Change, changeOf, EFFORT, type Situation } from "./types.ts";
import { mustStay } from "./what-must-stay.ts";

/** Thicknesses that are tried [m]: from the thinnest board sold to the thickest that fixings hold (common practice). */
const THICKNESS_STEP = 0.005;
const THINNEST_BOARD = 0.02;
export const THICKEST_BOARD = 0.3;

/** A better judgement is worth this many more steps of thickness: 20 mm. */
export const CLOSE_THICKNESSES = 4;

/** A sheet more open than this stays outside the new insulation [m] (this project's rule). */
const OPEN_SHEET = 0.5;

/**
 * Adds unbroken insulation outside: under the weather skin of a roof, outside the sheathing of a wall, below a floor.
 *
 * @param situation - the build-up and what surrounds it
 * @returns one change for each kind of insulation that suits the element, thinnest board first
 */
export function insulateOutside(situation: Situation): Change[] {
  const { buildUp, warmSide } = situation;
  if (warmSide === "far side" || buildUp.faces === "ground") return [];
  const at = outerPlace(buildUp);
  const place = betweenLayers(buildUp, at);
  return boardsFor(buildUp).flatMap((board) => {
    const protection = outerProtection(situation, board, at);
    const steps = thicknesses(board).map((thickness) => ({
      does: [{ kind: "insulated outside" as const, board: board.name, thickness, place, protection }],
      buildUp: insertLayers(buildUp, at, boardLayer(board, thickness)),
      surroundings: null,
      thicknessInside: 0,
      thicknessOutside: thickness,
    }));
    return changeOf({
      key: `${board.name} outside`,
      effort: EFFORT.insulateOutside,
      steps,
      closeSteps: CLOSE_THICKNESSES,
    });
  });
}

/** Index before which unbroken insulation is inserted. */
export function outerPlace(buildUp: BuildUp): number {
  let at = endOfCounted(buildUp);
  while (at > 1) {
    const outermost = buildUp.layers[at - 1]!;
    const openSheet = outermost.type === "sheet" && sdOf(outermost) < OPEN_SHEET;
    const roofSkin = isRoof(buildUp) && mustStay(buildUp, at - 1);
    if (!openSheet && !roofSkin) break;
    at -= 1;
  }
  return at;
}

/** Wood fibre or foam outside walls and pitched roofs, roof wool or foam on flat roofs, foam below floors. */
export function boardsFor({ element }: BuildUp): Material[] {
  if (element === "flat roof") return [ROOF_WOOL, FOAM];
  return element === "floor" ? [FOAM] : [WOOD_FIBRE, FOAM];
}

/** Thicknesses of a board in steps of 5 mm, up to that at which it would itself be a tight layer [m]. */
export function thicknesses(board: Material): number[] {
  return thicknessesAbove(THINNEST_BOARD - THICKNESS_STEP).filter(
    (thickness) => board.vapourResistanceFactorDry! * thickness < TIGHT,
  );
}

/** Whole steps of thickness above a given one, up to the thickest board [m]. */
export function thicknessesAbove(thickness: number): number[] {
  const first = Math.floor(thickness / THICKNESS_STEP + ROUNDING) + 1;
  const steps = Math.round(THICKEST_BOARD / THICKNESS_STEP) - first + 1;
  return Array.from(
    { length: Math.max(0, steps) },
    (_, step) => Math.round((first + step) * THICKNESS_STEP * 1000) / 1000,
  );
}

/** Keeps a thickness of whole steps from counting as a little less. */
const ROUNDING = 1e-9;
