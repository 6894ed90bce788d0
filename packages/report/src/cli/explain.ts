import type { Command } from "commander";
import { lookUp } from "../terms/look-up.ts";
import type { Term } from "../terms/term.ts";
import { TERMS } from "../terms/terms.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import { groups, type Line, line, paragraph } from "./lines.ts";
import type { Registration } from "./registration.ts";

/** `warmside explain WORD`: what a word of the report, of the project file or of the trade means. */
export const registerExplain: Registration = (program: Command, run): void => {
  program
    .command("explain")
    .argument("[word...]", "for example sd, gauge, dries out or vapour layer; without a word, all terms are listed")
    .summary("explain a term of the report")
    .description(
      "Explains a term of the report, of the project file or of the trade, with its symbol, unit and source.",
    )
    .addHelpText("after", "\nExample:\n  warmside explain sd\n")
    .action((words: string[]) => run(() => explain(words.join(" "))));
};

async function explain(word: string): Promise<CommandResult> {
  if (word.trim() === "") return done([paragraph(`Terms: ${TERMS.map(({ name }) => name).join(", ")}.`)]);
  const found = lookUp(word);
  if (found !== null) return done(termInWords(found));
  const { nearNames } = await import("@warmside/core");
  const near = nearNames(word, [...new Set(TERMS.flatMap(({ name, also }) => [name, ...also]))]);
  const offer = near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`;
  throw new CommandProblem("unknown-word", `No term is called "${word}".${offer} "warmside explain" lists all terms.`);
}

function termInWords({ name, technical, symbol, unit, says, source, see }: Term): Line[] {
  const shownSymbol = symbol === null || symbol === name ? "" : `, ${symbol}`;
  const shownUnit = unit === null ? "" : `, in: ${unit}`;
  const [first, ...further] = says.map((text) => [paragraph(text, 2)]);
  const end = [
    ...(technical === null ? [] : [`Technical term: ${technical}.`]),
    ...(source === null ? [] : [`Source: ${source}.`]),
    `See also: ${see.join(", ")}.`,
  ];
  return groups(
    [line({ colour: "bold", text: name }, `${shownSymbol}${shownUnit}`), ...(first ?? [])],
    ...further,
    end.map((text) => paragraph(text, 2)),
  );
}
