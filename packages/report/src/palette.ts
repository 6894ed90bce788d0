/**
 * The page's colours: ink and paper, and the colour-blind safe palette of Okabe and Ito (open, jfly.uni-koeln.de/color).
 * Drawings carry the light colours; in a dark theme the style sheet puts the dark ones in their place.
 */
export interface Shade {
  light: string;
  dark: string;
}

/** The meanings of the colours. */
export type ColourName =
  | "ink"
  | "faintInk"
  | "rule"
  | "paper"
  | "tint"
  | "timber"
  | "insulation"
  | "lining"
  | "air"
  | "temperature"
  | "vapour"
  | "water"
  | "waterSecond"
  | "waterThird"
  | "waterFourth"
  | "sound"
  | "conditions"
  | "change"
  | "beyond";

/** Colours by what they stand for. No meaning rests on a colour alone: each goes with a word, a dash or a shape. */
export const PALETTE: Readonly<Record<ColourName, Shade>> = {
  ink: { light: "#1c2326", dark: "#eceae4" },
  faintInk: { light: "#566065", dark: "#a9b1b3" },
  rule: { light: "#c9c6bd", dark: "#454d51" },
  paper: { light: "#ffffff", dark: "#1d2326" },
  tint: { light: "#f4f2ec", dark: "#262d31" },
  timber: { light: "#f3dfb8", dark: "#5b4a26" },
  insulation: { light: "#fdf6d8", dark: "#44422b" },
  lining: { light: "#e6e5e1", dark: "#3c4346" },
  air: { light: "#fcfcfb", dark: "#20272a" },
  temperature: { light: "#d55e00", dark: "#e8853a" },
  vapour: { light: "#0072b2", dark: "#56b4e9" },
  water: { light: "#0072b3", dark: "#57b4ea" },
  waterSecond: { light: "#56b4e8", dark: "#b5dcf3" },
  waterThird: { light: "#009e73", dark: "#2fc39a" },
  waterFourth: { light: "#cc79a7", dark: "#dd9dc0" },
  sound: { light: "#00664b", dark: "#6fd3b1" },
  conditions: { light: "#8a5300", dark: "#f0b75a" },
  change: { light: "#a83e00", dark: "#ff9a63" },
  beyond: { light: "#4d4a6b", dark: "#bcb8e6" },
};

/**
 * The colours of the four judgements as the style sheet's own names, the same as in plots.
 *
 * @param theme - light or dark
 * @returns declarations without the last semicolon
 */
export function judgementColours(theme: keyof Shade): string {
  return (["sound", "conditions", "change", "beyond"] as const)
    .map((name) => `--${name}:${PALETTE[name][theme]}`)
    .join(";");
}

/** Fonts of drawings and plots: the widths in `plots/text-width.ts` are those of the first two. */
export const DRAWING_FONT = 'Arial, "Liberation Sans", Helvetica, sans-serif';

/**
 * Style rules that give drawings and plots their dark colours.
 *
 * @returns rules to stand inside a dark-theme query
 */
export function darkDrawingRules(): string {
  return Object.values(PALETTE)
    .map(({ light, dark }) => `svg [fill="${light}"]{fill:${dark}}svg [stroke="${light}"]{stroke:${dark}}`)
    .join("");
}
