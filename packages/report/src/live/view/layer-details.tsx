import type { LayerResult } from "@warmside/core";
import { trimmed } from "../../numbers.ts";
import { dataAt } from "../edit/checked.ts";
import { dataOf } from "../edit/parsed.ts";
import type { Answer } from "../state/answer.ts";
import { moveLayer, pathOf, set, takeOutLayer } from "../state/gestures.ts";
import { show, state } from "../state/store.ts";
import { ChoiceField } from "./fields.tsx";
import { framingsOf } from "./framings.tsx";

const PURPOSES = [
  "vapour layer",
  "weather skin",
  "damp-proof membrane",
  "radon membrane",
  "gas membrane",
  "tanking",
  "deck",
];

/** What a layer comes to, and what can be changed of it. */
export function LayerDetails({ answer, layer, index }: { answer: Answer; layer: LayerResult; index: number }) {
  const count = answer.result.layers.length;
  return (
    <div class="details">
      <p class="quiet">{factsOf(layer)}</p>
      <div class="options">
        {layer.type === "sheet"
          ? null
          : framingsOf().map((name) => (
              <label key={name}>
                <input
                  type="checkbox"
                  checked={layer.framing === name}
                  onChange={({ currentTarget }) =>
                    set(pathOf("layers", index, "framing"), currentTarget.checked ? name : null, null)
                  }
                />
                {name} through it
              </label>
            ))}
        {layer.type === "air" ? <Air index={index} layer={layer} /> : <Purpose index={index} layer={layer} />}
      </div>
      <div class="deeds">
        <button type="button" disabled={index === 0} onClick={() => moveLayer(index, index - 1)}>
          Towards the room
        </button>
        <button type="button" disabled={index === count - 1} onClick={() => moveLayer(index, index + 1)}>
          Outwards
        </button>
        <button type="button" onClick={() => show({ picking: { at: index, isExchange: true } })}>
          Exchange
        </button>
        <button type="button" disabled={count === 1} onClick={() => takeOutLayer(index)}>
          Take out
        </button>
      </div>
    </div>
  );
}

function Air({ layer, index }: { layer: LayerResult; index: number }) {
  return (
    <>
      <label for="ventilation">
        Ventilated{" "}
        <ChoiceField
          id="ventilation"
          label={`Ventilation of layer ${index + 1}`}
          value={layer.ventilation ?? "none"}
          options={[
            ["none", "not at all"],
            ["slight", "slightly"],
            ["well", "well"],
          ]}
          onChoice={(choice) => set(pathOf("layers", index, "ventilation"), choice, null)}
        />
      </label>
      {layer.ventilation === "none" ? null : (
        <label for="open">
          Open{" "}
          <ChoiceField
            id="open"
            label={`Where layer ${index + 1} is open to the outside`}
            value={layer.open ?? ""}
            options={[
              ["", "not said"],
              ["both ends", "at both ends"],
              ["one end", "at one end"],
            ]}
            onChoice={(choice) => set(pathOf("layers", index, "open"), choice === "" ? null : choice, null)}
          />
        </label>
      )}
    </>
  );
}

function Purpose({ layer, index }: { layer: LayerResult; index: number }) {
  const written = dataAt(dataOf(state().readable ?? ""), pathOf("layers", index, "purpose"));
  if (layer.type === "material" && layer.sd < TIGHT_ENOUGH && written === undefined) return null;
  return (
    <label for="purpose">
      It is there as{" "}
      <ChoiceField
        id="purpose"
        label={`Purpose of layer ${index + 1}`}
        value={layer.purpose ?? ""}
        options={[["", "not said"], ...PURPOSES.map((purpose) => [purpose, purpose] as const)]}
        onChoice={(choice) => set(pathOf("layers", index, "purpose"), choice === "" ? null : choice, null)}
      />
    </label>
  );
}

function factsOf({ type, resistance, sd, conductivity, vapourResistanceFactor, source, counted }: LayerResult): string {
  const facts =
    type === "sheet"
      ? [`holds vapour back as ${trimmed(sd, 2)} m of still air would`]
      : [
          `R ${trimmed(resistance, 2)} m²·K/W`,
          `sd ${trimmed(sd, 2)} m`,
          conductivity === null ? null : `λ ${trimmed(conductivity, 3)} W/(m·K)`,
          vapourResistanceFactor === null ? null : `μ ${trimmed(vapourResistanceFactor, 1)}`,
        ];
  const words = facts.filter((fact) => fact !== null).join(", ");
  const from = type === "air" ? "" : ` Source: ${source}.`;
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}.${counted ? "" : " Outside the ventilated air, so not counted."}${from}`;
}

/** A board this tight may be there for a purpose [m] (this project's rule). */
const TIGHT_ENOUGH = 5;
