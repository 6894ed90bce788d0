import type { Command } from "commander";
import { lookUp } from "../terms/look-up.ts";
import type { Term } from "../terms/term.ts";
import { TERMS } from "../terms/terms.ts";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import type { Registration } from "./registration.ts";
import { harmless, type Terminal, wrap } from "./terminal.ts";

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
    .action((words: string[]) => run((context) => explain(words.join(" "), context)));
};

async function explain(word: string, context: CommandContext): Promise<CommandResult> {
  if (word.trim() === "") return done(listOfWords(context.answers));
  const found = lookUp(word);
  if (found !== null) return done(termInWords(found, context.answers));
  const { nearNames } = await import("@warmside/core");
  const near = nearNames(word, [...new Set(TERMS.flatMap(({ name, also }) => [name, ...also]))]);
  const offer = near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`;
  throw new CommandProblem(
    "unknown-word",
    `No term is called "${harmless(word)}".${offer} "warmside explain" lists all terms.`,
  );
}

function termInWords({ name, technical, symbol, unit, says, source, see }: Term, terminal: Terminal): string {
  const shownSymbol = symbol === null || symbol === name ? "" : `, ${symbol}`;
  const shownUnit = unit === null ? "" : `, in: ${unit}`;
  const paragraphs = says.map((text) => wrap(text, terminal.width, "  "));
  const end = [
    ...(technical === null ? [] : [`Technical term: ${technical}.`]),
    ...(source === null ? [] : [`Source: ${source}.`]),
    `See also: ${see.join(", ")}.`,
  ].map((line) => wrap(line, terminal.width, "  "));
  return `${terminal.paint("bold", name)}${shownSymbol}${shownUnit}\n${[...paragraphs, end.join("\n")].join("\n\n")}\n`;
}

function listOfWords(terminal: Terminal): string {
  return `${wrap(`Terms: ${TERMS.map(({ name }) => name).join(", ")}.`, terminal.width)}\n`;
}
