import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of variants and their changes, of prices, and of what is counted for buying. */
export const VARIANT_WORDINGS: Wordings = {
  "variant-twice": ({ text }) => ({
    says: `a variant before this one is called ${text("name")} already`,
    expected: "a name of its own for each variant of a build-up",
  }),
  "variant-nothing-left": () => ({
    says: "the changes take every layer out",
    expected: "at least one layer that stays or is put in",
  }),
  "change-no-verb": () => ({
    says: "the change does not say what is done",
    expected: "exactly one of swap, set, add, remove and move, followed by a layer",
    likelySlip: "To give a layer another thickness, name it after `set`",
    write: "set: mineral wool slab, thickness: 200 mm",
  }),
  "change-two-verbs": ({ list }) => ({
    says: `the change does ${list("verbs").length} things at once, ${inSpeech(list("verbs"), "and")}`,
    expected: "exactly one of swap, set, add, remove and move",
    likelySlip: "Each change is an entry of its own, beginning with a hyphen",
  }),
  "change-key": ({ text, list }) => ({
    says: `${text("key")} does not go with \`${text("verb")}\``,
    expected:
      list("known").length === 0
        ? `\`${text("verb")}\` alone`
        : text("verb") === "set"
          ? "keys of a layer, such as thickness or material"
          : `${inSpeech(list("known"), "or")} beside \`${text("verb")}\``,
    likelySlip:
      text("verb") === "set" || text("verb") === "remove"
        ? null
        : `Keys of the layer that is put in stand inside its own braces, after \`${text("verb") === "add" ? "add" : "for"}\``,
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
    likelySlip: didYouMean(list("near")) ?? "A layer goes by its `name`, or by its material where that occurs once",
    write: onlyOne(list("near")),
  }),
  "change-layer-not-one": ({ text, list }) => ({
    says: `layers ${inSpeech(list("numbers"), "and")} both go by ${text("name")}`,
    expected: "a layer's own name, or a material that occurs once",
    likelySlip: "Give the layer that is meant a `name` of its own, and use that name here",
  }),
  "change-layer-gone": ({ text }) => ({
    says: `an earlier change of this variant took ${text("name")} out`,
    expected: "a layer that is still there",
    likelySlip: "To put another layer in its place, use `swap`",
  }),
  "change-moves-nothing": ({ text }) => ({
    says: `${text("name")} lies there already`,
    expected: "a place between two other layers",
  }),
  "openings-fill-all": ({ received, text }) => ({
    says: `openings of ${received} leave nothing of an area of ${text("area")}`,
    expected: "openings smaller than the area, which counts them in",
    likelySlip: "`area` is the whole of the build-up with its windows and doors, and `openings` is the part they take",
  }),
  "price-no-cover": ({ text }) => ({
    says: `a price per ${text("per")} needs the area that one ${text("per")} covers`,
    expected: "`covers`, such as covers: 50 m2",
    write: "covers: 50 m2",
  }),
  "price-missing": ({ text }) => ({
    says: `the price per ${text("per")} is missing`,
    expected: "a bare number, such as price: 4.50; an entry without one may only tell the size of a roll or sheet",
    write: "price: 4.50",
  }),
  "price-key-of-piece": ({ text }) => ({
    says: `${text("key")} does not go with a price per ${text("per")}`,
    expected: "it only with per: roll and per: sheet, which come in pieces",
  }),
  "price-lap-alone": () => ({
    says: "lap is given without the width of the roll",
    expected: "`width` too: laps are counted from both",
    write: "width: 1.5 m",
  }),
  "price-lap-too-wide": ({ received }) => ({
    says: `laps of ${received} leave nothing of the width of the roll`,
    expected: "a lap narrower than the roll",
  }),
  "price-twice": ({ text }) => ({
    says: `there is a price per ${text("per")} for ${text("name")} of this thickness already`,
    expected: "one price of a kind for each material and thickness",
    likelySlip: "State the `thickness` that each is for",
  }),
};

/** What a change lacks that is written with its verb alone; one that puts a layer somewhere lacks the place. */
const GOES_WITH: Readonly<Record<string, { lacks: string; expected: string }>> = {
  set: { lacks: "what is changed", expected: "at least one key of the layer, such as thickness: 200 mm" },
  swap: { lacks: "what comes in its place", expected: "`for`, with the layer that comes in its place" },
};
