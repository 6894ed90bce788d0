import { formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import type { AssumedMeasure, JunctionChange, JunctionResult } from "../../result/types.ts";
import { joined } from "../figures-in-words.ts";

/** The data for the words of a junction. */
export interface JunctionSaid extends Pick<JunctionResult, "name" | "kind" | "beyond"> {
  assumed: readonly AssumedMeasure[];
  figures: Omit<NonNullable<JunctionResult["figures"]>, "picture"> | null;
}

/**
 * Puts a junction into words.
 *
 * @param junction - its figures, or why there are none
 * @returns the finding in one sentence and in full, the advice, and the source
 */
export function junctionInWords({
  name,
  kind,
  beyond,
  assumed,
  figures,
}: JunctionSaid): Pick<JunctionResult, "short" | "message" | "advice" | "source"> {
  const source = "ISO 10211:2017 and ISO 13788:2012 clause 5";
  if (figures === null) {
    const short = `The ${kind} "${name}" is not calculated: ${WHY_NOT[beyond ?? "not outdoors"]}.`;
    return { short, message: short, advice: null, source };
  }
  const { temperatureFactor, required, meetsMould, linearTransmittance, alternatives } = figures;
  const own = factor(temperatureFactor);
  const short =
    required === null
      ? `The ${kind} "${name}" has a temperature factor of ${own}; no month requires one.`
      : required.factor > 1
        ? `The ${kind} "${name}" has a temperature factor of ${own}; in ${required.month} the room is so damp that no construction keeps mould away.`
        : meetsMould === true
          ? `The ${kind} "${name}" keeps mould away: temperature factor ${own}, ${required.month} requires ${factor(required.factor)}.`
          : `Mould can grow at the ${kind} "${name}": temperature factor ${own}, ${required.month} requires ${factor(required.factor)}.`;
  const isAssumed = assumed.length > 0;
  const more = [
    isAssumed
      ? `The file does not say ${joined(assumed.map(({ key }) => key))}: calculated with ${joined(assumed.map(measureInWords))}, which is unfavourable.`
      : "",
    alternatives.length > 0
      ? `It would be ${joined(alternatives.map(({ change, temperatureFactor: changed }) => `${factor(changed)} with ${changeInWords(change)}`))}.`
      : "",
    `ψ is ${formatNumber(linearTransmittance, 3)} W/(m·K) by outer dimensions, beside the U between the framing; U with its other timber already holds part of it.`,
    kind === "window side"
      ? "The surface is that of wall and reveal; the frame and the pane's edge are the window's own matter."
      : "A corner where three sides meet is colder still.",
  ];
  const helps = alternatives.filter(({ meetsMould: enough }) => enough === true);
  const message = [short, ...more].filter((sentence) => sentence !== "").join(" ");
  return { short, message, advice: meetsMould === false ? adviceOf(helps.map(({ change }) => change)) : null, source };
}

const WHY_NOT: Readonly<Record<NonNullable<JunctionResult["beyond"]>, string>> = {
  "other rooms": "its build-ups belong to different rooms",
  "not outdoors": "only build-ups that face outdoors are calculated",
  metal: "metal framing at a junction is not calculated",
};

function adviceOf(helps: readonly JunctionChange[]): string {
  return helps.length === 0
    ? "None of the changes tried is enough. Keep the room drier, or insulate the whole junction outside."
    : `Enough would be ${helps.map(changeInWords).join(", or ")}; otherwise keep the room drier.`;
}

function measureInWords(measure: AssumedMeasure): string {
  switch (measure.key) {
    case "posts":
      return measure.value === "solid" ? "solid timber" : `${measure.value} posts`;
    case "plates":
    case "trimmers":
      return `${measure.value} ${measure.key}`;
    case "conductivity":
      return `a frame of ${formatQuantity(measure.value, "conductivity")}`;
    default:
      return `a ${measure.key} of ${formatQuantity(measure.value, "thickness")}`;
  }
}

function changeInWords(change: JunctionChange): string {
  switch (change.kind) {
    case "posts":
      return `${change.posts} posts`;
    case "insulation outside":
    case "insulation in the reveal":
      return `${formatQuantity(change.thickness, "thickness")} of ${change.kind}`;
    case "set back":
      return `the frame set back ${formatQuantity(change.measure, "thickness")}`;
    default:
      return `a ${change.kind} of ${formatQuantity(change.measure, "thickness")}`;
  }
}

function factor(value: number): string {
  return formatNumber(value, 2);
}
