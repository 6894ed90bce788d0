import type { CommandContext } from "../command-context.ts";
import { CommandProblem } from "../command-result.ts";
import { line, paragraph } from "../lines.ts";
import type { Ask } from "../questions-at.ts";
import { askChoice, type Choice } from "./ask-choice.ts";
import { climateAt } from "./climate-at.ts";
import type { Element, Rain, StarterAnswers } from "./starter.ts";

/**
 * Asks the plain questions from which a project file is begun.
 *
 * @param ask - who is asked
 * @param folder - where the project file will stand
 * @param context - where the user stands
 * @returns the answers
 */
export async function askProject(ask: Ask, folder: string, context: CommandContext): Promise<StarterAnswers> {
  const element = await askChoice(ask, "What do you build?", ELEMENTS);
  const climate = await askPlace(ask, folder, context);
  const heatedDays = await askChoice(ask, "When is it heated?", HEATED_DAYS);
  const isHeated = heatedDays > 0;
  const humidity = isHeated ? await askChoice(ask, "How damp is its use?", HUMIDITY_CLASSES) : null;
  const rain =
    element === "wall" ? await askChoice(ask, "Does driving rain reach the insulation or its frame?", RAIN) : null;
  const isCooled = isHeated && (await askChoice(ask, "Is it cooled in summer?", COOLED));
  const room = isHeated
    ? [
        "heating: 20 °C",
        ...(heatedDays < DAYS_OF_WEEK ? [`heated days: ${heatedDays}`] : []),
        `humidity: class ${humidity}`,
        ...(isCooled ? ["cooling: 24 °C", "humidity when cooled: 55 %"] : []),
      ]
    : ["unheated: true"];
  return { element, climate, room, rain };
}

const DAYS_OF_WEEK = 7;

const ELEMENTS: readonly [Choice<Element>, ...Choice<Element>[]] = [
  { words: "wall", value: "wall" },
  { words: "roof", value: "roof" },
  { words: "floor", value: "floor" },
  { words: "partition between two rooms", value: "partition" },
];

const HEATED_DAYS: readonly [Choice<number>, ...Choice<number>[]] = [
  { words: "every day", value: DAYS_OF_WEEK },
  { words: "on working days", value: 5 },
  { words: "at weekends", value: 2 },
  { words: "never", value: 0 },
];

const HUMIDITY_CLASSES: readonly [Choice<number>, ...Choice<number>[]] = [
  { words: "not sure", value: 3 },
  { words: "store", value: 1 },
  { words: "office, studio or well-aired home", value: 2 },
  { words: "kitchen, gym or hall full of people", value: 4 },
  { words: "laundry, drying clay or washing", value: 5 },
];

const RAIN: readonly [Choice<Rain>, ...Choice<Rain>[]] = [
  { words: "no, a ventilated gap behind the cladding keeps it off", value: "no" },
  { words: "seldom, the wall is sheltered", value: "sheltered" },
  { words: "yes", value: "yes" },
];

const COOLED: readonly [Choice<boolean>, ...Choice<boolean>[]] = [
  { words: "no", value: false },
  { words: "yes", value: true },
];

/** Asks until a climate is found for the place. */
async function askPlace(ask: Ask, folder: string, context: CommandContext): Promise<string> {
  let lines = [line(), paragraph("Where does it stand? Write a town, for example Utrecht or London.")];
  for (;;) {
    const written = (await ask(lines, "Town: ")).trim();
    try {
      const { climate, told } = await climateAt(written, folder, context);
      await context.say([paragraph(told)]);
      return climate;
    } catch (error) {
      if (!(error instanceof CommandProblem)) throw error;
      lines = error.lines;
    }
  }
}
