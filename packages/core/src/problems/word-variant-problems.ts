import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of variants and their changes, of prices, and of quantities. */
export const VARIANT_WORDINGS = {
  "variant-twice": ({ text }) => ({
    says: `an earlier variant is already called ${text("name")}`,
    expected: "a different name for each variant of a build-up",
  }),
  "variant-nothing-left": () => ({
    says: "the changes remove every layer",
    expected: "at least one layer that stays or is added",
  }),
  "change-no-verb": () => ({
    says: "the change does not say what to do",
    expected: "exactly one of swap, set, add, remove and move, followed by a layer",
    likelySlip: "To give a layer another thickness, name it after `set`",
    write: "set: mineral wool slab, thickness: 200 mm",
  }),
  "change-two-verbs": ({ list }) => ({
    says: `the change has ${list("verbs").length} verbs, ${inSpeech(list("verbs"), "and")}`,
    expected: "exactly one of swap, set, add, remove and move",
    likelySlip: "Begin each change with a hyphen",
  }),
  "change-key": ({ text, list }) => ({
    says: `${text("key")} does not go with \`${text("verb")}\``,
    expected:
      list("known").length === 0
        ? `\`${text("verb")}\` alone`
        : text("verb") === "set"
          ? "keys of a layer, for example thickness or material"
          : `${inSpeech(list("known"), "or")} beside \`${text("verb")}\``,
    likelySlip:
      text("verb") === "set" || text("verb") === "remove"
        ? null
        : `Write the keys of the new layer inside its braces, after \`${text("verb") === "add" ? "add" : "for"}\``,
  }),
  "change-alone": ({ text, list }) => ({
    says: `\`${text("verb")}\` does not say ${GOES_WITH[text("verb")]?.lacks ?? "where"}`,
    expected: GOES_WITH[text("verb")]?.expected ?? `one of ${inSpeech(list("known"), "and")}, with a layer that stays`,
  }),
  "change-two-places": ({ text }) => ({
    says: `the change has both before and after for one \`${text("verb")}\``,
    expected: "one of before and after",
  }),
  "change-layer-unknown": ({ text, list }) => ({
    says: `no layer of this build-up is called ${text("name")}`,
    expected: oneOf(list("known")),
    likelySlip: didYouMean(list("near")) ?? "Call a layer by its `name`, or by its material if that occurs once",
    write: onlyOne(list("near")),
  }),
  "change-layer-not-one": ({ text, list }) => ({
    says: `layers ${inSpeech(list("numbers"), "and")} are both called ${text("name")}`,
    expected: "a layer's own name, or a material that occurs once",
    likelySlip: "Give the layer you mean its own `name`, and use that name here",
  }),
  "change-layer-gone": ({ text }) => ({
    says: `an earlier change of this variant removed ${text("name")}`,
    expected: "a layer that is still there",
    likelySlip: "To replace a layer use `swap`",
  }),
  "resistance-of-thickness": ({ text }) => ({
    says: `${text("name")} is told by its resistance, which is that of the thickness it has`,
    expected: "conductivity in place of resistance, or another material with its own resistance",
  }),
  "change-moves-nothing": ({ text }) => ({
    says: `${text("name")} is already there`,
    expected: "a place between two other layers",
  }),
  "openings-fill-all": ({ received, text }) => ({
    says: `openings of ${received} leave nothing of an area of ${text("area")}`,
    expected: "openings smaller than the area, which includes them",
    likelySlip: "`area` is the whole build-up with its windows and doors, `openings` the part they take",
  }),
  "price-no-cover": ({ text }) => ({
    says: `a price per ${text("per")} needs the area that one ${text("per")} covers`,
    expected: "`covers`, for example covers: 50 m2",
    write: "covers: 50 m2",
  }),
  "price-missing": ({ text }) => ({
    says: `the price per ${text("per")} is missing`,
    expected:
      "a bare number, for example price: 4.50; without a price an entry may only give the size of a roll or sheet",
    write: "price: 4.50",
  }),
  "price-key-of-piece": ({ text }) => ({
    says: `${text("key")} does not go with a price per ${text("per")}`,
    expected: "this key only with per: roll or per: sheet",
  }),
  "price-lap-alone": () => ({
    says: "lap is given without the width of the roll",
    expected: "`width` as well",
    write: "width: 1.5 m",
  }),
  "price-lap-too-wide": ({ received }) => ({
    says: `laps of ${received} leave nothing of the width of the roll`,
    expected: "a lap narrower than the roll",
  }),
  "price-twice": ({ text }) => ({
    says: `${text("name")} of this thickness already has a price per ${text("per")}`,
    expected: "one price of each kind for a material and thickness",
    likelySlip: "State the `thickness` that each price is for",
  }),
} satisfies Wordings;

/** What is missing from a change that has only its verb. Verbs not listed here place a layer, and lack the place. */
const GOES_WITH: Readonly<Record<string, { lacks: string; expected: string }>> = {
  set: { lacks: "what is changed", expected: "at least one key of the layer, for example thickness: 200 mm" },
  swap: { lacks: "what replaces it", expected: "`for`, with the layer that replaces it" },
};
