import type { Facts, Said, Wordings } from "./wording.ts";

/** Problems of quantities: number, space, unit. */
export const QUANTITY_WORDINGS: Wordings = {
  "quantity-empty": (facts) => withExample(facts, "is empty"),
  "unit-missing": (facts) => withExample(facts, "is missing a unit"),
  "unit-unknown": (facts) =>
    withExample(facts, `has a unit that is not known here: ${facts.text("unit")}`, slipOfUnit(facts)),
  "unit-unfit": (facts) => {
    const kind = facts.text("unitKind");
    const says = `cannot be given in ${facts.text("unit")}`;
    return withExample(facts, kind === "" ? says : `${says}, which is the unit of ${kind}`, slipOfUnit(facts));
  },
  "space-missing": (facts) => withExample(facts, "needs a space between the number and its unit"),
  "quantity-unreadable": (facts) => withExample(facts, "is not a number with a unit"),
  "decimal-comma": (facts) =>
    withExample(
      facts,
      "has a comma in its number",
      "A decimal comma is written as a point here, and thousands are not parted",
    ),
  fraction: (facts) => withExample(facts, "is a fraction", "Work it out and write it as a decimal number"),
  arithmetic: (facts) => withExample(facts, "is a sum or a range", "Work it out, or choose one value, and write that"),
  "digits-of-another-script": (facts) =>
    withExample(
      facts,
      "has digits or letters that look right but are others",
      "They came from another keyboard or by copying; type them again",
    ),
  "not-finite": (facts) =>
    withExample(
      facts,
      "is no finite number",
      isOfVapour(facts) ? "Metal and glass are held as 1000000, or as an sd of 1500 m" : null,
    ),
  "point-without-digit": (facts) => withExample(facts, "needs a digit on both sides of its decimal point"),
  "number-wanted": (facts) => withExample(facts, "is not a number"),
  "number-in-quotes": (facts) =>
    withExample(facts, "is text and not a number", "The quotation marks make it text; leave them out"),
  "unit-not-wanted": (facts) => withExample(facts, "is a bare number and takes no unit"),
  "temperature-in-kelvin": (facts) =>
    withExample(facts, "is given in kelvin, which is for differences here", "Temperatures are in °C"),
  "difference-in-degrees": (facts) =>
    withExample(facts, "needs kelvin and not degrees: it counts a difference, not a temperature on a scale"),
  "impossible-value": (facts) => ({
    ...withExample(facts, `cannot be ${facts.received}: ${facts.text("reason")}`, slipOfValue(facts)),
    expected: `${isBare(facts) ? "a number" : facts.text("kind")} from ${facts.text("low")} to ${facts.text("high")}`,
  }),
};

function withExample(facts: Facts, says: string, likelySlip: string | null = null): Said {
  const { text, subject } = facts;
  const name = subject.startsWith("this") ? text("quantity") : subject;
  const expected = isBare(facts)
    ? `${text("kind")}, such as ${text("example")}`
    : `${text("kind")} such as ${text("example")}`;
  return {
    says: `${name} ${PLURAL.test(name) ? inPlural(says) : says}`,
    expected,
    likelySlip,
    write: text("write") || null,
  };
}

/** The vocabulary says of bare numbers which ones they may be. */
function isBare({ text }: Facts): boolean {
  return text("kind").startsWith("a number of") || text("kind").startsWith("a number from");
}

function isOfVapour({ text }: Facts): boolean {
  return /vapour|sd$/.test(text("quantity"));
}

/** What is behind a unit that is close to the right one. */
function slipOfUnit({ text }: Facts): string | null {
  const unit = text("unit");
  if (text("quantity") === "ventilation area") {
    return "Openings are counted for each metre of length in walls, and for each square metre in roofs and floors";
  }
  if (/^["”″]$|^''$/.test(unit)) return "1 in is 25.4 mm";
  if (/^['’′]$/.test(unit)) return "1 ft is 304.8 mm";
  if (unit === "F" && text("write") !== "") return "Degrees Fahrenheit are written °F, or worked out in °C";
  if (unit === "C") return "C without its degree sign is a unit of electric charge";
  if (/^W\/m(2)? ?K$/.test(unit)) return "Without brackets the K is read as part of another unit";
  return null;
}

function slipOfValue({ text, received }: Facts): string | null {
  const write = text("write");
  if (write === "") return null;
  const unitWritten = received.replace(/^[^a-zA-Z%°/]*/, "");
  const unitMeant = write.replace(/^[^a-zA-Z%°/]*/, "");
  if (unitWritten === unitMeant) return "A share was probably taken for its percentage, or the other way round";
  return `Probably ${unitMeant} is meant and not ${unitWritten}`;
}

/** Keys that are more than one thing. */
const PLURAL = /^(air changes|heated days|openings)$/;

function inPlural(says: string): string {
  return says
    .replace(/^is /, "are ")
    .replace(/^has /, "have ")
    .replace(/^needs /, "need ");
}
