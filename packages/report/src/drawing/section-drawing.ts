import type { BuildUpResult } from "@warmside/core";
import { escapeText, shorten } from "../escape.ts";
import { type Html, markup } from "../html.ts";
import { keptApart } from "../label-spacing.ts";
import { MILLIMETRES_PER_METRE, millimetres } from "../numbers.ts";
import { PALETTE } from "../palette.ts";
import type { SectionView } from "../section-view.ts";
import { vapourLayerKind } from "../vapour-layer-kind.ts";
import { sideWords } from "../words.ts";
import { curvesOver } from "./curves.ts";
import { AIR, type Geometry, geometryOf, placed, type Stretch } from "./geometry.ts";
import { FONT, hatchOf, LETTERING, patternDefinitions, patternId } from "./patterns.ts";
import { line, tenth, word } from "./strokes.ts";

/**
 * A build-up in section, to scale: walls upright, roofs and floors lying down, every layer numbered and dimensioned,
 * framing at its spacing, the vapour layer dashed where there is one, and over it temperature and dew point of the
 * critical month.
 *
 * @param buildUp - a build-up of the result
 * @param view - its governing path; null when moisture was not worked out
 * @param id - prefix of the names inside it, unique in the page
 * @returns an SVG element with title and description
 */
export function sectionDrawing(buildUp: BuildUpResult, view: SectionView | null, id: string): Html {
  const geometry = geometryOf(buildUp);
  const { width, height } = geometry.size;
  const hatches = buildUp.layers.map(hatchOf);
  const fills = hatches.map((hatch) => patternId(id, hatch));
  const framed = geometry.framings.map(({ isMetal }) => (isMetal ? "metal" : "timber"));
  const parts = [
    patternDefinitions(id, [...hatches, ...framed]),
    layers(buildUp, geometry, fills),
    framings(geometry, id),
    vapourLayer(buildUp, geometry),
    view === null ? "" : curvesOver(view, geometry),
    view === null ? "" : drops(view, geometry),
    numbers(geometry),
    dimensions(buildUp, geometry),
    sides(buildUp, geometry),
  ];
  const attributes = `class="drawing ${geometry.lie === "upright" ? "upright" : "lying"}" id="${id}" role="img" aria-labelledby="${id}-title ${id}-text"`;
  const box = `viewBox="0 0 ${width} ${tenth(height)}" width="${width}" height="${tenth(height)}"`;
  const words = `<title id="${id}-title">${escapeText(shorten(buildUp.name, 60))}, section to scale</title><desc id="${id}-text">${escapeText(description(buildUp, geometry))}</desc>`;
  return markup(`<svg ${attributes} ${box} ${FONT}>${words}${parts.join("")}</svg>`);
}

/**
 * A build-up in section, small and without words, for a row of a list.
 *
 * @param buildUp - a build-up of the result
 * @param id - prefix of the names inside it, unique in the page
 * @returns a decorative SVG element
 */
export function thumbnail(buildUp: BuildUpResult, id: string): Html {
  const geometry = geometryOf(buildUp);
  const hatches = buildUp.layers.map(hatchOf);
  const fills = hatches.map((hatch) => patternId(id, hatch));
  const framed = geometry.framings.map(({ isMetal }) => (isMetal ? "metal" : "timber"));
  const one = placed(geometry, 0, 0);
  const other = placed(geometry, geometry.across, geometry.along);
  const box = [
    Math.min(one.x, other.x),
    Math.min(one.y, other.y),
    Math.abs(one.x - other.x),
    Math.abs(one.y - other.y),
  ];
  return markup(
    `<svg class="thumbnail" viewBox="${box.map(tenth).join(" ")}" width="72" height="56" preserveAspectRatio="xMidYMid slice" aria-hidden="true">${patternDefinitions(id, [...hatches, ...framed])}${layers(buildUp, geometry, fills)}${framings(geometry, id)}${vapourLayer(buildUp, geometry)}</svg>`,
  );
}

function description({ layers: all }: BuildUpResult, { lie }: Geometry): string {
  const list = all.map(({ number, name, thickness }) =>
    thickness > 0 ? `${number} ${name} ${millimetres(thickness)} mm` : `${number} ${name}`,
  );
  const way = { upright: "on the left", "room below": "below", "room above": "above" }[lie];
  return `Layers from the room, ${way}: ${list.join(", ")}.`;
}

