/**
 * Width of a text in Arial, or in Liberation Sans, which has the same widths.
 *
 * @param text - one line; a character that is not in the table counts as wide as a figure
 * @param size - font size [px], above 0
 * @param bold - whether it is set in bold
 * @returns width [px]
 * Source: advance widths of Liberation Sans (open licence), measured in a browser at 1000 px a side.
 * @example textWidth("Room 20", 10, false) // 40.57
 */
export function textWidth(text: string, size: number, bold: boolean): number {
  const widths = bold ? BOLD : REGULAR;
  let thousandths = 0;
  for (const character of text) {
    const position = character.charCodeAt(0) - FIRST_CHARACTER;
    thousandths += widths[position] ?? OTHERS[character] ?? WIDTH_OF_A_FIGURE;
  }
  return (thousandths * size) / UNITS_PER_SIZE;
}

const UNITS_PER_SIZE = 1000;
const FIRST_CHARACTER = 32;
const WIDTH_OF_A_FIGURE = 556;

/** Space to tilde, in thousandths of the font size. */
const REGULAR: readonly number[] = [
  278, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 278, 278, 584, 584, 584, 556, 1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, 556, 333, 556, 556, 500, 556,
  556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556, 556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334,
  260, 334, 584,
];

/** The same in bold. */
const BOLD: readonly number[] = [
  278, 333, 474, 556, 556, 889, 722, 238, 333, 333, 389, 584, 278, 333, 278, 278, 556, 556, 556, 556, 556, 556, 556,
  556, 556, 556, 333, 333, 584, 584, 584, 611, 975, 722, 722, 722, 722, 667, 611, 778, 722, 278, 556, 722, 611, 833,
  722, 778, 667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 333, 278, 333, 584, 556, 333, 556, 611, 556, 611,
  556, 333, 611, 611, 278, 278, 556, 278, 889, 611, 611, 611, 611, 389, 556, 333, 611, 556, 778, 556, 556, 500, 389,
  280, 389, 584,
];

/** Signs beyond the table that plots use. */
const OTHERS: Readonly<Record<string, number>> = {
  "°": 400,
  "²": 333,
  "³": 333,
  "·": 278,
  "−": 584,
  "–": 556,
  "…": 1000,
  "×": 584,
  "→": 1000,
  "←": 1000,
  "\u202f": 278,
  "\u00a0": 278,
};
