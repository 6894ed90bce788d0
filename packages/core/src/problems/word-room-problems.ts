import { didYouMean, inSpeech, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of rooms and of what build-ups face. */
export const ROOM_WORDINGS: Wordings = {
  "room-no-temperature": ({ text }) => ({
    says:
      text("isCooled") === "yes"
        ? "the room says how far it is cooled, but not how warm it is otherwise"
        : "the room does not say how warm it is",
    expected: "exactly one of heating (a set point), temperature (held, one value or twelve) and unheated",
    likelySlip:
      text("isCooled") === "yes" ? "`cooling` stands beside heating or temperature, and not in its place" : null,
    write: "heating: 20 °C or temperature: 20 °C or unheated: true",
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
      "class 1 to class 5, a percentage such as 55 %, `normal by outdoor temperature` or `high by outdoor temperature`",
    write: /^class\W*[1-5]$/i.test(received) ? `class ${received.slice(-1)}` : null,
  }),
  "humidity-class-bare": ({ received, text }) => ({
    says: `humidity cannot be just ${received}`,
    expected: "class 1 to class 5, or a percentage such as 55 %",
    likelySlip: "A number alone does not tell whether it is a class or a percentage",
    write: `class ${text("class")}`,
  }),
  "humidity-of-unheated": () => ({
    says: "an unheated room has the air of outdoors, and takes no humidity of its own",
    expected: "no humidity, or `temperature` in place of `unheated`",
  }),
  "only-with-heating": ({ text }) => ({
    says: `\`${text("key")}\` goes with heating only`,
    expected: "a room with a heating set point",
  }),
  "only-with-cooling": () => ({
    says: "`humidity when cooled` goes with cooling only",
    expected: "`cooling` beside it, the temperature that the room never exceeds",
    write: "cooling: 24 °C",
  }),
  "only-with-heated-days": () => ({
    says: "otherwise tells the temperature of days without heating, but every day is heated",
    expected: "heated days beside it, a number from 1 to 7",
    write: "heated days: 3",
  }),
  "cooling-below-heating": ({ received }) => ({
    says: `cooling to ${received} would work against the heating`,
    expected: "a cap at or above the heating set point",
  }),
  "room-name-taken": ({ text }) => ({
    says: `a room cannot be called ${text("name")}`,
    expected: "another name",
    likelySlip:
      text("name") === "indoor"
        ? "`indoor` is described at the top of the file already"
        : "That word says what a build-up faces",
  }),
  "room-unknown": ({ text, list }) => ({
    says: `there is no room called ${text("name")}`,
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
    likelySlip: didYouMean(list("near")) ?? "Another room has to be described under `rooms`",
    write: onlyOne(list("near")),
  }),
  "faces-own-room": ({ text }) => ({
    says: `the build-up has the room ${text("name")} on both sides`,
    expected: "two different rooms, or outdoors",
  }),
  "faces-needs": ({ text }) => ({
    says: `a floor that faces ${text("faces")} needs \`${text("key")}\`, which tells its size`,
    expected: `\`${text("key")}\` with area and perimeter`,
    write: `${text("key")}: { area: 80 m2, perimeter: 36 m }`,
  }),
  "faces-only-floor": ({ text }) => ({
    says: `a ${text("element")} cannot face ${text("faces")}`,
    expected: `element: floor, or something else under \`faces\``,
  }),
  "only-when-facing": ({ text }) => ({
    says: `\`${text("key")}\` is given, but the build-up does not face ${text("faces")}`,
    expected: `\`faces\` with ${text("faces")}, or no \`${text("key")}\``,
  }),
  "space-of-own-air": ({ text }) => ({
    says: `\`space\` takes the ${text("name")} as a resistance to the air outdoors, but that room has a temperature of its own`,
    expected: "`space` beside a room that is `unheated: true`, or no `space`",
  }),
  "only-for-roofs": ({ text }) => ({
    says: `${text("key")} is for roofs only, and this is a ${text("element")}`,
    expected: "element: flat roof or pitched roof, or the key left out",
  }),
  "build-up-unknown": ({ text, list }) => ({
    says: `there is no build-up called ${text("name")}`,
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
    says: `the junction is two things at once, ${inSpeech(list("kinds"), "and")}`,
    expected: "exactly one of outer corner, floor edge, roof edge and window side",
    likelySlip: "Each junction is an entry of its own, beginning with a hyphen",
  }),
  "junction-key": ({ text, list }) => ({
    says: `\`${text("key")}\` does not go with \`${text("kind")}\``,
    expected: inSpeech(list("known"), "and"),
  }),
  "junction-no-frame": () => ({
    says: "the window side lacks its frame",
    expected: "the width and depth of the frame, in braces",
    write: "frame: { width: 70 mm, depth: 68 mm }",
  }),
  "junction-parts": ({ subject, list }) => ({
    says: `${subject} names ${inSpeech(list("found"), "and")}`,
    expected: inSpeech(list("wanted"), "and"),
  }),
  "edge-one-of": () => ({
    says: "edge insulation needs either a width or a depth",
    expected: "width for insulation that lies level, depth for insulation that stands upright",
    write: "width: 1 m or depth: 0.6 m",
  }),
  "edge-too-far": ({ text }) => ({
    says: `the edge insulation's ${text("key")} reaches to the middle of the floor or past it`,
    expected: `a ${text("key")} of at most ${text("furthest")} for this floor, or the insulation as a layer of the floor`,
  }),
  "void-half-climate": () => ({
    says: "only one of the void's temperature and humidity is given",
    expected: "both, one value each or twelve, or neither",
  }),
  "void-needs": ({ text }) => ({
    says: `${text("key")} is missing`,
    expected: "area and perimeter of the floor, or the void's own temperature and humidity",
    write: text("key") === "area" ? "area: 80 m2" : "perimeter: 36 m",
  }),
  "room-impossible": ({ text, list }) => ({
    says:
      `the room as described cannot exist in ${monthsInWords(list("months"))}: in ${text("worst")} its air would hold ` +
      `${text("vapourPressure")} Pa of vapour, but at its temperature air holds at most ${text("saturation")} Pa`,
    expected:
      text("isCoolerThanOutdoors") === "no"
        ? "a warmer room, or the relative humidity that it really has"
        : "the relative humidity that the room really has, and `cooling` where it is cooled",
    likelySlip:
      text("isCoolerThanOutdoors") === "no"
        ? "That much damp does not stay in the air of a room this cool: it settles on walls and windows. Heat the room more, or state the relative humidity that is really kept"
        : "Humidity classes are for heated rooms: one that is cooler than outdoors needs `cooling` and a humidity in per cent",
    write: "humidity: 60 %",
  }),
};

function monthsInWords(months: readonly string[]): string {
  return months.length > MOST_MONTHS_NAMED ? `${months.length} months of the year` : inSpeech(months, "and");
}

const MOST_MONTHS_NAMED = 3;
