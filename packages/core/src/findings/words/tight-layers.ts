import { isRoof } from "../../project/is-roof.ts";
import { formatQuantity } from "../../quantities/format-quantity.ts";
import type { VapourLayerFindings } from "../../result/types.ts";
import { DROPS_GATHER } from "../amount-limits.ts";
import { capital, grams, joined, yearsInWords } from "../figures-in-words.ts";
import type { Named, Wordings } from "./wording.ts";

type Codes = "tight-outer-skin" | "two-tight-layers" | "tight-sheet-under-floor";
type SkinFigures = VapourLayerFindings["tight-outer-skin"];

/** Findings on tight layers other than the vapour layer. */
export const TIGHT_LAYER_WORDINGS: Wordings<Codes> = {
  "tight-outer-skin": ({ figures }) => ({
    says: `The tight outer skin, ${figures.name} (sd ${formatQuantity(figures.sd, "sd")}), lets no vapour leave outwards.`,
    more: [
      figures.countsAsTight
        ? "Its tabulated value is that of the polymer; sheets as laid are tens of metres, so it counts as tight."
        : "",
      dryingInwards(figures),
    ],
    advice: adviceAtSkin(figures),
    source: "common practice",
  }),
  "two-tight-layers": ({ figures: { inner, outer, between, neverDries } }, buildUp) => ({
    says: `${capital(namesOf(between, buildUp))}, which can hold water, ${between.length === 1 ? "lies" : "lie"} between two tight layers, ${namesOf(inner, buildUp)} and ${namesOf(outer, buildUp)}: water that gets in can hardly leave.`,
    more: [neverDries ? "Construction moisture does not dry within a year." : ""],
    advice: "Close it only when the timber is dry (under 20 %), and keep it so: no leak, no spill.",
    source: "common practice; ISO 13788:2012 clause 7 for the trapped water",
  }),
  "tight-sheet-under-floor": ({ figures: { layer, above } }, buildUp) => {
    const where = buildUp.element === "floor" ? "below" : isRoof(buildUp) ? "over" : "outside";
    return {
      says: `A tight sheet, ${namesOf([layer], buildUp)}, lies ${where} ${namesOf(above.slice(-MOST_NAMED), buildUp)}: leaks, spills and wet timber cannot dry through it.`,
      advice:
        buildUp.element === "pitched roof"
          ? "Use a breather membrane there, or keep 50 mm of ventilated air below the sheet."
          : "Use a breather membrane there. For a damp-proof, gas or radon membrane against the ground, name its `purpose` in the file.",
      source: "common practice",
    };
  },
};

/** Largest number of layers named above a sheet: those next to it. */
const MOST_NAMED = 2;

function namesOf(indices: readonly number[], { layers }: Named): string {
  return joined(indices.map((index) => layers[index]!.name));
}

function dryingInwards({ level, amount, growthPerYear, yearsToGather }: SkinFigures): string {
  if (level === "none") return "Diffusion brings no water to it.";
  if (growthPerYear === null) return "What gathers there dries inwards within the year.";
  if (yearsToGather === null) return "Drying inwards is not enough: the water settles at a level and never dries.";
  const until = amount < DROPS_GATHER ? `, 200 g/m² in ${yearsInWords(yearsToGather)}` : "";
  const how = level === "stays" ? "Drying inwards is not enough" : "Nearly all of it dries inwards";
  return `${how}: ${grams(growthPerYear)} more each year${until}.`;
}

/** What to do between the skin and the layer inside it; the weather skin of a roof lies on its support. */
function adviceAtSkin({ isOnFoam, isWeatherSkinOfRoof }: SkinFigures): string {
  const seal = "Seal the room side: room air must not reach the skin.";
  if (isOnFoam) return `The foam must be bonded to the skin without a void. ${seal}`;
  return isWeatherSkinOfRoof ? seal : `${seal} Look behind the lining at its foot after the first winter.`;
}
