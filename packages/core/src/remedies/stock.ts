import { USUAL_EMISSIVITY } from "../constants.ts";
import type { Material, MaterialKind } from "../project/types.ts";
import type { NamedSheet } from "../result/types.ts";

/**
 * The materials that remedies use: ordinary goods without a brand. Their names and values are those of the material
 * table, so a remedy can be written into a project file as it is worded; a test compares the two.
 */

/** Defaults for the values that a material below does not give. */
const BARE: Omit<Material, "name" | "group" | "kind"> = {
  density: null,
  conductivity: null,
  specificHeat: null,
  vapourResistanceFactorDry: null,
  vapourResistanceFactorWet: null,
  equivalentAirLayerThickness: null,
  equivalentAirLayerThicknessByHumidity: null,
  emissivity: USUAL_EMISSIVITY,
  facingInner: null,
  facingOuter: null,
  source: "the row of that name in the material table",
  basis: "tabulated",
  spread: null,
};

/** Common membranes for the warm side, most open first. */
export const WARM_SIDE_SHEETS: readonly Material[] = [
  sheet("vapour control layer sd 2 m", 2),
  sheet("vapour control layer sd 5 m", 5),
  sheet("vapour control layer sd 10 m", 10),
  sheet("vapour control layer sd 20 m", 20),
  sheet("polyethylene sheet 0.15 mm", 50),
  sheet("vapour control layer sd 100 m", 100),
  sheet("foil vapour control layer sd 1500 m", 1500),
];

/** Breather membranes, tightest first. */
export const BREATHER_SHEETS: readonly Material[] = [
  sheet("breather membrane", 0.2),
  sheet("breather membrane sd 0.05 m", 0.05),
];

/** Outer boards that let vapour out, tightest first. */
export const OPEN_BOARDS: readonly Material[] = [
  material("bitumen-impregnated fibreboard", "wood-based board", "board", 270, 0.055, 1700, 10, 5),
  material("wood fibre sarking board", "wood-based board", "board", 210, 0.046, 2000, 5, 3),
];

/** Insulation for unbroken layers on the outside. */
export const WOOD_FIBRE: Material = material(
  "wood fibre insulation board",
  "insulation",
  "board",
  160,
  0.04,
  2000,
  5,
  3,
);
export const FOAM: Material = material("polyurethane foam unfaced", "insulation", "plastic", 35, 0.026, 1400, 60, 60);
export const ROOF_WOOL: Material = material("mineral wool roof board", "insulation", "mineral", 150, 0.039, 1030, 1, 1);

/** The tight sheet on the deck of a warm roof. */
export const DECK_SHEET: Material = sheet("vapour control layer sd 100 m", 100);

/** The name and sd of one of these sheets. */
export function namedSheet({ name, equivalentAirLayerThickness }: Material): NamedSheet {
  return { name, sd: equivalentAirLayerThickness! };
}

function sheet(name: string, sd: number): Material {
  return { ...BARE, name, group: "membrane", kind: "plastic", equivalentAirLayerThickness: sd };
}

function material(
  name: string,
  group: string,
  kind: MaterialKind,
  density: number,
  conductivity: number,
  specificHeat: number,
  dry: number,
  wet: number,
): Material {
  return {
    ...BARE,
    name,
    group,
    kind,
    density,
    conductivity,
    specificHeat,
    vapourResistanceFactorDry: dry,
    vapourResistanceFactorWet: wet,
  };
}
