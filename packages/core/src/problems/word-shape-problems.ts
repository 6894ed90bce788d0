import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of keys and kinds of values. */
export const SHAPE_WORDINGS = {
  "key-missing": ({ text }) => ({
    says: `${text("key") || "this"} is missing`,
    expected: `${text("expected")}${text("key") === "climate" ? "; for the U-value alone any place will do" : ""}`,
    write: text("example") === "" ? null : `${text("key")}: …`,
  }),
  "value-missing": ({ subject, text }) => ({
    says: `${subject} has no value`,
    expected: text("expected"),
    likelySlip: "Nothing follows the colon, or the lines that belong to it are not indented",
    write: text("example") === "" ? null : `${text("key")}: …`,
  }),
  "key-unknown": ({ text, list }) => ({
    says: `\`${text("key")}\` is not a key here`,
    expected: expectedKey(list("near"), list("known")),
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "key-elsewhere": ({ text, list }) => ({
    says: `\`${text("key")}\` is not a key here`,
    expected: `\`${text("meant")}\` indented under ${inSpeech(
      list("above").map((key) => `\`${key}\``),
      "or",
    )}`,
    likelySlip: list("above").includes("material")
      ? "A material of the table has its own values; those of a data sheet stand in braces: `material: { name: …, conductivity: … W/(m K), vapour resistance factor: … }`"
      : null,
  }),
  "key-joined": ({ text }) => ({
    says: `\`${text("key")}\` is read as one key`,
    expected: "a key, a colon, a space and a value",
    likelySlip: `The ${text("lacks") === "colon" ? "colon after the key" : "space after the colon"} is missing`,
    write: text("write"),
  }),
  "key-not-indented": ({ text }) => ({
    says: `\`${text("key")}\` belongs under \`${text("under")}\`, but is not indented`,
    expected: `two spaces before each line that belongs to \`${text("under")}\``,
    write: text("value") === "" ? null : `  ${text("key")}: ${text("value")}`,
  }),
  "comma-in-braces": ({ text, list }) => ({
    says: `${text("first")} is split at its comma`,
    expected: "a number with a decimal point",
    likelySlip: "In braces a comma begins the next key",
    write: list("write"),
  }),
  "wrong-kind": ({ subject, received, text }) => ({
    says: subject.startsWith("the ")
      ? `${subject} is just ${received}, without keys`
      : `${subject} cannot be ${received}`,
    expected: text("expected"),
  }),
  "not-one-of": ({ subject, received, list, text }) => ({
    says: `${subject} cannot be ${received}`,
    expected: oneOf(list("options")),
    likelySlip: text("hint") || didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "list-empty": ({ subject }) => ({
    says: `${subject} is an empty list`,
    expected: "at least one entry, each after a hyphen, or no such key",
  }),
  "list-too-long": ({ subject, received, text }) => ({
    says: `${subject} is ${received}`,
    expected: `at most ${text("limit")}`,
  }),
  "text-empty": ({ subject }) => ({ says: `${subject} is empty`, expected: "a few words" }),
  "text-too-long": ({ subject, text }) => ({
    says: `${subject} is too long`,
    expected: `at most ${text("limit")} characters`,
  }),
  "twelve-values": ({ subject, text }) => ({
    says: `${subject} has ${text("count")} values instead of twelve`,
    expected: "one value for each month, January to December",
    likelySlip:
      Number(text("count")) > 12 ? "A value is repeated, or a decimal comma splits one" : "A month was left out",
  }),
  "month-unknown": ({ subject, received }) => ({
    says: `${subject} cannot be ${received}`,
    expected: "a month, for example October",
  }),
  "layer-number": ({ received, text }) => ({
    says: `no layer has the number ${received}`,
    expected: Number(text("limit")) > 1 ? `a whole number up to ${text("limit")}` : "a whole number of 1 or more",
    likelySlip: "Layers are counted from 1, from the room outwards",
  }),
} satisfies Wordings;

/** All known keys are listed only if none of them is near. */
function expectedKey(near: readonly string[], known: readonly string[]): string {
  if (near.length > 0) return "a key that belongs here";
  return known.length === 0 ? "no key" : oneOf(known);
}
