import type { Command } from "commander";
import { jsonText } from "./answers/json-text.ts";
import { noteInWords } from "./answers/note-in-words.ts";
import { done, type Outcome } from "./outcome.ts";
import { harmless } from "./paper.ts";
import type { Registration } from "./registration.ts";
import type { Standing } from "./standing.ts";

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
      run((standing) => check(file, options.json === true, standing)),
    );
};

async function check(file: string, asJson: boolean, standing: Standing): Promise<Outcome> {
  const [{ readProjectFile }, { refusedProject, withProblemsAsJson }] = await Promise.all([
    import("./project-file.ts"),
    import("./refused-project.ts"),
  ]);
  return await withProblemsAsJson(asJson, async () => {
    const { reading } = readProjectFile(file, standing);
    if (!reading.ok) return refusedProject(reading.problems, file, asJson, standing);
    const { buildUps, oddities } = reading.value;
    if (asJson) return done(jsonText({ problems: [], oddities }));
    const many = buildUps.length === 1 ? "1 build-up" : `${buildUps.length} build-ups`;
    const notes = oddities.map((note) => noteInWords(note, standing.answers));
    return done(`${[`${harmless(file)}: no problems, ${many}.`, ...notes].join("\n")}\n`);
  });
}
