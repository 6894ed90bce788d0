/**
 * Brings the typographic forms of a quantity to plain ones: degree sign, raised 2 and 3, middle dot, micro sign,
 * minus sign, percent sign and no-break spaces.
 *
 * @param text - a quantity as written
 * @returns the same with plain letters, units as mathjs reads them, single spaces
 * @example normaliseText("0,022 W/(m·K)") // "0,022 W/(m K)"
 */
export function normaliseText(text: string): string {
  const plain = FORMS.reduce((soFar, [from, to]) => soFar.replace(from, to), text);
  return plain.replace(/ +/g, " ").trim();
}

const FORMS: readonly (readonly [RegExp, string])[] = [
  [/[\u00a0\u2007\u2009\u202f]/g, " "],
  [/²/g, "2"],
  [/³/g, "3"],
  [/[·⋅]/g, " "],
  [/[µμ]/g, "u"],
  [/−/g, "-"],
  [/° ?([CF])\b/g, "deg$1"],
  [/°/g, "deg"],
  [/%/g, "percent"],
];