function box(geometry: Geometry, { across, acrossTo, along, alongTo }: Stretch): string {
  const one = placed(geometry, across, along);
  const other = placed(geometry, acrossTo, alongTo);
  return `x="${tenth(Math.min(one.x, other.x))}" y="${tenth(Math.min(one.y, other.y))}" width="${tenth(Math.abs(one.x - other.x))}" height="${tenth(Math.abs(one.y - other.y))}"`;
}

/** A line along the build-up at a face. */
function face(geometry: Geometry, across: number, stroke: string): string {
  return line(placed(geometry, across, 0), placed(geometry, across, geometry.along), stroke);
}

function layers(buildUp: BuildUpResult, geometry: Geometry, fills: readonly string[]): string {
  const isSheet = (index: number): boolean => buildUp.layers[index]!.type === "sheet";
  const bodies = geometry.layers.map(({ index, from, to }) =>
    isSheet(index)
      ? ""
      : `<rect ${box(geometry, { across: from, acrossTo: to, along: 0, alongTo: geometry.along })} fill="url(#${fills[index]})" stroke="${PALETTE.ink.light}"/>`,
  );
  const sheets = geometry.layers.map(({ index, from }) =>
    isSheet(index) ? face(geometry, from, `stroke="${PALETTE.ink.light}" stroke-width="2.4"`) : "",
  );
  return [...bodies, ...sheets].join("");
}

function framings(geometry: Geometry, id: string): string {
  return geometry.framings
    .flatMap(({ members, isMetal, isCrossing }) =>
      members.map((member) => {
        const stroke = `stroke="${PALETTE.ink.light}" stroke-width="${isCrossing ? 1.2 : 1.6}"${isCrossing ? ' stroke-dasharray="4 3"' : ""}`;
        return `<rect ${box(geometry, member)} fill="url(#${patternId(id, isMetal ? "metal" : "timber")})" ${stroke}/>`;
      }),
    )
    .join("");
}

/** A heavy dashed line along the warm face of the vapour layer; nothing where there is none. */
function vapourLayer({ vapourLayer: found }: BuildUpResult, geometry: Geometry): string {
  if (found === null || vapourLayerKind(found) !== "vapour layer") return "";
  const layer = geometry.layers[found.layers[0] ?? -1];
  if (layer === undefined) return "";
  const at = found.warmSide === "outside" ? layer.to : layer.from;
  return (
    face(geometry, at, `stroke="${PALETTE.paper.light}" stroke-width="7"`) +
    face(geometry, at, `stroke="${PALETTE.ink.light}" stroke-width="4" stroke-dasharray="11 5"`)
  );
}

/** Drops where water lies in the month that holds most. */
function drops({ section }: SectionView, geometry: Geometry): string {
  const fullest = section.months.find(({ month }) => month === section.peak.month);
  const wet = fullest?.planes.filter(({ held }) => held > 0) ?? [];
  return wet
    .flatMap(({ node }) => {
      const across = (fullest?.nodes[node]?.depth ?? 0) * MILLIMETRES_PER_METRE * geometry.pixelsPerMillimetre;
      return [0.45, 0.6, 0.9].map((share) => {
        const { x, y } = placed(geometry, across, share * geometry.along);
        return `<path d="M${tenth(x)} ${tenth(y - 8)}c2 4 6 7 6 12a6 6 0 1 1 -12 0c0 -5 4 -8 6 -12z" fill="${PALETTE.water.light}" stroke="${PALETTE.paper.light}" stroke-width="1.5"/>`;
      });
    })
    .join("");
}

const NUMBER_RADIUS = 9;
/** Least distances between neighbouring numbers, and between neighbouring thicknesses [px]. */
const NUMBER_DISTANCE = 20;
const FIGURE_DISTANCE = 14;

/** Places for marks at the middles of layers, so far apart that none covers another; in the picture's own direction. */
function marksOf(geometry: Geometry, distance: number): { index: number; middle: number; mark: number }[] {
  const isUpright = geometry.lie === "upright";
  const marks = geometry.layers.map(({ index, from, to }) => {
    const { x, y } = placed(geometry, (from + to) / 2, 0);
    return { index, middle: isUpright ? x : y };
  });
  if (geometry.lie === "room below") marks.reverse();
  const end = isUpright ? geometry.size.width : geometry.size.height;
  const places = keptApart(
    marks.map(({ middle }) => middle),
    distance,
    distance / 2,
    end - distance / 2,
  );
  return marks.map((mark, order) => ({ ...mark, mark: places[order]! }));
}

