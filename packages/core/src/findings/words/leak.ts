import { formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import type { LeakData } from "../../result/types.ts";
import { placeInWords } from "./places.ts";
import type { Named, Said } from "./wording.ts";

/** Litres in a cubic metre. Source: definition. */
const LITRES_PER_CUBIC_METRE = 1000;

/**
 * Water deposited by air through the stated gap, beside diffusion.
 *
 * @param leak - as data
 * @returns one sentence that can stand alone, and the sentences after it
 */
export function leakInWords(
  { airVolume, total, diffusion, place, limit }: Omit<LeakData, "months">,
  buildUp: Pick<Named, "layers">,
): Pick<Said, "says" | "more"> {
  if (!(total > 0)) {
    return {
      says: "The stated gap leaves no water: the cold face of the insulation is never below the dew point of the room.",
    };
  }
  const litres = total >= 1 ? `, ${formatNumber(total, 1)} litres` : "";
  const says =
    `In the wet season the stated gap lets ${airInWords(airVolume * LITRES_PER_CUBIC_METRE)} of room air through each square metre ` +
    `and leaves up to ${formatQuantity(total, "condensate")} of water${litres}, ${placeInWords(place, buildUp)}.`;
  const over = total > limit ? `The limit there is ${formatQuantity(limit, "condensate")}.` : "";
  return { says, more: [over, besideDiffusion(total, diffusion)] };
}

function besideDiffusion(total: number, diffusion: number): string {
  if (!(diffusion > 0)) return "Diffusion leaves none: airtightness decides.";
  const ratio = total / diffusion;
  const compared = `Diffusion leaves ${formatQuantity(diffusion, "condensate")}`;
  return ratio >= 1
    ? `${compared}: the gap brings ${formatNumber(ratio, ratio < 10 ? 1 : 0)} times as much, so closing gaps does more than a tighter vapour layer.`
    : `${compared}, more than the gap brings.`;
}

/** Litres below a cubic metre, whole cubic metres above it, with thin spaces between thousands. */
function airInWords(litres: number): string {
  if (litres < LITRES_PER_CUBIC_METRE) return `${formatNumber(litres, 0)} litres`;
  return `${formatNumber(litres / LITRES_PER_CUBIC_METRE, 0)} m³`;
}
