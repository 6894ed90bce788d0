import { escapeText } from "../escape.ts";
import { DRAWING_FONT } from "../palette.ts";

/**
 * Makes an SVG written by vega small and reproducible: numbers to a tenth of a pixel, ids of its own, and no elements that
 * draw nothing.
 *
 * @param svg - an SVG element written by vega
 * @param id - prefix for names inside it
 * @returns the same drawing
 */
export function tidySvg(svg: string, id: string): string {
  const names = new Map<string, string>();
  const ownName = (name: string): string => {
    if (!names.has(name)) names.set(name, `${id}-clip-${names.size + 1}`);
    return names.get(name)!;
  };
  const tidied = svg.replace(/<[a-z][^>]*>/gi, (tag) =>
    tag
      .replace(UNREAD, "")
      .replace(/(id="|url\(#)(clip\d+|gradient_\d+)/g, (_, before: string, name: string) => before + ownName(name))
      .replace(/ ([\w-]+)="([^"]*)"/g, tidyAttribute),
  );
  return withoutBareGroups(tidied.replace(DRAWS_NOTHING, ""));
}

/** Attributes that nothing uses, and those with default values. */
const UNREAD = new RegExp(
  [
    ' (?:class|xmlns(?::\\w+)?|version|aria-\\w+|role|pointer-events|stroke-miterlimit)="[^"]*"',
    ' (?:stroke-|fill-)?opacity="1"',
    ' stroke-width="1"',
    ' font-size="12.5px"',
    ` font-family="${escapeText(DRAWING_FONT)}"`,
    ' [xy]2="0"',
  ].join("|"),
  "g",
);

/** Paths without a colour of their own, hidden ones, and ones of no size: vega's frames for the mouse. */
const DRAWS_NOTHING = /<path(?=[^>]*(?: d=""| display="none"))[^>]*\/>|<path d="[^"]*"(?: transform="[^"]*")?\/>/g;

const UNROUNDED = /^(?:font|id$|clip-path$|stroke-dasharray$)|opacity$/;

function tidyAttribute(whole: string, name: string, value: string): string {
  if (UNROUNDED.test(name)) return whole;
  const rounded = value.replace(/-?\d+\.\d+(?:e-?\d+)?|-?\d+e-\d+/g, (figure) => {
    const tenth = Math.round(Number(figure) * 10) / 10;
    return String(Object.is(tenth, -0) ? 0 : tenth);
  });
  return name === "transform" && rounded === "translate(0,0)" ? "" : ` ${name}="${rounded}"`;
}

/** Takes away groups that carry no attribute, and empty ones. */
function withoutBareGroups(svg: string): string {
  const kept: boolean[] = [];
  const bare = svg.replace(/<(\/?)g(?: [^>]*)?>/g, (tag, closing: string) => {
    if (closing) return kept.pop() ? tag : "";
    const keeps = tag !== "<g>";
    kept.push(keeps);
    return keeps ? tag : "";
  });
  return bare.replace(/<g [^>]*><\/g>|<g\/>/g, "");
}
