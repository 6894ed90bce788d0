import type { Command } from "commander";
import { json } from "./answers/json.ts";
import { noteInWords } from "./answers/note-in-words.ts";
import type { CommandContext } from "./command-context.ts";
import { type CommandResult, done } from "./command-result.ts";
import { paragraph } from "./lines.ts";
import type { Registration } from "./registration.ts";

/** `warmside check FILE`: reads a project file and lists every problem; writes nothing. */
export const registerCheck: Registration = (program: Command, run): void => {
  program
    .command("check")
    .argument("<file>", "project file (YAML or JSON)")
    .summary("list every problem of a project file")
    .description(
      "Reads a project file and lists every problem with its line and, where there is one, what to write; of more than 50 the first 50. Works nothing out and writes nothing.",
    )
    .option("--json", "print the problems as JSON")
    .addHelpText("after", "\nExample:\n  warmside check studio.yaml\n")
    .action((file: string, options: { json?: boolean }) =>
      run((context) => check(file, options.json === true, context)),
    );
};

async function check(file: string, asJson: boolean, context: CommandContext): Promise<CommandResult> {
  const [{ readProjectFile }, { refusedProject, withProblemsAsJson }] = await Promise.all([
    import("./project-file.ts"),
    import("./refused-project.ts"),
  ]);
  return await withProblemsAsJson(asJson, async () => {
    const { reading } = readProjectFile(file, context);
    if (!reading.ok) return refusedProject(reading.problems, file, asJson);
    const { buildUps, oddities } = reading.value;
    if (asJson) return done(json({ problems: [], oddities }));
    const many = buildUps.length === 1 ? "1 build-up" : `${buildUps.length} build-ups`;
    return done([paragraph(`${file}: no problems, ${many}.`), ...oddities.map(noteInWords)]);
  });
}
