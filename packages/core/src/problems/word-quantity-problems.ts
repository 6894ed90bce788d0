import type { Facts, Said, Wordings } from "./wording.ts";

/** Problems of quantities: number, space, unit. */
export const QUANTITY_WORDINGS = {
  "quantity-empty": (facts) => withExample(facts, "is empty"),
  "unit-missing": (facts) => withExample(facts, "is missing a unit"),
  "unit-unknown": (facts) => withExample(facts, `has an unknown unit: ${facts.text("unit")}`, slipOfUnit(facts)),
  "unit-unfit": (facts) => {
    const kind = facts.text("unitKind");
    const says = `cannot be given in ${facts.text("unit")}`;
    return withExample(facts, kind === "" ? says : `${says}, which is the unit of ${kind}`, slipOfUnit(facts));
  },
  "r-value-unit": (facts) =>
    withExample(
      facts,
      "is an R-value without its unit",
      "A small R may be in the unit of Europe and Australia or in that of North America, which is 5.7 times smaller",
    ),
  "transmission-needs-test": (facts) => ({
    says: `${facts.text("unit")} is a transmission rate: it tells the permeance only with the climate of its test`,
    expected:
      "`vapour transmission` in place of it, with the temperature of the test and the humidity on either side, as the data sheet gives them",
    write: `vapour transmission: { rate: ${facts.text("rate")}, temperature: … °C, humidity: [… %, … %] }`,
  }),
  "space-missing": (facts) => withExample(facts, "needs a space between the number and its unit"),
  "quantity-unreadable": (facts) => withExample(facts, "is not a number with a unit"),
  "decimal-comma": (facts) =>
    withExample(facts, "has a comma in its number", "Write a decimal point, and nothing between thousands"),
  fraction: (facts) => withExample(facts, "is a fraction", "Write it as a decimal number"),
  "section-for-width": (facts) =>
    withExample(
      facts,
      "must be one measure",
      "Only the width of the timber belongs here: a 2x4 is 38 mm by 89 mm when planed",
    ),
  arithmetic: (facts) => withExample(facts, "must be one number", "Work out the sum, or choose one value of the range"),
  "digits-of-another-script": (facts) =>
    withExample(
      facts,
      "has digits or letters from another script",
      "Type them again: they were copied, or come from another keyboard",
    ),
  "not-finite": (facts) =>
    withExample(
      facts,
      "must be a finite number",
      isOfVapour(facts) ? "For metal and glass write 1000000, or an sd of 1500 m" : null,
    ),
  "point-without-digit": (facts) => withExample(facts, "needs a digit on both sides of its decimal point"),
  "number-wanted": (facts) => withExample(facts, "is not a number"),
  "number-in-quotes": (facts) => withExample(facts, "is text, not a number", "Remove the quotation marks"),
  "unit-not-wanted": (facts) => withExample(facts, "takes no unit"),
  "temperature-in-kelvin": (facts) =>
    withExample(facts, "is given in kelvin", "Use °C for temperatures; kelvin is for differences"),
  "difference-in-degrees": (facts) => withExample(facts, "needs kelvin, not degrees: it is a difference"),
  "impossible-value": (facts) => ({
    ...withExample(facts, `cannot be ${facts.received}: ${facts.text("reason")}`, slipOfValue(facts)),
    expected: `${isBare(facts) ? "a number" : facts.text("kind")} from ${facts.text("low")} to ${facts.text("high")}`,
  }),
} satisfies Wordings;

function withExample(facts: Facts, says: string, likelySlip: string | null = null): Said {
  const { text, list, subject } = facts;
  const name = subject.startsWith("this") ? text("quantity") : subject;
  return {
    says: `${name} ${PLURAL.test(name) ? inPlural(says) : says}`,
    expected: `${text("kind")}, for example ${text("example")}`,
    likelySlip,
    write: text("write") || list("write"),
  };
}

/** Whether a quantity is a bare number; the vocabulary describes its kind by its range. */
function isBare({ text }: Facts): boolean {
  return text("kind").startsWith("a number of") || text("kind").startsWith("a number from");
}

function isOfVapour({ text }: Facts): boolean {
  return /vapour|sd$/.test(text("quantity"));
}

/** The likely slip behind a wrong unit. */
function slipOfUnit({ text }: Facts): string | null {
  const unit = text("unit");
  if (text("quantity") === "ventilation area") {
    return "Openings count per metre of length in walls, per square metre in roofs and floors";
  }
  if (/^["”″]$|^''$/.test(unit)) return "1 in is 25.4 mm";
  if (/^['’′]$/.test(unit)) return "1 ft is 304.8 mm";
  if (unit === "F" && text("write") !== "") return "Write °F for degrees Fahrenheit, or convert to °C";
  if (unit === "C") return "Write °C: C alone is the unit of electric charge";
  if (/^W\/m(2)? ?K$/.test(unit)) return "Put brackets around the units after the slash";
  return null;
}

function slipOfValue({ text, received }: Facts): string | null {
  const write = text("write");
  if (write === "") return null;
  const unitWritten = received.replace(/^[^a-zA-Z%°/]*/, "");
  const unitMeant = write.replace(/^[^a-zA-Z%°/]*/, "");
  if (unitWritten === unitMeant) return "A fraction was probably written for a percentage, or the reverse";
  return `Probably ${unitMeant} is meant, not ${unitWritten}`;
}

/** Keys that are plural nouns. */
const PLURAL = /^(air changes|heated days|openings)$/;

function inPlural(says: string): string {
  return says
    .replace(/^is /, "are ")
    .replace(/^has /, "have ")
    .replace(/^needs /, "need ");
}
