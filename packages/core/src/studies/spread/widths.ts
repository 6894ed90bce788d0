import type { Material } from "../../project/types.ts";

/** How far a value may differ from the stated one: the factors at the low and the high end of its spread. */
export interface Width {
  low: number;
  high: number;
  /** Where the width comes from, in words. */
  origin: string;
}

/** The widths for the two kinds of values of a material. */
export interface MaterialWidths {
  conductivity: Width;
  vapourResistance: Width;
}

/** Widths by the basis of a value. Source: this project's own judgement (`shared/README.md`, spread class). */
export const WIDTHS: Readonly<Record<"declared" | "tabulated" | "common" | "assumed", MaterialWidths>> = {
  declared: widths("declared by its maker", 0.03, 6 / 5),
  tabulated: widths("tabulated", 0.05, 4 / 3),
  common: widths("common practice", 0.1, 2),
  assumed: widths("assumed", 0.2, 3),
};

/** Factors on a room's vapour excess over outdoors (this project's own judgement). */
export const HUMIDITY_WIDTH: Width = { low: 2 / 3, high: 3 / 2, origin: "habits and ventilation, assumed" };

/** The share of timber may differ by a quarter (this project's own judgement). */
export const FRAMING_WIDTH: Width = { low: 0.75, high: 1.25, origin: "as built, assumed" };

/** A stated share of gaps may be up to three times greater or smaller (this project's own judgement). */
export const STATED_GAPS_WIDTH: Width = { low: 1 / 3, high: 3, origin: "as built, assumed" };

/** Most of a vapour layer that may be missing if no gaps are stated [–] (METHOD.md, Studies; this project's rule). */
export const MOST_OF_UNSTATED_GAPS = 0.001;

/**
 * The widths of a material: as given in the file, or otherwise by the basis of its values.
 *
 * @param material - the material; if its `spread` is given, every value varies by ± that share
 * @returns factors at the two ends
 * Source: this project's own judgement; a row of a table may give its own class.
 */
export function widthsOf(material: Material): MaterialWidths {
  if (material.spread !== null) {
    const given = { low: 1 - material.spread, high: 1 + material.spread, origin: "given in the project file" };
    return { conductivity: given, vapourResistance: given };
  }
  return WIDTHS[material.spreadClass ?? material.basis];
}

/**
 * The factor on a stated value at a quantile of its spread. The stated value is the likeliest and the ends of the width
 * are the least likely: on each side, the logarithm of the factor has a triangular distribution.
 *
 * @param width - factors at the ends
 * @param quantile - 0 to 1; 0.5 gives the stated value
 * @returns factor [–]
 * @example factorAt({ low: 0.5, high: 2, origin: "" }, 0.5) // 1
 */
export function factorAt(width: Width, quantile: number): number {
  const position = quantile < 0.5 ? Math.sqrt(2 * quantile) - 1 : 1 - Math.sqrt(2 * (1 - quantile));
  return position < 0 ? width.low ** -position : width.high ** position;
}

function widths(origin: string, conductivity: number, vapourResistance: number): MaterialWidths {
  return {
    conductivity: { low: 1 - conductivity, high: 1 + conductivity, origin },
    vapourResistance: { low: 1 / vapourResistance, high: vapourResistance, origin },
  };
}
