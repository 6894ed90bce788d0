import type { Command } from "commander";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import { DICTIONARY, lookUp } from "./explain/dictionary.ts";
import type { Entry } from "./explain/entry.ts";
import type { Registration } from "./registration.ts";
import { harmless, type Terminal, wrap } from "./terminal.ts";

/** `warmside explain WORD`: what a word of the report, of the project file or of the trade means. */
export const registerExplain: Registration = (program: Command, run): void => {
  program
    .command("explain")
    .argument("[word...]", "such as: sd, gauge, dries out, vapour layer; without one, all words are listed")
    .summary("say what a word of the report means")
    .description("Says what a word of the report, of the project file or of the trade means, and how units relate.")
    .addHelpText("after", "\nExample:\n  warmside explain sd\n")
    .action((words: string[]) => run((context) => explain(words.join(" "), context)));
};

async function explain(word: string, context: CommandContext): Promise<CommandResult> {
  if (word.trim() === "") return done(listOfWords(context.answers));
  const entry = lookUp(word);
  if (entry !== null) return done(entryInWords(entry, context.answers));
  const { nearNames } = await import("@warmside/core");
  const near = nearNames(word, [...new Set(DICTIONARY.flatMap((known) => [known.word, ...known.also]))]);
  const offer = near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`;
  throw new CommandProblem(
    "unknown-word",
    `"${harmless(word)}" is not explained here.${offer} "warmside explain" lists all words.`,
  );
}

function entryInWords(entry: Entry, terminal: Terminal): string {
  const unit = entry.unit === null ? "" : `, in: ${entry.unit}`;
  const paragraphs = entry.says.map((text) => wrap(text, terminal.width, "  "));
  const source = entry.source === null ? [] : [wrap(`Source: ${entry.source}.`, terminal.width, "  ")];
  const see = wrap(`See also: ${entry.see.join(", ")}.`, terminal.width, "  ");
  return `${terminal.paint("bold", entry.word)}${unit}\n${[...paragraphs, [...source, see].join("\n")].join("\n\n")}\n`;
}

function listOfWords(terminal: Terminal): string {
  const words = DICTIONARY.map(({ word }) => word).join(", ");
  return `${wrap(`Words that are explained: ${words}.`, terminal.width)}\n`;
}
