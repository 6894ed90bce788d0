import { METAL_CONDUCTIVITY } from "@warmside/core";
import { hatchOf, patternDefinitions, patternId } from "../../drawing/patterns.ts";
import { vapourLayerKind } from "../../vapour-layer-kind.ts";
import { isFarSideWarm } from "../view/sides-in-words.ts";
import { curvesOf, shareOf } from "./curves.ts";
import { Label, widthOf } from "./label.tsx";
import { alongAt, type Band, type Layout, pointAt } from "./layout.ts";
import type { Drawn } from "./section.tsx";

/** Layers in the report's hatches, framing, sheets, the vapour layer in heavy dashes, names, and what is taken up. */
export function Layers(drawn: Drawn) {
  const { result, layout, layer } = drawn;
  const hatches = result.layers.map(hatchOf);
  const sheets = layout.bands.filter((_, index) => result.layers[index]!.type === "sheet");
  return (
    <>
      <g dangerouslySetInnerHTML={{ __html: patternDefinitions("live", [...hatches, "timber", "metal"]) }} />
      {layout.bands.map((band, index) =>
        result.layers[index]!.type === "sheet" ? null : (
          <rect
            key={index}
            {...boxOf(layout, band)}
            fill={`url(#${patternId("live", hatches[index]!)})`}
            class={result.layers[index]!.counted ? "band" : "band is-beyond"}
          />
        ),
      )}
      <Framing {...drawn} />
      {sheets.map(({ from }, index) => (
        <path key={index} d={lineAcross(layout, from)} class="sheet" />
      ))}
      <VapourLayer {...drawn} />
      <Names {...drawn} />
      {layer === null || layout.bands[layer] === undefined ? null : (
        <rect {...boxOf(layout, widened(layout.bands[layer]))} class="taken" rx="2" />
      )}
    </>
  );
}

/** One stud or joist at the low end of the layers that it runs through. */
function Framing({ result, layout }: Drawn) {
  return (
    <>
      {result.framings.map((framing, order) => {
        const bands = result.layers.flatMap((one, index) =>
          one.framing === framing.name ? [layout.bands[index]!] : [],
        );
        if (bands.length === 0) return null;
        const hatch = framing.conductivity >= METAL_CONDUCTIVITY ? "metal" : "timber";
        const across = Math.abs(edges(layout)[0] - edges(layout)[1]);
        const wide = Math.min(
          across * MOST_OF_SECTION,
          Math.max(LEAST_STUD, (framing.width ?? USUAL_WIDTH) * layout.pixelsPerMetre),
        );
        const box = boxOf(layout, { from: bands[0]!.from, to: bands.at(-1)!.to });
        const cut = layout.lies ? { width: wide } : { y: box.y + box.height - wide, height: wide };
        return (
          <rect
            key={framing.name}
            {...box}
            {...cut}
            fill={`url(#${patternId("live", hatch)})`}
            class={order > 0 ? "stud is-crossing" : "stud"}
          />
        );
      })}
    </>
  );
}

function VapourLayer({ result, layout }: Drawn) {
  const found = result.vapourLayer;
  const kind = vapourLayerKind(found);
  const band = layout.bands[found?.layers[0] ?? -1];
  if (band === undefined || (kind !== "vapour layer" && kind !== "on the cold side")) return null;
  const along = isFarSideWarm(result) ? band.to : band.from;
  return (
    <>
      <path d={lineAcross(layout, along)} class="vapour-layer-ground" />
      <path d={lineAcross(layout, along)} class={kind === "vapour layer" ? "vapour-layer" : "vapour-layer is-cold"} />
    </>
  );
}

/** Names of layers wide enough to carry one, where the lines seldom come. */
function Names(drawn: Drawn) {
  const { result, layout } = drawn;
  const [start, end] = edges(layout);
  const middle = (layout.face + layout.outerFace) / 2;
  return (
    <>
      {layout.bands.map(({ from, to }, index) => {
        const { name, type } = result.layers[index]!;
        const size = Math.abs(to - from);
        const centre = (from + to) / 2;
        if (type === "sheet" || size < LEAST_FOR_NAME) return null;
        if (layout.lies) {
          const place = placeBeside(drawn, index, widthOf(name));
          return place === null ? null : <Label key={index} {...place} y={centre + 4.5} text={name} kind="name" />;
        }
        if (size >= widthOf(name) + 10)
          return <Label key={index} x={centre} y={start - 9} anchor="middle" text={name} kind="name" />;
        const isLow = centre < middle;
        return (
          <Label
            key={index}
            x={centre + 4}
            y={isLow ? start - 8 : end + 8}
            anchor={isLow ? "start" : "end"}
            text={name}
            kind="name"
            isUpright
          />
        );
      })}
    </>
  );
}

/** Where a name stands in a lying layer without the lines through it; null where there is no room. */
function placeBeside(
  { result, section, month, lens, layout }: Drawn,
  index: number,
  width: number,
): { x: number; anchor: "start" | "end" } | null {
  const [start, end] = edges(layout);
  const clear = start + (result.layers[index]!.framing === null ? 6 : MOST_OF_SECTION * (end - start) + 6);
  if (section === null) return { x: end - 6, anchor: "end" };
  const curves = curvesOf(section, month, lens);
  const { from, to } = layout.bands[index]!;
  const inside = curves.nodes.filter(({ depth }) => {
    const along = alongAt(layout, depth);
    return along >= Math.min(from, to) - 1 && along <= Math.max(from, to) + 1;
  });
  const shares = inside.flatMap(({ limit, held }) => [shareOf(curves, limit), shareOf(curves, held)]);
  const across = shares.map((share) => pointAt(layout, 0, share)[0]);
  if (across.length === 0 || Math.max(...across) + width + 14 < end) return { x: end - 6, anchor: "end" };
  return Math.min(...across) - width - 8 > clear ? { x: clear, anchor: "start" } : null;
}

/** Across: the two edges of the drawing, from where values are low. */
export function edges(layout: Layout): [number, number] {
  return layout.lies ? [layout.low - 8, layout.high + 8] : [layout.low + 26, layout.high - 8];
}

/** A stretch along the drawing as a rectangle over its whole breadth. */
export function boxOf(layout: Layout, { from, to }: Band): { x: number; y: number; width: number; height: number } {
  const [one, other] = edges(layout);
  const along = { at: Math.min(from, to), size: Math.abs(to - from) };
  const across = { at: Math.min(one, other), size: Math.abs(other - one) };
  return layout.lies
    ? { x: across.at, y: along.at, width: across.size, height: along.size }
    : { x: along.at, y: across.at, width: along.size, height: across.size };
}

function lineAcross(layout: Layout, along: number): string {
  const [one, other] = edges(layout);
  return layout.lies ? `M${one} ${along}H${other}` : `M${along} ${other}V${one}`;
}

/** A sheet has no thickness: what marks it has. */
function widened({ from, to }: Band): Band {
  const middle = (from + to) / 2;
  const half = Math.max(Math.abs(to - from) / 2, LEAST_TAKEN) + 1.5;
  return { from: middle - half, to: middle + half };
}

const LEAST_FOR_NAME = 16;
const LEAST_STUD = 26;
const LEAST_TAKEN = 4;
const MOST_OF_SECTION = 0.17;
/** Where only the share of a framing is known, a usual stud is drawn [m]. */
const USUAL_WIDTH = 0.045;
