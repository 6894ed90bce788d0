import { json } from "./answers/json.ts";
import { type CommandContext, foldersOf } from "./command-context.ts";
import { type CommandResult, done } from "./command-result.ts";
import { paragraph } from "./lines.ts";
import type { Registration } from "./registration.ts";

/** `warmside check FILE`: reads a project file and lists every problem; writes nothing. */
export const registerCheck: Registration = (program, run) => {
  program
    .command("check")
    .argument("<file>", "project file (YAML or JSON)")
    .summary("list every problem of a project file")
    .description(
      "Reads a project file and lists its problems, at most 50, each with its line and what to write. It calculates and writes nothing.",
    )
    .option("--json", "print the problems as JSON")
    .addHelpText("after", "\nExample:\n  warmside check studio.yaml\n")
    .action((file: string, options: { json?: boolean }) =>
      run((context) => check(file, options.json === true, context)),
    );
};

async function check(file: string, asJson: boolean, context: CommandContext): Promise<CommandResult> {
  const [{ withCalculation }, { withProblemsAsJson }] = await Promise.all([
    import("./calculation/open-calculation.ts"),
    import("./problems-as-json.ts"),
  ]);
  return await withProblemsAsJson(asJson, async () => {
    const read = await withCalculation(
      () => undefined,
      (calculation) => calculation.read(file, foldersOf(context), asJson),
    );
    if (read.refused !== null) return read.refused;
    const { buildUps, oddities, notes } = read;
    if (asJson) return done(json({ problems: [], oddities }));
    const many = buildUps === 1 ? "1 build-up" : `${buildUps} build-ups`;
    return done([paragraph(`${file}: no problems, ${many}.`), ...notes]);
  });
}
