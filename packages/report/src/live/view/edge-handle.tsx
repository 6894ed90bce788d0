import type { BuildUpResult } from "@warmside/core";
import { MILLIMETRES_PER_METRE, millimetres } from "../../numbers.ts";
import { edges } from "../draw/layers.tsx";
import type { Layout } from "../draw/layout.ts";
import { setThickness } from "../state/gestures.ts";
import { state } from "../state/store.ts";
import { endDrag, pull, stepFor, takeEdge } from "./drag.ts";

/** The outer edge of the layer that is taken up: pulled by hand or by keys it makes the layer thicker or thinner. */
export function EdgeHandle({ result, layout }: { result: BuildUpResult; layout: Layout }) {
  const index = state().layer;
  const layer = index === null ? undefined : result.layers[index];
  if (index === null || layer === undefined || layer.type === "sheet") return null;
  const along = layout.bands[index]!.to;
  const [one, other] = edges(layout);
  const across = one + (other - one) * ACROSS;
  const [x, y] = layout.lies ? [across, along] : [along, across];
  const now = layer.thickness * MILLIMETRES_PER_METRE;
  const more = layout.lies && layout.direction === -1 ? ["ArrowUp", "ArrowRight"] : ["ArrowRight", "ArrowDown"];
  const less = layout.lies && layout.direction === -1 ? ["ArrowDown", "ArrowLeft"] : ["ArrowLeft", "ArrowUp"];
  return (
    <div
      class={layout.lies ? "edge lies" : "edge"}
      role="slider"
      tabIndex={0}
      aria-label={`Thickness of ${layer.name}, mm`}
      aria-valuenow={Number(now.toFixed(2))}
      aria-valuemin={stepFor(0)}
      aria-valuemax={MOST}
      aria-valuetext={`${millimetres(layer.thickness)} mm`}
      aria-orientation={layout.lies ? "vertical" : "horizontal"}
      style={{ left: `${x - 22}px`, top: `${y - 22}px` }}
      onKeyDown={(event) => {
        const sign = more.includes(event.key) ? 1 : less.includes(event.key) ? -1 : 0;
        if (sign === 0) return;
        event.preventDefault();
        const step = stepFor(now);
        setThickness(index, Math.max(step, now + sign * step));
      }}
      onPointerDown={(event) => takeEdge(event, index)}
      onPointerMove={pull}
      onPointerUp={endDrag}
      onPointerCancel={endDrag}
    >
      <svg width="44" height="44" viewBox="0 0 44 44" aria-hidden="true">
        <circle cx="22" cy="22" r="9" />
        <path
          d={
            layout.lies ? "M22 11v-5l-3 4m3-4l3 4M22 33v5l-3-4m3 4l3-4" : "M11 22h-5l4-3m-4 3l4 3M33 22h5l-4-3m4 3l-4 3"
          }
        />
      </svg>
    </div>
  );
}

/** Where across the section the handle stands. */
const ACROSS = 0.3;
const MOST = 2000;
