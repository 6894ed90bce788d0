import type { BuildUpResult } from "@warmside/core";
import { millimetres } from "../../numbers.ts";
import type { Layout } from "../draw/layout.ts";
import { TAB } from "../draw/layout.ts";
import { moveLayer } from "../state/gestures.ts";
import { show, state } from "../state/store.ts";
import { endDrag, pull, takeLayer } from "./drag.ts";
import { focusOnceDrawn } from "./focus.ts";

/** The layers' numbers: handles to drag, or to move with the arrow keys. */
export function Tabs({ result, layout }: { result: BuildUpResult; layout: Layout }) {
  const [back, forth] = layout.lies
    ? layout.direction === 1
      ? ["ArrowUp", "ArrowDown"]
      : ["ArrowDown", "ArrowUp"]
    : ["ArrowLeft", "ArrowRight"];
  return (
    <fieldset
      class="tabs"
      aria-label={`Layers: ${layout.lies ? "up and down" : "left and right"} arrow keys move them`}
    >
      {result.layers.map((layer, index) => {
        const { x, y } = layout.tabs[index]!;
        const size = layer.type === "sheet" ? "sheet" : millimetres(layer.thickness);
        return (
          <button
            key={index}
            id={`tab-${index}`}
            type="button"
            class={state().layer === index ? "tab is-taken" : "tab"}
            style={{ left: `${x}px`, top: `${y}px`, width: `${TAB.width}px`, height: `${TAB.height}px` }}
            aria-label={`${index + 1} ${size}, ${layer.name}`}
            aria-pressed={state().layer === index}
            onClick={() => show({ layer: index })}
            onKeyDown={(event) => {
              const step = event.key === back ? -1 : event.key === forth ? 1 : 0;
              if (step === 0) return;
              event.preventDefault();
              moveLayer(index, index + step);
              if (result.layers[index + step] !== undefined) focusOnceDrawn(`#tab-${index + step}`);
            }}
            onPointerDown={(event) => takeLayer(event, index)}
            onPointerMove={pull}
            onPointerUp={endDrag}
            onPointerCancel={endDrag}
          >
            {index + 1} <small>{size}</small>
          </button>
        );
      })}
    </fieldset>
  );
}
