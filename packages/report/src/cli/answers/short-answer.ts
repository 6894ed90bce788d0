import {
  type BuildUpResult,
  formatInShownUnit,
  formatQuantity,
  type JudgementWord,
  meetsTarget,
  type ProjectResult,
} from "@warmside/core";
import { withoutBackticks } from "../../with-code.ts";
import { type Colour, harmless, type Terminal, wrap } from "../terminal.ts";
import { noteInWords } from "./note-in-words.ts";
import { verdictInWords } from "./verdict-in-words.ts";

/**
 * The short answers of a project for a terminal: for each build-up its judgement with one reason, its U-value and what
 * the monthly method says; then the notes of odd values that the project does not accept.
 *
 * @param result - the assessed project
 * @param terminal - what it is printed on
 * @param withVariants - whether each variant is told too
 * @returns text that ends with a line end
 */
export function shortAnswers(result: ProjectResult, terminal: Terminal, withVariants = false): string {
  const reference = result.reference === null ? "" : ` (${result.reference})`;
  const head = wrap(
    `${harmless(result.project)}${reference}, ${result.climate.name}, ${result.climate.severity}`,
    terminal.width,
  );
  const answers = result.buildUps.map((buildUp) => shortAnswer(buildUp, result, terminal, withVariants));
  const odd = result.oddities.filter(({ accepted }) => !accepted).map((note) => noteInWords(note, terminal));
  return `${[head, ...answers, ...(odd.length === 0 ? [] : [odd.join("\n")])].join("\n\n")}\n`;
}

const INDENT = "  ";

const COLOUR_OF_JUDGEMENT: Readonly<Record<JudgementWord, Colour>> = {
  sound: "green",
  "sound with conditions": "yellow",
  "change it": "red",
  "beyond this method": "yellow",
};

function shortAnswer(buildUp: BuildUpResult, result: ProjectResult, terminal: Terminal, withVariants: boolean): string {
  const { word } = buildUp.judgement;
  const name = terminal.paint("bold", harmless(buildUp.name));
  const lines = [
    `${name}: ${terminal.paint(COLOUR_OF_JUDGEMENT[word], word)}`,
    wrap(harmless(withoutBackticks(reasonOf(buildUp))), terminal.width, INDENT),
    ...askedInstead(buildUp).map((sentence) => wrap(harmless(withoutBackticks(sentence)), terminal.width, INDENT)),
    ...(buildUp.heat === null
      ? []
      : [wrap(heatInWords(buildUp.heat.transmittance, buildUp.target), terminal.width, INDENT)]),
    ...(buildUp.moisture === null ? [] : [wrap(verdictInWords(buildUp.moisture), terminal.width, INDENT)]),
    ...(buildUp.spread === undefined ? [] : [wrap(harmless(buildUp.spread.message), terminal.width, INDENT)]),
    ...placementInWords(buildUp, result).map((sentence) => wrap(harmless(sentence), terminal.width, INDENT)),
    ...sweepInWords(buildUp, result).map((sentence) => wrap(harmless(sentence), terminal.width, INDENT)),
    ...(withVariants ? variantsInWords(buildUp, result, terminal) : []),
  ];
  return lines.join("\n");
}

/** What the placement study shows, where it was asked for. */
function placementInWords({ slug }: BuildUpResult, { placement }: ProjectResult): string[] {
  const study = placement?.buildUps.find((one) => one.slug === slug);
  if (study === undefined) return [];
  if (study.layer === null) return [`Places of a vapour layer: left out. ${study.leftOut}`];
  const layer = `${study.layer.name} (sd ${study.layer.sd} m${study.layer.added ? ", added" : ""})`;
  return [`Places of ${layer}: ${study.message}`];
}

/** What the sweep shows, where it was asked for. */
function sweepInWords({ slug }: BuildUpResult, { sweep }: ProjectResult): string[] {
  return sweep?.buildUp.slug === slug ? [`Layer ${sweep.layer.number}, ${sweep.message}`] : [];
}

/** Each variant with its judgement and what it does against the build-up as drawn. */
function variantsInWords({ slug }: BuildUpResult, { comparison }: ProjectResult, terminal: Terminal): string[] {
  const rows = comparison?.buildUps.find((one) => one.slug === slug)?.rows ?? [];
  return rows.flatMap(({ variant, judgement, reason, sentence }, number) =>
    variant === null || sentence === null
      ? []
      : [
          `${INDENT}${number} ${terminal.paint("bold", harmless(variant))}: ${terminal.paint(COLOUR_OF_JUDGEMENT[judgement], judgement)}`,
          wrap(harmless(sentence), terminal.width, `${INDENT}  `),
          wrap(harmless(reason), terminal.width, `${INDENT}  `),
        ],
  );
}

/** The reason without the word of the judgement, which stands before it. */
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

/** The U-value as it is quoted, and its target compared as it is quoted. */
function heatInWords(transmittance: number, target: number | null): string {
  const value = `U-value ${formatQuantity(transmittance, "transmittance")}`;
  if (target === null) return `${value}.`;
  const meets = meetsTarget(transmittance, target) ? "meets" : "misses";
  return `${value}, which ${meets} the target of ${formatInShownUnit(target, "transmittance")}.`;
}
