import type { SectionCalculation } from "../calculate-build-up.ts";
import { materialAlong } from "../further-checks/section-nodes/material-of-slice.ts";
import {
  MOST_CONDENSATE,
  MOST_CONDENSATE_ON_TIGHT,
  MOST_IN_BOARD,
  MOST_IN_TIMBER,
} from "../further-checks/water-limits.ts";
import { isUpright } from "../project/is-upright.ts";
import type { BuildUp, Layer, Material } from "../project/types.ts";
import type { LimitReason } from "../result/types.ts";
import { isInBondedFoam } from "./bonded-foam-place.ts";
import type { WaterZone } from "./water-zones.ts";

/** Largest amount that is a trace [kg/m²] (this project's rule, METHOD.md, Amounts of water). */
export const TRACE = 0.01;
/** Amount from which drops may run down a smooth vertical surface [kg/m²] (common practice). */
export const DROPS_MAY_RUN = 0.05;
/**
 * Water that takes the outermost millimetre of softwood from 17 % to fibre saturation: 450 kg/m³ · 1 mm · 11 % [kg/m²]
 * (this project's rule). With less, the end of a stud does not reach its equilibrium moisture content.
 */
const WETS_FRAMING = 0.05;

/** Whether an amount of water could wet framing [kg/m²]; null is an unlimited amount. */
export function canWetFraming(water: number | null): boolean {
  return water === null || water >= WETS_FRAMING;
}

/** Amount above which drops gather at the bottom plate [kg/m²] (common practice). */
export const DROPS_GATHER = 0.2;

/** Share of its volume that bonded foam may take up [–] (this project's rule); density of water [kg/m³]. */
const SHARE_OF_FOAM = 0.01;
const WATER_DENSITY = 1000;

/** The limit that a zone's water is compared with. */
export interface AmountLimit {
  /** [kg/m²] */
  amount: number;
  by: LimitReason;
}

/**
 * The limits for a zone of water, from the layers it lies on, lowest first.
 *
 * @param zone - the zone
 * @param section - its section
 * @param buildUp - its build-up
 * @returns limits [kg/m²]; the general one is always among them
 * Source: DIN 4108-3 (from memory); common practice for smooth surfaces.
 */
export function amountLimits(
  zone: Pick<WaterZone, "layers">,
  section: Pick<SectionCalculation, "path">,
  buildUp: BuildUp,
): AmountLimit[] {
  const limits: AmountLimit[] = [{ amount: MOST_CONDENSATE, by: { kind: "anywhere" } }];
  for (const index of zone.layers) {
    const layer = buildUp.layers[index];
    const material = layer === undefined ? null : materialAlong(layer, section.path);
    if (layer === undefined || material === null || material.density === null || layer.thickness === 0) continue;
    const dryMass = material.density * layer.thickness;
    if (material.kind === "wood" || material.kind === "board") {
      const share = material.kind === "wood" ? MOST_IN_TIMBER : MOST_IN_BOARD;
      limits.push({ amount: share * dryMass, by: { kind: "dry mass", share, material: material.name } });
    }
  }
  const foam = isInBondedFoam(zone, buildUp);
  if (foam !== null) {
    const volume = buildUp.layers[foam]!.thickness * SHARE_OF_FOAM * WATER_DENSITY;
    limits.push({
      amount: Math.min(MOST_CONDENSATE_ON_TIGHT, volume),
      by: { kind: "bonded foam", share: SHARE_OF_FOAM },
    });
  } else if (sitsOnSmooth(zone, section, buildUp)) {
    limits.push(
      isUpright(buildUp)
        ? { amount: DROPS_GATHER, by: { kind: "smooth upright surface" } }
        : { amount: MOST_CONDENSATE_ON_TIGHT, by: { kind: "surface that takes up no water" } },
    );
  }
  return limits.sort((a, b) => a.amount - b.amount);
}

/**
 * Whether a zone lies on a surface that takes up no water, and touches nothing that does.
 *
 * @param zone - the zone
 * @param section - its section
 * @param buildUp - its build-up
 * @returns true on sheets, metal, plastic foam and facings when no wood, board, paper or masonry touches the water
 * Source: common practice.
 */
export function sitsOnSmooth(
  zone: Pick<WaterZone, "layers">,
  section: Pick<SectionCalculation, "path">,
  buildUp: BuildUp,
): boolean {
  const touching = zone.layers.flatMap((index) => {
    const layer = buildUp.layers[index];
    return layer === undefined ? [] : [{ layer, material: materialAlong(layer, section.path) }];
  });
  const smooth = touching.some(({ layer, material }) => isSmooth(layer, material));
  const takesUp = touching.some(({ layer, material }) => {
    const kind = material?.kind;
    if (layer.type !== "material") return false;
    return kind === "wood" || kind === "board" || kind === "paper" || (kind === "mineral" && !isWool(material!));
  });
  return smooth && !takesUp;
}

/** Sheets, metal, plastic and the facings of a board take up no water. Source: common practice. */
function isSmooth(layer: Layer, material: Material | null): boolean {
  if (layer.type === "air") return false;
  const { facingInner, facingOuter } = layer;
  return (
    layer.type === "sheet" ||
    material?.kind === "metal" ||
    material?.kind === "plastic" ||
    facingInner + facingOuter > 0
  );
}

/** Whether it is paper-faced gypsum board: its core softens and its paper feeds mould. Source: common practice. */
export function isFacedWithPaper({ kind, group }: Material): boolean {
  return kind === "paper" && group === "lining";
}

/** Mineral wool takes up no water in its fibres: condensate runs off. */
function isWool(material: { group: string | null; density: number | null }): boolean {
  return material.group === "insulation" || (material.density !== null && material.density < 200);
}
