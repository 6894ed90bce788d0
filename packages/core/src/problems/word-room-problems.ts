import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of rooms and of what build-ups face. */
export const ROOM_WORDINGS = {
  "room-no-temperature": ({ text }) => ({
    says:
      text("isCooled") === "yes" ? "the room has a cooling limit but no temperature" : "the room has no temperature",
    expected: "exactly one of heating (a set point), temperature (held, one value or twelve) and unheated",
    likelySlip:
      text("isCooled") === "yes" ? "`cooling` is added to heating or temperature and does not replace it" : null,
    write: ["heating: 20 °C", "temperature: 20 °C", "unheated: true"],
  }),
  "room-two-temperatures": ({ list }) => ({
    says: `the room has ${inSpeech(list("keys"), "and")} at once`,
    expected: "exactly one of heating, temperature and unheated",
  }),
  "humidity-missing": () => ({
    says: "humidity is missing",
    expected:
      "class 1 to class 5, a percentage, twelve percentages, a rule by outdoor temperature, or a moisture balance in braces",
    likelySlip: "Class 3 is for rooms of unknown use; drying clay, showers and drying laundry belong to class 4 or 5",
    write: "humidity: class 3",
  }),
  "humidity-unread": ({ received }) => ({
    says: `humidity cannot be ${received}`,
    expected:
      "class 1 to class 5, a percentage, for example 55 %, `normal by outdoor temperature` or `high by outdoor temperature`",
    write: /^class\W*[1-5]$/i.test(received) ? `class ${received.slice(-1)}` : null,
  }),
  "humidity-class-bare": ({ received, text }) => ({
    says: `humidity cannot be just ${received}`,
    expected: "class 1 to class 5, or a percentage, for example 55 %",
    likelySlip: "A bare number could be a class or a percentage",
    write: `class ${text("class")}`,
  }),
  "humidity-of-unheated": () => ({
    says: "an unheated room has outdoor air and takes no humidity of its own",
    expected: "no humidity, or `temperature` instead of `unheated`",
  }),
  "only-with-heating": ({ text }) => ({
    says: `\`${text("key")}\` needs \`heating\``,
    expected: "a room with a heating set point",
  }),
  "only-with-cooling": () => ({
    says: "`humidity when cooled` goes with cooling only",
    expected: "`cooling` beside it, the temperature that the room never exceeds",
    write: "cooling: 24 °C",
  }),
  "only-with-heated-days": () => ({
    says: "otherwise is the temperature of unheated days, but every day is heated",
    expected: "heated days beside it, a number from 1 to 7",
    write: "heated days: 3",
  }),
  "cooling-below-heating": ({ received }) => ({
    says: `cooling to ${received} is below the heating set point`,
    expected: "a limit at or above the heating set point",
  }),
  "room-name-taken": ({ text }) => ({
    says: `a room cannot be called ${text("name")}`,
    expected: "another name",
    likelySlip:
      text("name") === "indoor" ? "`indoor` is already the room at the top of the file" : "`faces` uses that word",
  }),
  "room-unknown": ({ text, list }) => ({
    says: `no room is called ${text("name")}`,
    expected:
      list("known").length === 0
        ? "a room described under `rooms`"
        : `${oneOf(list("known"))}, or a room described under \`rooms\``,
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "indoor-missing": () => ({
    says: "the build-up begins in the room indoor, which the file does not describe",
    expected: "`indoor` at the top of the file, or `room` with the name of a room",
    write: "indoor: { heating: 20 °C, humidity: class 3 }",
  }),
  "faces-unknown": ({ text, list }) => ({
    says: `faces cannot be ${text("name")}`,
    expected: oneOf(list("known")),
    likelySlip: didYouMean(list("near")) ?? "Describe another room under `rooms`",
    write: onlyOne(list("near")),
  }),
  "faces-own-room": ({ text }) => ({
    says: `the build-up has the room ${text("name")} on both sides`,
    expected: "two different rooms, or outdoors",
  }),
  "faces-needs": ({ text }) => ({
    says: `a floor that faces ${text("faces")} needs \`${text("key")}\` for its size`,
    expected: `\`${text("key")}\` with area and perimeter`,
    write: `${text("key")}: { area: 80 m2, perimeter: 36 m }`,
  }),
  "faces-only-floor": ({ text }) => ({
    says: `a ${text("element")} cannot face ${text("faces")}`,
    expected: `element: floor, or another value of \`faces\``,
  }),
  "only-when-facing": ({ text }) => ({
    says: `\`${text("key")}\` is given, but the build-up does not face ${text("faces")}`,
    expected: `\`faces\` with ${text("faces")}, or no \`${text("key")}\``,
  }),
  "space-of-own-air": ({ text }) => ({
    says: `\`space\` treats the ${text("name")} as a resistance to outdoors, but that room has a temperature of its own`,
    expected: "`space` beside a room that is `unheated: true`, or no `space`",
  }),
  "only-for-roofs": ({ text }) => ({
    says: `${text("key")} is for roofs only, and this is a ${text("element")}`,
    expected: "element: flat roof or pitched roof, or no such key",
  }),
  "build-up-unknown": ({ text, list }) => ({
    says: `no build-up is called ${text("name")}`,
    expected: oneOf(list("known")),
    likelySlip: didYouMean(list("near")),
    write: onlyOne(list("near")),
  }),
  "junction-no-kind": () => ({
    says: "the junction does not say what meets",
    expected: "exactly one of outer corner, floor edge, roof edge and window side, followed by the build-ups",
    write: "outer corner: [Studio wall, Workshop wall]",
  }),
  "junction-two-kinds": ({ list }) => ({
    says: `the junction has two kinds, ${inSpeech(list("kinds"), "and")}`,
    expected: "exactly one of outer corner, floor edge, roof edge and window side",
    likelySlip: "Begin each junction with a hyphen",
  }),
  "junction-key": ({ text, list }) => ({
    says: `\`${text("key")}\` does not go with \`${text("kind")}\``,
    expected: inSpeech(list("known"), "and"),
  }),
  "junction-no-frame": () => ({
    says: "the window side lacks its frame",
    expected: "the width and depth of the frame in braces",
    write: "frame: { width: 70 mm, depth: 68 mm }",
  }),
  "junction-parts": ({ subject, list }) => ({
    says: `${subject} names ${inSpeech(list("found"), "and")}`,
    expected: inSpeech(list("wanted"), "and"),
  }),
  "edge-one-of": () => ({
    says: "edge insulation needs either a width or a depth",
    expected: "width for horizontal insulation, depth for vertical insulation",
    write: ["width: 1 m", "depth: 0.6 m"],
  }),
  "edge-too-far": ({ text }) => ({
    says: `the ${text("key")} of the edge insulation reaches the middle of the floor`,
    expected: `a ${text("key")} of at most ${text("furthest")} for this floor, or the insulation as a layer of the floor`,
  }),
  "void-half-climate": () => ({
    says: "only one of the void's temperature and humidity is given",
    expected: "both (one value or twelve), or neither",
  }),
  "void-needs": ({ text }) => ({
    says: `${text("key")} is missing`,
    expected: "area and perimeter of the floor, or the void's own temperature and humidity",
    write: text("key") === "area" ? "area: 80 m2" : "perimeter: 36 m",
  }),
  "room-impossible": ({ text, list }) => ({
    says:
      `in ${monthsInWords(list("months"))} this room would be wetter than air can be: ${text("vapourPressure")} Pa of vapour ` +
      `in ${text("worst")}, where saturation is ${text("saturation")} Pa`,
    expected:
      text("isCoolerThanOutdoors") === "no"
        ? "a warmer room, or its true relative humidity"
        : "the true relative humidity of the room, and `cooling` if it is cooled",
    likelySlip:
      text("isCoolerThanOutdoors") === "no"
        ? "In a room this cool so much vapour settles on walls and windows. Heat the room more, or state its true relative humidity"
        : "Humidity classes are for heated rooms. A room cooler than outdoors needs `cooling` and a humidity in per cent",
    write: "humidity: 60 %",
  }),
} satisfies Wordings;

function monthsInWords(months: readonly string[]): string {
  return months.length > MOST_MONTHS_NAMED ? `${months.length} months of the year` : inSpeech(months, "and");
}

const MOST_MONTHS_NAMED = 3;
