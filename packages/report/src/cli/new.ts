import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { Option } from "commander";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import { writeWhole } from "./files/write-whole.ts";
import { line } from "./lines.ts";
import { placeFor } from "./new/place-for.ts";
import { type Element, STARTERS, type StarterAnswers, starterText } from "./new/starter.ts";
import type { Registration } from "./registration.ts";

interface NewOptions {
  element?: Element;
  climate?: string;
  out?: string;
}

const USUAL_ELEMENT = "wall";
const USUAL_CLIMATE = "de-bilt";

/** `warmside new`: writes a commented project file to begin with. */
export const registerNew: Registration = (program, run) => {
  program
    .command("new")
    .summary("write a commented project file to begin with")
    .description(
      "Writes a project file for a wall, a roof, a floor or a partition between two rooms, with a remark at every line, " +
        "ready to be changed and assessed. On a terminal, without options, it asks what you build, where and how it " +
        "is used.",
    )
    .addOption(new Option("--element <element>", "what to begin with (default: wall)").choices(Object.keys(STARTERS)))
    .option(
      "--climate <place>",
      "the place, as in the list of climates, or the path of a climate table (default: de-bilt)",
    )
    .option("--out <path>", "the file to write; without it my-ELEMENT.yaml")
    .addHelpText("after", "\nExample:\n  warmside new --element roof --climate oslo --out studio.yaml\n")
    .action((options: NewOptions) => run((context) => writeStarter(options, context)));
};

async function writeStarter(options: NewOptions, context: CommandContext): Promise<CommandResult> {
  const answers = await answersFrom(options, context);
  const shown = options.out ?? `my-${answers.element}.yaml`;
  const path = placeOf(shown, context);
  await writeWhole([{ path, shown, content: starterText(answers), isThere: () => isThere(shown) }]);
  return done([line(`Written: ${shown}`), line(`Change it to what you have, then:  warmside assess ${shown}`)]);
}

/** Asks at a terminal if no option is given; otherwise uses the options. */
async function answersFrom(options: NewOptions, context: CommandContext): Promise<StarterAnswers> {
  const { element, climate, out } = options;
  if (out !== undefined) placeOf(out, context);
  const folder = dirname(resolve(context.folder, out ?? "my-project.yaml"));
  if (Object.keys(options).length === 0 && context.questions !== null) {
    const { askProject } = await import("./new/ask-project.ts");
    return await context.questions((ask) => askProject(ask, folder, context));
  }
  const place = await placeFor(climate ?? USUAL_CLIMATE, folder, context);
  return { element: element ?? USUAL_ELEMENT, climate: place, room: null, rain: null };
}

/** Where the project file goes: a place where nothing is. */
function placeOf(shown: string, { folder }: CommandContext): string {
  if (shown === "") throw new CommandProblem("no-name", "The name after --out is empty. Name a file.");
  const path = resolve(folder, shown);
  if (!existsSync(path)) return path;
  throw isThere(shown);
}

function isThere(shown: string): CommandProblem {
  const words = `${shown} already exists, and warmside never overwrites a project. Name another file with --out.`;
  return new CommandProblem("is-there", words);
}
