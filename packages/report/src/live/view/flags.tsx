import type { BuildUpResult, SheetPlace, SheetPlaces } from "@warmside/core";
import { CLASSES } from "../../judgement-icons.ts";
import { fixed, grams } from "../../numbers.ts";
import type { Layout } from "../draw/layout.ts";
import { FLAG } from "../draw/layout.ts";
import { placeSheet } from "../state/gestures.ts";
import { JudgementIcon } from "./judgement-icons.tsx";

/** A flag in every gap: what would come of the sheet lying there. Choosing one moves the sheet. */
export function Flags({
  places,
  result,
  layout,
  isFresh,
}: {
  places: SheetPlaces;
  result: BuildUpResult;
  layout: Layout;
  isFresh: boolean;
}) {
  const size = layout.lies ? FLAG.lying : FLAG.standing;
  return (
    <div class={isFresh ? "flags" : "flags is-old"} role="radiogroup" aria-labelledby="flags-head">
      {places.places.map((place, index) => {
        const { x, y } = layout.flags[index]!;
        const where = shortWhere(place, places, result);
        return (
          <label
            key={String(place.at)}
            class={`flag ${CLASSES[place.judgement]} ${place.isDrawn ? "is-drawn" : ""}`}
            style={{ left: `${x}px`, top: `${y}px`, width: `${size.width}px`, height: `${size.height}px` }}
            title={place.words}
          >
            <input
              type="radio"
              name="sheet"
              checked={place.isDrawn}
              onChange={() => placeSheet(places, place.at)}
              aria-label={`${where}, ${place.words}: ${place.judgement}, ${inWords(place)}`}
            />
            <span class="where">{where}</span>
            <JudgementIcon word={place.judgement} />
            <span class="amount">{amountOf(place)}</span>
          </label>
        );
      })}
    </div>
  );
}

/** A gap by the numbers of the layers beside it, as they are numbered now. */
function shortWhere({ at }: SheetPlace, { own }: SheetPlaces, result: BuildUpResult): string {
  if (at === null) return "none";
  const numbers = result.layers.map((_, index) => index + 1).filter((number) => number - 1 !== own);
  return `${numbers[at - 1] ?? ""}|${numbers[at] ?? ""}`;
}

function amountOf({ verdict, peak }: SheetPlace): string {
  if (verdict === null) return "–";
  if (verdict === "dry") return "dry";
  return peak >= A_KILOGRAM ? `${fixed(peak, 1)} kg` : `${grams(peak).replace("under ", "<")} g`;
}

function inWords({ verdict, peak }: SheetPlace): string {
  if (verdict === null || verdict === "dry") return verdict ?? "not worked out";
  return `${verdict}, ${grams(peak)} grams on a square metre at most`;
}

/** From here on kilograms are shorter [kg/m²]. */
const A_KILOGRAM = 0.9995;
