import type { LayerResult } from "@warmside/core";
import { hatchOf, patternDefinitions, patternId } from "../../drawing/patterns.ts";
import { MILLIMETRES_PER_METRE, trimmed } from "../../numbers.ts";
import type { Answer } from "../state/answer.ts";
import { setThickness } from "../state/gestures.ts";
import { show, state } from "../state/store.ts";
import { stepFor } from "./drag.ts";
import { NumberField } from "./fields.tsx";
import { Framings } from "./framings.tsx";
import { Joints } from "./joints.tsx";
import { LayerDetails } from "./layer-details.tsx";

/** The layers from the room outwards, in the order of the section and of the file. */
export function Layers({ answer }: { answer: Answer }) {
  const { layers } = answer.result;
  const chosen = state().layer;
  const after = chosen === null ? layers.length : chosen + 1;
  return (
    <section class="layers" aria-labelledby="layers-head">
      <h2 id="layers-head">Layers, from the room outwards</h2>
      <Framings answer={answer} />
      <ol>
        {layers.map((layer, index) => (
          <Row key={index} answer={answer} layer={layer} index={index} />
        ))}
      </ol>
      <button type="button" class="add" onClick={() => show({ picking: { at: after, isExchange: false } })}>
        Add a layer {chosen === null ? "outside" : `after ${after}`}
      </button>
      {chosen === null ? null : (
        <button type="button" class="add" onClick={() => show({ picking: { at: chosen, isExchange: false } })}>
          Add a layer before {after}
        </button>
      )}
    </section>
  );
}

function Row({ answer, layer, index }: { answer: Answer; layer: LayerResult; index: number }) {
  const isTaken = state().layer === index;
  return (
    <li class={`${isTaken ? "is-taken" : ""} ${layer.counted ? "" : "is-beyond"}`}>
      <button
        type="button"
        class="what"
        aria-expanded={isTaken}
        onClick={() => show({ layer: isTaken ? null : index })}
      >
        <b>{index + 1}</b>
        <Swatch layer={layer} />
        <span>
          {layer.name}
          {layer.purpose === null ? null : <small>, {layer.purpose}</small>}
        </span>
      </button>
      {layer.type === "sheet" ? (
        <span class="sd">sd {trimmed(layer.sd, 2)} m</span>
      ) : (
        <Size layer={layer} index={index} />
      )}
      <Joints answer={answer} layer={layer} index={index} />
      {isTaken ? <LayerDetails answer={answer} layer={layer} index={index} /> : null}
    </li>
  );
}

/** − mm + */
function Size({ layer, index }: { layer: LayerResult; index: number }) {
  const now = Number((layer.thickness * MILLIMETRES_PER_METRE).toFixed(2));
  const step = stepFor(now);
  return (
    <span class="size">
      <button
        type="button"
        aria-label={`${index + 1} ${layer.name}: thinner`}
        disabled={now <= step}
        onClick={() => setThickness(index, now - step)}
      >
        −
      </button>
      <NumberField
        id={`thickness-${index}`}
        label={`Thickness of layer ${index + 1}, ${layer.name}, mm`}
        value={now}
        least={0.01}
        most={5000}
        onNumber={(value) => setThickness(index, value)}
      />
      <span aria-hidden="true">mm</span>
      <button
        type="button"
        aria-label={`${index + 1} ${layer.name}: thicker`}
        onClick={() => setThickness(index, now + step)}
      >
        +
      </button>
    </span>
  );
}

function Swatch({ layer }: { layer: LayerResult }) {
  const hatch = hatchOf(layer);
  const id = `swatch-${layer.number}`;
  return (
    <svg class="swatch" width="26" height="26" aria-hidden="true">
      <g dangerouslySetInnerHTML={{ __html: patternDefinitions(id, [hatch]) }} />
      {layer.type === "sheet" ? (
        <path d="M13 1V25" class="sheet" />
      ) : (
        <rect x="1" y="1" width="24" height="24" fill={`url(#${patternId(id, hatch)})`} class="band" />
      )}
    </svg>
  );
}
