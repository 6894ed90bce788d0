import type { SectionView } from "../section-view.ts";

/** A layer's stretch of the plot's width. */
export interface Band {
  number: string;
  /** Share of the width, 0 to 1. */
  from: number;
  to: number;
  /** Its equivalent air layer thickness [m]. */
  sd: number;
  /** Drawn narrower than its sd: the axis is broken there. */
  broken: boolean;
}

/** The layers of a section over their sd, with room for the air on both sides. */
export interface StretchedSd {
  bands: Band[];
  /** Place of an sd from the room surface [m], as a share of the width. */
  at: (sd: number) => number;
}

/**
 * Divides the width of a plot over sd among the layers of a section. Each is as wide as its sd; one that would leave too
 * little to the others is drawn narrower, with a break in the axis.
 *
 * @param view - the section
 * @returns bands from the room outwards
 */
export function stretchedSd(view: SectionView): StretchedSd {
  const layers = [...new Set(view.section.layers.map(({ layer }) => layer))];
  const thicknesses = layers.map((layer) =>
    view.section.layers.reduce((sum, part) => (part.layer === layer ? sum + part.sd : sum), 0),
  );
  const { widths, broken } = sharedWidths(thicknesses);
  const whole = widths.reduce((sum, width) => sum + width, 0);
  const field = 1 - 2 * AIR_SHARE;
  let at = AIR_SHARE;
  const bands = layers.map((layer, index): Band => {
    const from = at;
    at += (widths[index]! / whole) * field;
    return { number: String(layer + 1), from, to: at, sd: thicknesses[index]!, broken: broken[index]! };
  });
  return { bands, at: (sd) => placeOf(sd, bands) };
}

/** Part of the width for the air on either side. */
const AIR_SHARE = 0.07;
/** A layer that leaves the others less than this part of the width is drawn with the other part of what there is. */
const LEAST_FOR_OTHERS = 0.08;
const DRAWN_AS = 0.45;

/** Widths in proportion to sd; the widest cut down while it leaves too little to the others. */
function sharedWidths(thicknesses: readonly number[]): { widths: number[]; broken: boolean[] } {
  const widths = thicknesses.map(() => 0);
  const broken = thicknesses.map(() => false);
  const left = thicknesses.map((_, index) => index).sort((one, other) => thicknesses[other]! - thicknesses[one]!);
  let width = 1;
  let sum = thicknesses.reduce((total, sd) => total + sd, 0);
  while (left.length > 1) {
    const widest = left[0]!;
    const others = sum - thicknesses[widest]!;
    if (!((others / sum) * width < LEAST_FOR_OTHERS)) break;
    left.shift();
    broken[widest] = true;
    widths[widest] = DRAWN_AS * width;
    width -= widths[widest];
    sum = others;
  }
  for (const index of left) widths[index] = sum > 0 ? (thicknesses[index]! / sum) * width : width / left.length;
  return { widths, broken };
}

function placeOf(sd: number, bands: readonly Band[]): number {
  let passed = 0;
  for (const [index, band] of bands.entries()) {
    if (sd <= passed + band.sd || index === bands.length - 1) {
      const share = band.sd > 0 ? Math.min(1, Math.max(0, (sd - passed) / band.sd)) : 0;
      return band.from + share * (band.to - band.from);
    }
    passed += band.sd;
  }
  return AIR_SHARE;
}
