import type { DrawnStuff, PlanePicture } from "@warmside/core";
import { escapeText, shorten } from "../escape.ts";
import { type Html, markup } from "../html.ts";
import { MILLIMETRES_PER_METRE, trimmed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import { FONT, hatchOf, LETTERING, patternDefinitions, patternId } from "./patterns.ts";
import { tenth } from "./strokes.ts";

/** Words of a picture of the plane. */
export interface PlaneWords {
  title: string;
  description: string;
  /** The two airs: the room, outdoors. */
  inside: string;
  outside: string;
  /** Beside the strip that holds most water: "74 g/m² in this 50 mm". */
  strip: string | null;
  /** Beside the coldest place of the surface: "14.2 °C". */
  coldest: string | null;
}

/**
 * A section in the plane, to scale: materials in the house's patterns, isotherms, water as dots, the wettest strip in
 * brackets, the coldest place of the surface as a ring.
 *
 * @param picture - the section as data
 * @param words - what is written on it
 * @param id - prefix of the names inside it, unique in the page
 * @returns an SVG element with title and description
 */
export function planeDrawing(picture: PlanePicture, words: PlaneWords, id: string): Html {
  const scale = scaleOf(picture);
  const hatches = picture.stuffs.map(hatchOfStuff);
  const parts = [
    patternDefinitions(id, hatches),
    picture.rectangles.map((box) => rectangle(box, scale, patternId(id, hatches[box.stuff]!))).join(""),
    picture.isotherms.map((line) => isotherm(line, scale)).join(""),
    numbersOnLines(picture, scale),
    picture.water.map((drop) => dot(drop, scale)).join(""),
    airs(picture, words, scale),
    stripBracket(picture, words, scale),
    coldestRing(picture, words, scale),
    scaleBar(scale),
  ];
  const [width, height] = [tenth(scale.width), tenth(scale.height)];
  const attributes = `class="drawing" id="${id}" role="img" aria-labelledby="${id}-title ${id}-text"`;
  const box = `viewBox="0 0 ${width} ${height}" width="${width}" height="${height}"`;
  const about = `<title id="${id}-title">${escapeText(words.title)}</title><desc id="${id}-text">${escapeText(words.description)}</desc>`;
  return markup(`<svg ${attributes} ${box} ${FONT}>${about}${parts.join("")}</svg>`);
}

/** Greatest size of the section itself, and the margins around it [px]: the right one holds the words of the strip. */
const MOST_WIDTH = 460;
const MOST_HEIGHT = 380;
const MARGIN = { left: 12, right: 152, top: 12, bottom: 40 };

/** From the picture's metres to the drawing's pixels. */
interface Scale {
  x: (metres: number) => number;
  y: (metres: number) => number;
  pixelsPerMetre: number;
  width: number;
  height: number;
  right: number;
  bottom: number;
}

function scaleOf({ frame }: PlanePicture): Scale {
  const [wide, high] = [frame.x1 - frame.x0, frame.y1 - frame.y0];
  const pixelsPerMetre = Math.min(MOST_WIDTH / wide, MOST_HEIGHT / high);
  const right = MARGIN.left + wide * pixelsPerMetre;
  const bottom = MARGIN.top + high * pixelsPerMetre;
  return {
    x: (metres) => MARGIN.left + (metres - frame.x0) * pixelsPerMetre,
    y: (metres) => MARGIN.top + (metres - frame.y0) * pixelsPerMetre,
    pixelsPerMetre,
    width: right + MARGIN.right,
    height: bottom + MARGIN.bottom,
    right,
    bottom,
  };
}

function hatchOfStuff({ type, ...stuff }: DrawnStuff): ReturnType<typeof hatchOf> {
  return hatchOf({ type, ...stuff });
}

function rectangle({ x0, x1, y0, y1 }: PlanePicture["frame"], { x, y }: Scale, pattern: string): string {
  const box = `x="${tenth(x(x0))}" y="${tenth(y(y0))}" width="${tenth(x(x1) - x(x0))}" height="${tenth(y(y1) - y(y0))}"`;
  return `<rect ${box} fill="url(#${pattern})" stroke="${PALETTE.ink.light}" stroke-width="0.8"/>`;
}

function isotherm({ points }: PlanePicture["isotherms"][number], { x, y }: Scale): string {
  const path = points.map(([across, down], index) => `${index === 0 ? "M" : "L"}${tenth(x(across))} ${tenth(y(down))}`);
  return `<path d="${path.join("")}" fill="none" stroke="${PALETTE.temperature.light}" stroke-width="1.4"/>`;
}

/** Every line has its number on it, at a point where no other stands. */
function numbersOnLines({ isotherms }: PlanePicture, { x, y }: Scale): string {
  const taken: [number, number][] = [];
  return isotherms
    .flatMap(({ value, points }) => {
      const places = points.map(([across, down]): [number, number] => [x(across), y(down)]);
      const inOrder = [...places].sort((one, other) => other[1] - one[1]);
      const free = inOrder.find((each) => taken.every((other) => apart(each, other)));
      if (free === undefined) return [];
      taken.push(free);
      return [onPaper(free[0], free[1] + HALF_LETTER, "middle", trimmed(value, 1), PALETTE.temperature.light)];
    })
    .join("");
}

const HALF_LETTER = 5;

function apart(one: [number, number], other: [number, number]): boolean {
  return Math.abs(one[0] - other[0]) > 2 * LETTERING || Math.abs(one[1] - other[1]) > LETTERING;
}

/** Water as a dot whose area goes by its share. */
function dot({ x: across, y: down, share }: PlanePicture["water"][number], { x, y }: Scale): string {
  const radius = LEAST_RADIUS + (MOST_RADIUS - LEAST_RADIUS) * Math.sqrt(share);
  return `<circle cx="${tenth(x(across))}" cy="${tenth(y(down))}" r="${tenth(radius)}" fill="${PALETTE.water.light}" stroke="${PALETTE.paper.light}" stroke-width="1"/>`;
}

const LEAST_RADIUS = 1.5;
const MOST_RADIUS = 6;

function airs({ airs: drawn, frame }: PlanePicture, words: PlaneWords, { x, y }: Scale): string {
  const isCell = drawn.every(({ y: down }) => down === drawn[0]!.y);
  return drawn
    .map(({ side, x: across, y: down }) => {
      const word = escapeText(shorten(side === "inside" ? words.inside : words.outside, LONGEST_WORD));
      const at = `translate(${tenth(x(across))} ${tenth(y(isCell ? (frame.y0 + frame.y1) / 2 : down))})`;
      const turn = isCell ? " rotate(-90)" : "";
      return `<text transform="${at}${turn}" y="${HALF_LETTER}" text-anchor="middle" font-size="${LETTERING}" font-weight="bold" fill="${PALETTE.ink.light}">${word}</text>`;
    })
    .join("");
}

const LONGEST_WORD = 30;

/** A bracket along the strip, beside the section, with its words. */
function stripBracket({ strip }: PlanePicture, { strip: word }: PlaneWords, { y, right }: Scale): string {
  if (strip === null || word === null) return "";
  const [top, bottom] = [y(strip.y0), y(strip.y1)];
  const path = `M${tenth(right + 4)} ${tenth(top)}h8V${tenth(bottom)}h-8`;
  const bracket = `<path d="${path}" fill="none" stroke="${PALETTE.water.light}" stroke-width="2.5"/>`;
  return bracket + linesOf(word, right + 18, (top + bottom) / 2);
}

/** A ring round the coldest place, and its words beside the section. */
function coldestRing({ coldest }: PlanePicture, { coldest: word }: PlaneWords, { x, y, right }: Scale): string {
  if (coldest === null || word === null) return "";
  const [across, down] = [x(coldest.x), y(coldest.y)];
  const ring = `<circle cx="${tenth(across)}" cy="${tenth(down)}" r="7" fill="none" stroke="${PALETTE.ink.light}" stroke-width="2.5"/>`;
  const leader = `<path d="M${tenth(across + 7)} ${tenth(down)}H${tenth(right + 14)}" fill="none" stroke="${PALETTE.ink.light}" stroke-width="1" stroke-dasharray="3 3"/>`;
  return ring + leader + linesOf(word, right + 18, down);
}

/** Words of up to three lines, one above the other, their middle at y. */
function linesOf(words: string, x: number, y: number): string {
  const lines = words.split("\n");
  return lines
    .map((line, index) => {
      const down = y + HALF_LETTER + (index - (lines.length - 1) / 2) * LINE;
      return `<text x="${tenth(x)}" y="${tenth(down)}" font-size="${LETTERING}" font-weight="bold" fill="${PALETTE.ink.light}">${escapeText(line)}</text>`;
    })
    .join("");
}

const LINE = 17;

function onPaper(x: number, y: number, anchor: string, text: string, fill: string): string {
  const halo = `stroke="${PALETTE.paper.light}" stroke-width="4" paint-order="stroke"`;
  return `<text x="${tenth(x)}" y="${tenth(y)}" text-anchor="${anchor}" font-size="${LETTERING}" font-weight="bold" ${halo} fill="${fill}">${text}</text>`;
}

/** Length of the scale bar [m]. */
const BAR = 0.05;

function scaleBar({ pixelsPerMetre, bottom }: Scale): string {
  const [left, y] = [MARGIN.left, bottom + 14];
  const end = left + BAR * pixelsPerMetre;
  const path = `M${left} ${tenth(y - 4)}v8M${left} ${tenth(y)}H${tenth(end)}M${tenth(end)} ${tenth(y - 4)}v8`;
  return (
    `<path d="${path}" fill="none" stroke="${PALETTE.ink.light}" stroke-width="1.2"/>` +
    `<text x="${tenth(end + 6)}" y="${tenth(y + HALF_LETTER)}" font-size="${LETTERING}" fill="${PALETTE.ink.light}">${BAR * MILLIMETRES_PER_METRE} mm</text>`
  );
}
