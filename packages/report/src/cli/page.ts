import type { Registration } from "./registration.ts";

/** `warmside page [FILE]`: writes the live page as one file, with the project inside. */
export const registerPage: Registration = (program, run) => {
  program
    .command("page")
    .argument("[file]", "project file (YAML or JSON); without it the page begins with a stud wall")
    .summary("write the live page: draw and change a build-up in the browser")
    .description(
      "Writes one HTML file that opens by a double-click, with no network: the section of the build-up is the form, and the answer changes with it. The project, and the tables it names, are inside.",
    )
    .option("--out <path>", "the file to write; without it NAME-page.html beside the project file")
    .addHelpText("after", "\nExample:\n  warmside page studio.yaml\n")
    .action((file: string | undefined, options: { out?: string }) =>
      run(async (context) => {
        const { writePage } = await import("./page/write-page.ts");
        return await writePage(file ?? null, options.out ?? null, context);
      }),
    );
};
