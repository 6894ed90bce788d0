import { json } from "./answers/json.ts";
import { done } from "./command-result.ts";
import type { Registration } from "./registration.ts";

/** `warmside schema`: the JSON Schema of a project file, for editors. */
export const registerSchema: Registration = (program, run) => {
  program
    .command("schema")
    .summary("print the JSON Schema of a project file")
    .description(
      "Prints the JSON Schema of a project file. An editor that knows it offers keys and marks mistakes while you write.",
    )
    .addHelpText("after", "\nExample:\n  warmside schema > warmside.schema.json\n")
    .action(() =>
      run(async () => {
        const { projectJsonSchema } = await import("@warmside/core");
        return done(json(projectJsonSchema()));
      }),
    );
};
