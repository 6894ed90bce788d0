import {
  type BuildUpResult,
  formatInShownUnit,
  formatQuantity,
  type JudgementWord,
  meetsTarget,
  type ProjectResult,
} from "@warmside/core";
import { withoutBackticks } from "../../backticks.ts";
import { worseSentence } from "../../spread-study/spread-in-words.ts";
import { type Colour, groups, type Line, line, paragraph } from "../lines.ts";
import { oddityInWords } from "./oddity-in-words.ts";
import { verdictInWords } from "./verdict-in-words.ts";

/**
 * The short answers of a project: for each build-up its judgement with one reason, its U-value and what the monthly
 * method says; then the junctions, and the notes of odd values that the project does not accept.
 *
 * @param result - the assessed project
 * @param withVariants - whether each variant is told too
 * @returns lines for a terminal
 */
export function shortAnswers(result: ProjectResult, withVariants = false): Line[] {
  const reference = result.reference === null ? "" : ` (${result.reference})`;
  const head = paragraph(`${result.project}${reference}, ${result.climate.name}, ${result.climate.severity}`);
  const answers = result.buildUps.map((buildUp) => shortAnswer(buildUp, result, withVariants));
  const odd = result.oddities.filter(({ accepted }) => !accepted).map(oddityInWords);
  const junctions = result.junctions.flatMap(({ short, advice }) =>
    paragraph(advice === null ? short : `${short} ${advice}`),
  );
  return groups([head], ...answers, junctions, odd);
}

const COLOUR_OF_JUDGEMENT: Readonly<Record<JudgementWord, Colour>> = {
  sound: "green",
  "sound with conditions": "yellow",
  "change it": "red",
  "beyond this method": "yellow",
};

function shortAnswer(buildUp: BuildUpResult, result: ProjectResult, withVariants: boolean): Line[] {
  const { heat, moisture, spread, name, judgement } = buildUp;
  const sentences = [
    withoutBackticks(reasonOf(buildUp)),
    ...askedInstead(buildUp).map(withoutBackticks),
    ...(heat === null ? [] : [heatInWords(heat.transmittance, buildUp.target)]),
    ...(moisture === null ? [] : [verdictInWords({ ...buildUp, moisture })]),
    // The judgement already says that it is often worse.
    ...(spread === undefined ? [] : [spread.message.slice(worseSentence(spread).length).trimStart()]),
    ...placementInWords(buildUp, result),
    ...variationInWords(buildUp, result),
  ];
  return [
    judged(name, judgement.word),
    ...sentences.map((sentence) => paragraph(sentence, 2)),
    ...(withVariants ? variantsInWords(buildUp, result) : []),
  ];
}

/** A name with its judgement. */
function judged(name: string, word: JudgementWord, before = ""): Line {
  return line(before, { colour: "bold", text: name }, ": ", { colour: COLOUR_OF_JUDGEMENT[word], text: word });
}

/** What the placement study shows, where it was asked for. */
function placementInWords({ slug }: BuildUpResult, { placement }: ProjectResult): string[] {
  const study = placement?.buildUps.find((one) => one.slug === slug);
  if (study === undefined) return [];
  if (study.layer === null) return [`Places of a vapour layer: left out. ${study.leftOut}`];
  const layer = `${study.layer.name} (sd ${study.layer.sd} m${study.layer.added ? ", added" : ""})`;
  return [`Places of ${layer}: ${study.message}`];
}

/** What the variation shows, where it was asked for. */
function variationInWords({ slug }: BuildUpResult, { variation }: ProjectResult): string[] {
  return variation?.buildUp.slug === slug ? [`Layer ${variation.layer.number}, ${variation.message}`] : [];
}

/** Each variant with its judgement and its effect compared with the build-up as drawn. */
function variantsInWords({ slug }: BuildUpResult, { comparison }: ProjectResult): Line[] {
  const rows = comparison?.buildUps.find((one) => one.slug === slug)?.rows ?? [];
  return rows.flatMap(({ variant, judgement, reason, sentence }, number) =>
    variant === null || sentence === null
      ? []
      : [judged(variant, judgement, `  ${number} `), paragraph(sentence, 4), paragraph(reason, 4)],
  );
}

/** The reason without the word of the judgement, which comes before it. */
function reasonOf(buildUp: BuildUpResult): string {
  const { word, message } = buildUp.judgement;
  const withoutWord = message.toLowerCase().startsWith(word)
    ? message.slice(word.length).replace(/^[\s:,.;–—-]+/, "")
    : message;
  return withoutWord === "" ? message : withoutWord.charAt(0).toUpperCase() + withoutWord.slice(1);
}

/** What to ask for where the method does not cover the build-up. */
function askedInstead({ judgement, beyond }: BuildUpResult): string[] {
  return judgement.word === "beyond this method" && beyond !== null ? [beyond.askFor] : [];
}

/** The U-value, rounded as it is quoted, compared with its target. */
function heatInWords(transmittance: number, target: number | null): string {
  const value = `U-value ${formatQuantity(transmittance, "transmittance")}`;
  if (target === null) return `${value}.`;
  const meets = meetsTarget(transmittance, target) ? "meets" : "misses";
  return `${value}, which ${meets} the target of ${formatInShownUnit(target, "transmittance")}.`;
}
