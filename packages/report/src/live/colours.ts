import { type ColourName, darkDrawingRules, PALETTE, type Shade } from "../palette.ts";

/**
 * The page's colours as the style sheet's own names, light and dark; paper is always printed light.
 *
 * @returns style rules
 */
export function colourRules(): string {
  return `:root{${namesOf("light")}}@media screen and (prefers-color-scheme:dark){:root{${namesOf("dark")}}${darkDrawingRules()}}`;
}

function namesOf(theme: keyof Shade): string {
  const names = Object.keys(PALETTE) as ColourName[];
  return names
    .map((name) => `--${name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}:${PALETTE[name][theme]}`)
    .join(";");
}
