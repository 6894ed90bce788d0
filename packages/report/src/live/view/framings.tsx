import { MILLIMETRES_PER_METRE } from "../../numbers.ts";
import { dataAt } from "../edit/checked.ts";
import { dataOf } from "../edit/parsed.ts";
import type { Answer } from "../state/answer.ts";
import { pathOf, set, setAll } from "../state/gestures.ts";
import { state } from "../state/store.ts";
import { NumberField } from "./fields.tsx";

/** Names of the framings that a layer can take up, as the file has them. */
export function framingsOf(): string[] {
  const written = dataAt(dataOf(state().readable ?? ""), pathOf("framings"));
  return typeof written === "object" && written !== null ? Object.keys(written) : [];
}

/** The timber that runs through layers: how wide it is, and how far apart. */
export function Framings({ answer }: { answer: Answer }) {
  const { result } = answer;
  const names = framingsOf();
  const known = result.framings.filter(({ name, width, spacing }) => names.includes(name) && width && spacing);
  const thickest = thickestOf(answer);
  return (
    <div class="framings">
      {known.map(({ name, material, width, spacing }) => (
        <p key={name}>
          {name.charAt(0).toUpperCase() + name.slice(1)} of {material},{" "}
          <NumberField
            id={`width-of-${name}`}
            label={`Width of the ${name}, mm`}
            value={Number((width! * MILLIMETRES_PER_METRE).toFixed(1))}
            least={1}
            most={1000}
            onNumber={(value) => set(pathOf("framings", name, "width"), `${value} mm`)}
          />{" "}
          mm wide, every{" "}
          <NumberField
            id={`spacing-of-${name}`}
            label={`Spacing of the ${name}, mm`}
            value={Number((spacing! * MILLIMETRES_PER_METRE).toFixed(1))}
            least={50}
            most={5000}
            onNumber={(value) => set(pathOf("framings", name, "spacing"), `${value} mm`)}
          />{" "}
          mm.
        </p>
      ))}
      {names.length > 0 || result.framings.length > 0 || thickest === null ? null : (
        <button
          type="button"
          onClick={() =>
            setAll([
              [pathOf("framings", "studs"), { material: "softwood timber", width: "45 mm", spacing: "600 mm" }],
              [pathOf("layers", thickest, "framing"), "studs"],
            ])
          }
        >
          Add studs through {answer.result.layers[thickest]!.name}
        </button>
      )}
    </div>
  );
}

/** The layer that studs would most likely run through: the one that insulates most. */
function thickestOf({ result }: Answer): number | null {
  const best = result.layers.reduce<{ index: number; resistance: number } | null>(
    (found, { type, resistance }, index) => {
      return type !== "material" || (found !== null && found.resistance >= resistance) ? found : { index, resistance };
    },
    null,
  );
  return best === null ? null : best.index;
}
