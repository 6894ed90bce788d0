import { formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import type { PlaneFindings, StripFigures } from "../../result/types.ts";
import { grams, joined, yearsInWords } from "../figures-in-words.ts";
import { placeInWords } from "./places.ts";
import { limitInWords } from "./water.ts";
import type { Named, Said, Wordings } from "./wording.ts";

const SOURCE =
  "ISO 13788:2012 clause 6 in two dimensions (METHOD.md, The plane); amounts by DIN 4108-3 and common practice";

type Interrupted = PlaneFindings["interrupted-layer"];

/** Findings in the plane. */
export const PLANE_WORDINGS: Wordings<keyof PlaneFindings> = {
  "interrupted-layer": ({ figures }, buildUp) => interruptedLayer(figures, buildUp),
  "plane-too-wet": () => ({
    says: "So much of the cross-section is wet that the water beside the framing was not worked out.",
    more: ["Straight sections tell the water they see; beside the framing there is more."],
    advice: "Mend what the straight sections show first: a tighter vapour layer, or foil tape over the framing.",
    source: SOURCE,
  }),
  "water-at-channel": ({ figures }, buildUp) => ({
    says: `Water condenses beside the ${figures.framing}, ${placeOf(figures, buildUp)}: ${mostOf(figures)}.`,
    more: [whatBecomesOfIt(figures), limitOf(figures)],
    advice:
      figures.level === "trace"
        ? null
        : "Insulate across the channels on the outer side, and keep the vapour layer unbroken over them.",
    source: SOURCE,
  }),
  "channel-in-the-plane": ({ figures }) => ({
    says: `The ${figures.framing} are worked out in the plane: U ${transmittance(figures.transmittance)} against ${transmittance(figures.clearTransmittance)} between them.`,
    more: [
      `The true value lies between ${formatNumber(figures.lower, 3)} and ${formatNumber(figures.upper, 3)} W/(m²·K). Over a channel the surface has a temperature factor of ${factor(figures.temperatureFactor)}, on the whole ${factor(figures.wholeTemperatureFactor)}.`,
    ],
    source: "ISO 10211:2017",
  }),
};

function interruptedLayer(figures: Interrupted, buildUp: Named): Said {
  const names = joined(figures.layers.map((index) => buildUp.layers[index]!.name));
  const { framing, level, withGap, withTape } = figures;
  const worried = level !== "none" && level !== "trace";
  const isRisk = worried || (withGap !== null && withGap.strip > figures.strip && withGap.verdict !== "dry");
  const says =
    level === "none"
      ? `Vapour passes ${names} at the ${framing}, but condenses nowhere beside them.`
      : `Vapour passes ${names} at the ${framing} and condenses beside them, ${placeOf(figures, buildUp)}: ${mostOf(figures)}.`;
  const beside = [
    withGap === null
      ? ""
      : `A gap of ${formatQuantity(withGap.gap, "thickness")} beside the boards would bring ${grams(withGap.strip)}.`,
    withTape === null
      ? ""
      : withTape.verdict === "dry"
        ? `With foil tape over the ${framing} it stays dry.`
        : `With foil tape over the ${framing} it is ${grams(withTape.strip)} at most.`,
  ];
  return {
    says,
    more: [
      ...(level === "none" ? [] : [whatBecomesOfIt(figures), worried ? limitOf(figures) : ""]),
      asRun(figures),
      ...(isRisk ? beside : []),
      worried ? "Straight sections through the build-up do not see this; leaking air brings more." : "",
    ],
    advice: isRisk && figures.taped.kind !== "over the framing" ? tapeIt(figures) : null,
    source: SOURCE,
  };
}

/** The assumptions about the joints. */
function asRun({ isSaid, framing }: Interrupted): string {
  if (isSaid.gap && isSaid.taped) return "";
  if (isSaid.gap) return "The file does not say whether the joints are taped (`taped`): calculated without tape.";
  const touching = `with boards that touch the ${framing} (\`gap beside framing\`)`;
  return isSaid.taped
    ? `The file states no gap: calculated ${touching}.`
    : `The file does not say how the joints are made: calculated ${touching} and without tape (\`taped\`).`;
}

function tapeIt({ framing, isSaid }: Interrupted): string {
  const ask = isSaid.taped ? "" : " If it is taped, say so: `taped: yes`.";
  return `Tape the foil over the ${framing}, from board to board, and fit the boards without gaps.${ask}`;
}

function placeOf({ place }: StripFigures, buildUp: Named): string {
  return place === null ? "inside it" : placeInWords(place, buildUp);
}

function mostOf({ strip, mean, month }: StripFigures): string {
  return `${grams(strip)} in the worst strip of 50 mm by the end of ${month}, ${grams(mean)} over the whole`;
}

function whatBecomesOfIt({ verdict, dryBy, growthPerYear, yearsToGather }: StripFigures): string {
  if (verdict === "dries out") return dryBy === null ? "It dries out within the year." : `It is gone by ${dryBy}.`;
  if (growthPerYear === 0) return "It settles at a level and never dries.";
  const isSoon = yearsToGather !== null && yearsToGather >= 1 && yearsToGather <= A_LIFETIME;
  const until = isSoon ? `, ${yearsInWords(yearsToGather)} until that makes 200 g/m²` : "";
  return `It does not dry within the year: ${grams(growthPerYear ?? 0)} more each year${until}.`;
}

/** Longest time worth stating until water gathers [a]; a time within the year is not stated either. */
const A_LIFETIME = 100;

function limitOf({ limit, limitBy }: StripFigures): string {
  return limit === null || limitBy === null ? "" : `The limit there is ${grams(limit)} (${limitInWords(limitBy)}).`;
}

function transmittance(value: number): string {
  return formatQuantity(value, "transmittance");
}

function factor(value: number): string {
  return formatNumber(value, 2);
}
