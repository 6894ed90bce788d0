import type { BuildUpResult } from "@warmside/core";
import { escapeText, shorten } from "../escape.ts";
import { type Html, markup } from "../html.ts";
import { gramsPerArea, MILLIMETRES_PER_METRE, millimetres, trimmed } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { vapourLayerStanding } from "../vapour-layer-standing.ts";
import { sideWords } from "../words.ts";
import { drawnDimensions } from "./dimensions.ts";
import { drawnFramings } from "./framing.ts";
import { FONT, hatchOf, LETTERING, patternDefinitions, patternId } from "./patterns.ts";
import { DRAWING_WIDTH, type Scale, scaleOf } from "./scale.ts";

/**
 * A build-up cut through, to scale: layers numbered from the room on the left, framing at its spacing,
 * the vapour layer and the places that get wet marked.
 *
 * @param buildUp - a build-up of the result
 * @param view - its governing section; null when moisture was not worked out
 * @param id - prefix of the names inside it, unique in the page
 * @returns an SVG element with title and description
 */
export function buildUpDrawing(buildUp: BuildUpResult, view: SectionView | null, id: string): Html {
  const scale = scaleOf(buildUp);
  const hatches = buildUp.layers.map(hatchOf);
  const wet = view === null ? { marks: "", words: "" } : wetPlaces(view, scale);
  const height = scale.bottom + (wet.words === "" ? BELOW : BELOW + WORDS_LINE);
  const title = `${shorten(buildUp.name, LONGEST_NAME)}, cut through, to scale`;
  const parts = [
    patternDefinitions(id, [...hatches, "timber", "metal"]),
    layers(
      buildUp,
      scale,
      hatches.map((hatch) => patternId(id, hatch)),
    ),
    drawnFramings(scale, id),
    vapourLayer(buildUp, scale),
    wet.marks,
    marks(scale),
    sides(buildUp, scale),
    drawnDimensions(buildUp, scale),
    wet.words,
  ];
  const attributes = `class="drawing" id="${id}" role="img" aria-labelledby="${id}-title ${id}-text"`;
  const box = `viewBox="0 0 ${DRAWING_WIDTH} ${tenth(height)}" width="${DRAWING_WIDTH}" height="${tenth(height)}"`;
  const words = `<title id="${id}-title">${escapeText(title)}</title><desc id="${id}-text">${escapeText(description(buildUp))}</desc>`;
  return markup(`<svg ${attributes} ${box} ${FONT}>${words}${parts.join("")}</svg>`);
}

/** Space for the dimension below the body, and for the words about water. */
const BELOW = 46;
const WORDS_LINE = 24;
const LONGEST_NAME = 60;
const SHEET_STROKE = 2.4;

/** A coordinate as text, to a tenth of a pixel. */
function tenth(value: number): string {
  return trimmed(value, 1).replace("−", "-").replace("\u202f", "");
}

function description(buildUp: BuildUpResult): string {
  const list = buildUp.layers.map(({ number, name, thickness }) =>
    thickness > 0 ? `${number} ${name} ${millimetres(thickness)} mm` : `${number} ${name}`,
  );
  return `From the room on the left to the outside on the right: ${list.join(", ")}.`;
}

function layers(buildUp: BuildUpResult, scale: Scale, fills: readonly string[]): string {
  const height = scale.bottom - scale.top;
  return scale.layers
    .map(({ index, left, width }) => {
      if (buildUp.layers[index]!.type === "sheet") return "";
      const box = `x="${tenth(left)}" y="${tenth(scale.top)}" width="${tenth(width)}" height="${tenth(height)}"`;
      return `<rect ${box} fill="url(#${fills[index]})" stroke="${PALETTE.ink.light}" stroke-width="1"/>`;
    })
    .concat(
      scale.layers
        .filter(({ index }) => buildUp.layers[index]!.type === "sheet")
        .map(({ left }) => upright(left, scale, `stroke="${PALETTE.ink.light}" stroke-width="${SHEET_STROKE}"`)),
    )
    .join("");
}

function upright(x: number, scale: Scale, stroke: string): string {
  return `<path d="M${tenth(x)} ${tenth(scale.top)}V${tenth(scale.bottom)}" fill="none" ${stroke}/>`;
}