/** A number in a ring for every layer, joined to it: above an upright build-up, to the left of one that lies. */
function numbers(geometry: Geometry): string {
  const thin = `stroke="${PALETTE.faintInk.light}"`;
  return marksOf(geometry, NUMBER_DISTANCE)
    .map(({ index, middle, mark }) => {
      const isUpright = geometry.lie === "upright";
      const ring = isUpright ? { x: mark, y: 14 } : { x: 13, y: mark };
      const edge = isUpright ? geometry.origin.y : geometry.origin.x;
      const inside = isUpright ? { x: middle, y: edge + 4 } : { x: edge + 4, y: middle };
      const start = isUpright ? { x: mark, y: 14 + NUMBER_RADIUS } : { x: 13 + NUMBER_RADIUS, y: mark };
      return `${line(start, inside, thin)}<circle cx="${tenth(ring.x)}" cy="${tenth(ring.y)}" r="${NUMBER_RADIUS}" fill="${PALETTE.paper.light}" stroke="${PALETTE.ink.light}"/>${word(ring.x, ring.y + 4, "middle", String(index + 1), true)}`;
    })
    .join("");
}

/** A chain of dimensions: every thickness, and the whole. */
function dimensions(buildUp: BuildUpResult, geometry: Geometry): string {
  const isUpright = geometry.lie === "upright";
  const ink = `stroke="${PALETTE.ink.light}"`;
  const at = isUpright ? geometry.origin.y + geometry.along + 10 : geometry.origin.x + geometry.along + 10;
  const point = (along: number, offset: number): { x: number; y: number } =>
    isUpright ? { x: along, y: at + offset } : { x: at + offset, y: along };
  const faces = [0, ...geometry.layers.map(({ to }) => to)].map((across) => {
    const { x, y } = placed(geometry, across, 0);
    return isUpright ? x : y;
  });
  const chain = line(point(Math.min(...faces), 0), point(Math.max(...faces), 0), ink);
  const ends = faces.map((along) => line(point(along, -4), point(along, 4), ink));
  const figures = marksOf(geometry, FIGURE_DISTANCE)
    .filter(({ index }) => buildUp.layers[index]!.thickness > 0)
    .map(({ index, middle, mark }) => {
      const leader = line(point(middle, 2), point(mark, 12), `stroke="${PALETTE.faintInk.light}"`);
      const text = millimetres(buildUp.layers[index]!.thickness);
      const { x, y } = point(mark, 15);
      const turned = `<text transform="translate(${tenth(x + 4)} ${tenth(y)}) rotate(90)" font-size="${LETTERING}" fill="${PALETTE.ink.light}">${text}</text>`;
      return leader + (isUpright ? turned : word(x, y + 4, "start", text));
    });
  const total = buildUp.layers.reduce((sum, { thickness }) => sum + thickness, 0);
  const whole = `${millimetres(total)} mm in all`;
  return [chain, ...ends, ...figures, word(geometry.size.width - 2, geometry.size.height - 4, "end", whole)].join("");
}

/** The words for the two sides. */
function sides(buildUp: BuildUpResult, geometry: Geometry): string {
  const { room, far } = sideWords(buildUp);
  const { lie, size, origin, across, along } = geometry;
  if (lie === "upright") {
    const y = size.height - 4;

    return (
      word(2, y, "start", shorten(room, 18), true) +
      turnedWord(origin.x + across + AIR + 14, origin.y + along / 2, shorten(far, 22))
    );
  }
  const above = lie === "room above" ? room : far;
  const below = lie === "room above" ? far : room;
  const top = Math.min(origin.y, placed(geometry, across, 0).y);
  return (
    word(origin.x, top - AIR - 6, "start", shorten(above, 34), true) +
    word(origin.x, size.height - 4, "start", shorten(below, 30), true)
  );
}

function turnedWord(x: number, y: number, text: string): string {
  return `<text transform="translate(${tenth(x)} ${tenth(y)}) rotate(-90)" text-anchor="middle" font-size="${LETTERING}" font-weight="bold" fill="${PALETTE.ink.light}">${escapeText(text)}</text>`;
}
