import type { LayerResult } from "@warmside/core";
import { dataAt } from "../edit/checked.ts";
import { dataOf } from "../edit/parsed.ts";
import type { Answer } from "../state/answer.ts";
import { pathOf, set } from "../state/gestures.ts";
import { state } from "../state/store.ts";
import { ChoiceField, NumberField } from "./fields.tsx";

/** How tight boards that framing interrupts meet it: foil tape over it, and the gap beside it. Nothing for other layers. */
export function Joints({ answer, layer, index }: { answer: Answer; layer: LayerResult; index: number }) {
  const taped = written(index, "taped");
  const gap = written(index, "gap beside framing");
  const isInterrupted = answer.result.plane?.interrupted.includes(index) ?? false;
  if (layer.framing === null || !(isInterrupted || taped !== undefined || gap !== undefined)) return null;
  const said = taped === undefined ? "" : typeof taped === "boolean" ? (taped ? "yes" : "no") : String(taped);
  const kept: readonly (readonly [string, string])[] = ANSWERS.some(([key]) => key === said) ? [] : [[said, said]];
  return (
    <p class="joints">
      Foil taped over the {layer.framing}:{" "}
      <ChoiceField
        id={`taped-${index}`}
        label={`Foil of layer ${index + 1} taped over the ${layer.framing}`}
        value={said}
        options={[...ANSWERS, ...kept]}
        onChoice={(choice) => set(pathOf("layers", index, "taped"), choice === "" ? null : choice, null)}
      />
      . Gap beside them{" "}
      <NumberField
        id={`gap-${index}`}
        label={`Gap between layer ${index + 1} and the ${layer.framing}, mm`}
        value={millimetresOf(gap)}
        least={0}
        most={100}
        onNumber={(value) => set(pathOf("layers", index, "gap beside framing"), `${value} mm`)}
        onEmpty={() => set(pathOf("layers", index, "gap beside framing"), null)}
      />{" "}
      mm.
    </p>
  );
}

const ANSWERS = [
  ["", "not said"],
  ["no", "no"],
  ["yes", "yes"],
] as const;

function written(index: number, key: string): unknown {
  return dataAt(dataOf(state().readable ?? ""), pathOf("layers", index, key));
}

/** A gap as the page writes it; one in another unit stays in the file alone. */
function millimetresOf(gap: unknown): number | null {
  const digits = /^(?<digits>[\d.]+) ?mm$/.exec(String(gap ?? ""))?.groups?.digits;
  return digits === undefined ? null : Number(digits);
}
