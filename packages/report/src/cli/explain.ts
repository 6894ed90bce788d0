import type { Term } from "../terms/term.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import { keyInWords, keysCalled, listOfKeys } from "./keys-in-words.ts";
import { groups, type Line, line, paragraph } from "./lines.ts";
import type { Registration } from "./registration.ts";

/** `warmside explain WORD`: what a word of the report, of the project file or of the trade means. */
export const registerExplain: Registration = (program, run) => {
  program
    .command("explain")
    .argument(
      "[word...]",
      "for example sd, gauge, dries out, or a key of the project file; without a word, all terms are listed; keys lists all keys",
    )
    .summary("explain a term of the report or a key of the project file")
    .description(
      "Explains a term of the report, of the project file or of the trade, with its symbol, unit and source.",
    )
    .addHelpText("after", "\nExample:\n  warmside explain sd\n")
    .action((words: string[]) => run(() => explain(words.join(" "))));
};

async function explain(word: string): Promise<CommandResult> {
  const { TERMS } = await import("../terms/terms.ts");
  if (word.trim() === "")
    return done([
      paragraph(`Terms: ${TERMS.map(({ name }) => name).join(", ")}.`),
      paragraph("Keys of the project file: warmside explain keys."),
    ]);
  const { nearNames, projectKeys } = await import("@warmside/core");
  const all = projectKeys();
  if (/^keys?$/i.test(word.trim())) return done(listOfKeys(all));
  const { lookUp } = await import("../terms/look-up.ts");
  const found = lookUp(word);
  const keys = keysCalled(all, word);
  if (found !== null || keys.length > 0)
    return done(groups(found === null ? [] : termInWords(found), ...keys.map(keyInWords)));
  const names = [...TERMS.flatMap(({ name, also }) => [name, ...also]), ...all.map(({ key }) => key)];
  const near = nearNames(word, [...new Set(names)]);
  const offer = near.length === 0 ? "" : ` Did you mean ${near.join(" or ")}?`;
  throw new CommandProblem(
    "unknown-word",
    `No term or key is called "${word}".${offer} "warmside explain" lists all terms, "warmside explain keys" all keys.`,
  );
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