/**
 * A heavy dashed line along the warm face of the vapour layer, or of a tight layer on the cold side, so that it stands
 * out from other sheets without colour.
 */
function vapourLayer(buildUp: BuildUpResult, scale: Scale): string {
  const found = buildUp.vapourLayer;
  const standing = vapourLayerStanding(found);
  const isMarked = standing === "vapour layer" || standing === "on the cold side";
  const first = isMarked ? scale.layers[found?.layers[0] ?? -1] : undefined;
  if (!first) return "";
  const at = found?.warmSide === "outside" ? first.left + first.width : first.left;
  return (
    upright(at, scale, `stroke="${PALETTE.paper.light}" stroke-width="7"`) +
    upright(at, scale, `stroke="${PALETTE.temperature.light}" stroke-width="5" stroke-dasharray="12 5"`)
  );
}

/** Numbered marks above the drawing, each joined to its layer. */
function marks(scale: Scale): string {
  return scale.layers
    .map(({ index, left, width, mark }) => {
      const middle = left + width / 2;
      const leader = `<path d="M${tenth(mark)} 40V46L${tenth(middle)} ${tenth(scale.top - 4)}V${tenth(scale.top + 5)}" fill="none" stroke="${PALETTE.faintInk.light}" stroke-width="1"/>`;
      const ring = `<circle cx="${tenth(mark)}" cy="29" r="11" fill="${PALETTE.paper.light}" stroke="${PALETTE.ink.light}"/>`;
      return `${leader}${ring}${word(mark, 34.5, "middle", String(index + 1), `font-size="${LETTERING}" font-weight="bold"`)}`;
    })
    .join("");
}

/** The words for the two sides, upright beside the body. */
function sides(buildUp: BuildUpResult, scale: Scale): string {
  const { room, far } = sideWords(buildUp);
  const middle = (scale.top + scale.bottom) / 2;
  const turned = (x: number, text: string): string =>
    `<text x="0" y="0" transform="translate(${tenth(x)} ${tenth(middle)}) rotate(-90)" text-anchor="middle" font-size="${LETTERING}" font-weight="bold" fill="${PALETTE.ink.light}">${escapeText(text)}</text>`;
  return turned(scale.left - 12, shorten(room, 34)) + turned(scale.right + 22, shorten(far, 34));
}

/** Drops where water lies in the fullest month, and the words below. */
function wetPlaces(view: SectionView, scale: Scale): { marks: string; words: string } {
  const { peak } = view.section;
  const fullest = view.section.months.find(({ month }) => month === peak.month);
  const nodes = fullest?.planes.filter(({ held }) => held > 0) ?? [];
  const height = scale.bottom - scale.top;
  const drops = nodes.map(({ node }) => {
    const depth = fullest?.nodes[node]?.depth ?? 0;
    const x = scale.left + depth * MILLIMETRES_PER_METRE * scale.pixelsPerMillimetre;
    return [0.3, 0.52, 0.74].map((share) => drop(x, scale.top + share * height)).join("");
  });
  if (drops.length === 0) return { marks: "", words: "" };
  const text = `Water at the drops: most in ${peak.month}, ${gramsPerArea(peak.amount)}`;
  return {
    marks: drops.join(""),
    words: word(
      DRAWING_WIDTH / 2,
      scale.bottom + BELOW + 12,
      "middle",
      text,
      `font-size="${LETTERING}" font-weight="bold"`,
    ),
  };
}

function drop(x: number, y: number): string {
  const shape = "c2 5 7 9 7 15a7 7 0 1 1 -14 0c0 -6 5 -10 7 -15z";
  return `<path d="M${tenth(x)} ${tenth(y)}${shape}" fill="${PALETTE.water.light}" stroke="${PALETTE.paper.light}" stroke-width="1.5"/>`;
}

function word(x: number, y: number, anchor: string, text: string, more: string): string {
  return `<text x="${tenth(x)}" y="${tenth(y)}" text-anchor="${anchor}" ${more} fill="${PALETTE.ink.light}">${escapeText(text)}</text>`;
}
