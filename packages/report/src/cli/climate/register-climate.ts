import type { Command } from "commander";
import { CommandProblem, type CommandResult, refused } from "../command-result.ts";
import type { Registration } from "../registration.ts";
import type { WrittenMakeOptions } from "./climate-make.ts";

/** `warmside climate make FILE`, `climate list`, `climate near PLACE`. */
export const registerClimate: Registration = (program, run) => {
  const climate = program
    .command("climate")
    .summary("outdoor climates: the ones at hand, the nearest, and your own from weather records")
    .description("Outdoor climates: lists the ones at hand, finds the nearest, and makes one from weather records.")
    .helpCommand(false)
    .allowExcessArguments()
    .action((_options: object, command: Command) => run(() => withoutCommand(command)));

  climate
    .command("make")
    .argument("<file>", "weather records: CSV with a heading line, hourly or daily, at least a year")
    .summary("turn weather records into a climate table")
    .description(
      "Turns hourly or daily weather records into twelve monthly means, written beside the file as NAME-climate.csv. " +
        "Needs the time, the temperature, and the relative humidity, dew point, wet bulb or vapour pressure. Columns are " +
        "guessed from their headings. Nothing is filled in: a month with under 80 % of its readings is refused.",
    )
    .option("--out <path>", "where to write the table")
    .option("--json", "print the months as JSON; writes no table unless --out is given")
    .option("--column <what=heading>", "name a column, for example temperature=T2; may be repeated", collect)
    .option("--date-order <order>", "what comes first in 03/04/2005: day first or month first")
    .option("--temperature-unit <unit>", "C, F or K, where headings do not say")
    .option("--humidity-unit <unit>", "% or fraction, where headings do not say")
    .option("--pressure-unit <unit>", "Pa, hPa or kPa, where headings do not say")
    .option("--place <name>", "name of the place")
    .option("--country <name>", "country")
    .option("--latitude <degrees>", "of the station, for example 52.1 or -33.9")
    .option("--longitude <degrees>", "of the station, for example 5.2 or -0.45")
    .option("--altitude <metres>", "of the station; needed with wet-bulb temperatures")
    .option("--origin <text>", "whose records they are")
    .option("--terms <text>", "on what terms they may be used")
    .option("--acknowledgement <text>", "what their owner asks to be said")
    .addHelpText("after", '\nExample:\n  warmside climate make station.csv --place "Upper meadow" --altitude 340\n')
    .action((file: string, options: WrittenMakeOptions) =>
      run(async (context) => {
        const { climateMake } = await import("./climate-make.ts");
        return await climateMake(file, options, context);
      }),
    );

  climate
    .command("list")
    .summary("places at hand, with their coldest and warmest month")
    .description("Lists the climates at hand with their coldest and warmest month and their annual mean.")
    .option("--json", "print the list as JSON")
    .action((options: { json?: boolean }) =>
      run(async () => {
        const [{ climateList }, { shippedClimates }] = await Promise.all([
          import("./climate-list.ts"),
          import("./shipped-climates.ts"),
        ]);
        return climateList(shippedClimates(), options.json === true);
      }),
    );

  climate
    .command("near")
    .argument("<place...>", "a town, or latitude and longitude in degrees (south and west negative)")
    .summary("the nearest places")
    .description(
      "Finds the nearest climates at hand, with the distance, and says when they are far or at another height. Towns of " +
        "over 15 000 people are known by name (GeoNames, CC BY 4.0).",
    )
    .option("--altitude <metres>", "height of the site")
    .option("--json", "print the places as JSON")
    .addHelpText(
      "after",
      "\nExamples:\n  warmside climate near Bath\n  warmside climate near 51.5 -0.1 --altitude 30\n",
    )
    .action((place: string[], options: { altitude?: string; json?: boolean }) =>
      run(async () => {
        const [{ climateNear }, { shippedClimates }, { TOWNS }] = await Promise.all([
          import("./climate-near.ts"),
          import("./shipped-climates.ts"),
          import("./shipped-towns.ts"),
        ]);
        const { altitude, json } = options;
        return climateNear({ place, altitude, json: json === true }, shippedClimates(), TOWNS);
      }),
    );
};

/** `warmside climate` alone shows its help; an unknown command after it is reported. */
async function withoutCommand(climate: Command): Promise<CommandResult> {
  const [word] = climate.args;
  if (word === undefined) return refused({ asIs: climate.helpInformation() });
  const { inSpeech } = await import("@warmside/core");
  const known = inSpeech(
    climate.commands.map((command) => command.name()),
    "and",
  );
  throw new CommandProblem(
    "unknown-command",
    `There is no command "climate ${word}". There are ${known}. See warmside climate --help.`,
  );
}

function collect(value: string, earlier: readonly string[] = []): string[] {
  return [...earlier, value];
}
