import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { type Command, Option } from "commander";
import type { CommandContext } from "./command-context.ts";
import { CommandProblem, type CommandResult, done } from "./command-result.ts";
import { writeWhole } from "./files/write-whole.ts";
import { line } from "./lines.ts";
import { placeFor } from "./new/place-for.ts";
import { STARTER_FLOOR } from "./new/starter-floor.ts";
import { starterHead } from "./new/starter-head.ts";
import { STARTER_PARTITION } from "./new/starter-partition.ts";
import { STARTER_ROOF } from "./new/starter-roof.ts";
import { STARTER_WALL } from "./new/starter-wall.ts";
import type { Registration } from "./registration.ts";

const STARTERS = {
  wall: STARTER_WALL,
  roof: STARTER_ROOF,
  floor: STARTER_FLOOR,
  partition: STARTER_PARTITION,
};

interface NewOptions {
  element: keyof typeof STARTERS;
  climate: string;
  out?: string;
}

/** `warmside new`: writes a commented project file to begin with. */
export const registerNew: Registration = (program: Command, run): void => {
  program
    .command("new")
    .summary("write a commented project file to begin with")
    .description(
      "Writes a project file for a wall, a roof, a floor or a partition between two rooms, with a remark at every line, ready to be changed and " +
        "assessed.",
    )
    .addOption(new Option("--element <element>", "what to begin with").choices(Object.keys(STARTERS)).default("wall"))
    .option("--climate <place>", "the place, as in the list of climates, or the path of a climate table", "de-bilt")
    .option("--out <path>", "the file to write; without it my-ELEMENT.yaml")
    .addHelpText("after", "\nExample:\n  warmside new --element roof --climate oslo --out studio.yaml\n")
    .action((options: NewOptions) => run((context) => writeStarter(options, context)));
};

async function writeStarter(options: NewOptions, context: CommandContext): Promise<CommandResult> {
  const shown = options.out ?? `my-${options.element}.yaml`;
  if (shown === "") throw new CommandProblem("no-name", "The name after --out is empty. Write the file to make.");
  const path = resolve(context.folder, shown);
  if (existsSync(path)) {
    throw new CommandProblem(
      "is-there",
      `${shown} is there already, and a project is never written over. Name another file with --out.`,
    );
  }
  const climate = await placeFor(options.climate, dirname(path), context);
  await writeWhole([{ path, shown, content: starterHead(options.element, climate) + STARTERS[options.element] }]);
  return done([line(`Written: ${shown}`), line(`Change it to what you have, then:  warmside assess ${shown}`)]);
}
