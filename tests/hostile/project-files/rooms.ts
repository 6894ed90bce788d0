import { type BadFile, changed, piece, wallKey } from "./bad-file.ts";

/** The damp room, written otherwise. */
const damp = (title: string, room: string, code: string, says: string): BadFile =>
  piece(title, "{ heating: 18 °C, humidity: 60 % }", room, 5, code, says);

const twelve = (value: string, count: number): string => `[${Array(count).fill(value).join(", ")}]`;

/** The wall as a floor that faces something. */
const floor = (title: string, keys: string, line: number, code: string, says: string): BadFile =>
  piece(title, "    element: wall\n", `    element: floor\n${keys}`, line, code, says);

/** Rooms that cannot be, and build-ups that face what is not there. */
export const BAD_ROOMS: readonly BadFile[] = [
  damp("no temperature", "{ humidity: 60 % }", "room-no-temperature", "the room has no temperature"),
  damp(
    "two temperatures",
    "{ heating: 18 °C, temperature: 18 °C, humidity: 60 % }",
    "room-two-temperatures",
    "heating and temperature at once",
  ),
  damp(
    "no humidity",
    "{ heating: 18 °C }",
    "humidity-missing",
    "drying clay, showers and drying laundry belong to class 4 or 5",
  ),
  damp("nothing", "", "value-missing", "the room has no value"),
  damp("a word", "warm", "wrong-kind", "the room is just warm, without keys"),
  damp(
    "a class that is none",
    "{ heating: 18 °C, humidity: class 6 }",
    "humidity-unread",
    "humidity cannot be class 6",
  ),
  damp("a class without its word", "{ heating: 18 °C, humidity: 3 }", "humidity-class-bare", "Write `class 3`"),
  damp(
    "a class without its word, in quotation marks",
    "{ heating: 18 °C, humidity: '5' }",
    "humidity-class-bare",
    "a class or a percentage. Write `class 5`",
  ),
  damp("a class without its space", "{ heating: 18 °C, humidity: class3 }", "humidity-unread", "Write `class 3`"),
  damp("a humidity without unit", "{ heating: 18 °C, humidity: 60 }", "unit-missing", "Write `60 %`"),
  damp(
    "cooling in place of heating",
    "{ cooling: 24 °C, humidity: 60 % }",
    "room-no-temperature",
    "`cooling` is added to heating or temperature",
  ),
  damp("a humidity in words", "{ heating: 18 °C, humidity: damp }", "humidity-unread", "humidity cannot be damp"),
  damp("eleven humidities", `{ heating: 18 °C, humidity: ${twelve("60 %", 11)} }`, "twelve-values", "has 11 values"),
  damp(
    "thirteen temperatures",
    `{ temperature: ${twelve("18 °C", 13)}, humidity: 60 % }`,
    "twelve-values",
    "has 13 values",
  ),
  damp(
    "one humidity of twelve without unit",
    `{ heating: 18 °C, humidity: [60, ${twelve("60 %", 11).slice(1)} }`,
    "unit-missing",
    "humidity, value 1: relative humidity is missing a unit",
  ),
  damp(
    "a balance without volume",
    "{ heating: 18 °C, humidity: { production: 6 kg/day, air changes: 0.6 /h } }",
    "key-missing",
    "volume is missing",
  ),
  damp(
    "air changes in another form",
    "{ heating: 18 °C, humidity: { production: 6 kg/day, volume: 90 m3, air changes: 0.6 ach } }",
    "unit-unknown",
    "Write `0.6 /h`",
  ),
  damp(
    "no air changes at all",
    "{ heating: 18 °C, humidity: { production: 6 kg/day, volume: 90 m3, air changes: 0 /h } }",
    "impossible-value",
    "rooms change their air between 0.01 and 100 times an hour",
  ),
  damp(
    "an unheated room with a humidity",
    "{ unheated: true, humidity: 60 % }",
    "humidity-of-unheated",
    "has outdoor air",
  ),
  damp("an unheated room that is not", "{ unheated: false }", "not-one-of", "unheated cannot be false"),
  damp(
    "a humidity when cooled without cooling",
    "{ heating: 20 °C, humidity: class 3, humidity when cooled: 55 % }",
    "only-with-cooling",
    "`cooling` beside it",
  ),
  damp(
    "heated days without heating",
    "{ temperature: 18 °C, heated days: 3, humidity: 60 % }",
    "only-with-heating",
    "`heated days` needs `heating`",
  ),
  damp(
    "eight days a week",
    "{ heating: 18 °C, heated days: 8, humidity: 60 % }",
    "impossible-value",
    "a week has seven days",
  ),
  damp(
    "a floor temperature without days off",
    "{ heating: 18 °C, otherwise: 8 °C, humidity: 60 % }",
    "only-with-heated-days",
    "every day is heated",
  ),
  damp(
    "cooling below the heating",
    "{ heating: 18 °C, cooling: 16 °C, humidity: 60 % }",
    "cooling-below-heating",
    "below the heating set point",
  ),
  damp(
    "damper than air can be",
    "{ heating: 10 °C, humidity: class 5 }",
    "room-impossible",
    "in 9 months of the year this room would be wetter than air can be",
  ),
  damp(
    "heated to so little that its class cannot be",
    "{ heating: 5 °C, humidity: class 3 }",
    "room-impossible",
    "Expected a warmer room, or its true relative humidity. In a room this cool",
  ),
  damp(
    "a moisture balance past saturation",
    "{ heating: 18 °C, humidity: { production: 60 kg/day, volume: 90 m3, air changes: 0.1 /h } }",
    "room-impossible",
    "in 12 months of the year this room would be wetter than air can be",
  ),
  piece("a room called ground", "  damp room:", "  ground:", 5, "room-name-taken", "a room cannot be called ground"),
  piece(
    "a room called indoor a second time",
    "  damp room:",
    "  indoor:",
    5,
    "room-name-taken",
    "already the room at the top of the file",
  ),
  piece(
    "no room at all",
    "indoor: { heating: 20 °C, humidity: class 3 }\n",
    "",
    6,
    "indoor-missing",
    "which the file does not describe",
  ),
  wallKey("a room that is none", "room: kiln", "room-unknown", "no room is called kiln"),
  wallKey("a room misspelt", "room: dampp room", "room-unknown", "Write `damp room`"),
  wallKey("facing a garden", "faces: garden", "faces-unknown", "faces cannot be garden"),
  wallKey("facing its own room", "faces: indoor", "faces-own-room", "on both sides"),
  wallKey("a pitch of a wall", "pitch: 5 °", "only-for-roofs", "pitch is for roofs only"),
  wallKey(
    "ground that is not faced",
    "ground: { area: 80 m2, perimeter: 36 m }",
    "only-when-facing",
    "does not face ground",
  ),
  floor("ground without its size", "    faces: ground\n", 9, "faces-needs", "needs `ground` for its size"),
  floor("a void without its size", "    faces: void\n", 9, "faces-needs", "needs `void`"),
  floor(
    "a void without perimeter",
    "    faces: void\n    void: { area: 80 m2 }\n",
    10,
    "void-needs",
    "perimeter is missing",
  ),
  floor(
    "half the climate of a void",
    "    faces: void\n    void: { temperature: 8 °C }\n",
    10,
    "void-half-climate",
    "only one of the void's temperature and humidity is given",
  ),
  floor(
    "edge insulation both ways",
    "    faces: ground\n    ground: { area: 80 m2, perimeter: 36 m, edge insulation: { resistance: 1.5 m2 K/W, thickness: 50 mm, width: 1 m, depth: 1 m } }\n",
    10,
    "edge-one-of",
    "either a width or a depth",
  ),
  floor(
    "edge insulation past the middle of the floor",
    "    faces: ground\n    ground: { area: 80 m2, perimeter: 36 m, edge insulation: { resistance: 1.5 m2 K/W, thickness: 50 mm, width: 3 m } }\n",
    10,
    "edge-too-far",
    "at most 2.22 m",
  ),
  floor(
    "soil that is none",
    "    faces: ground\n    ground: { area: 80 m2, perimeter: 36 m, soil: loam }\n",
    10,
    "not-one-of",
    "soil cannot be loam",
  ),
  {
    title: "a space next door beside a room with air of its own",
    text: changed(
      "    framings:",
      "    faces: damp room\n    space: { area: 9 m2, external: [ { area: 9 m2, transmittance: 1 W/(m2 K) } ], air changes: 1 /h, volume: 20 m3 }\n    framings:",
    ),
    problems: [{ line: 10, code: "space-of-own-air", says: "has a temperature of its own" }],
  },
  {
    title: "a wall on the ground",
    text: changed("    framings:", "    faces: ground\n    ground: { area: 80 m2, perimeter: 36 m }\n    framings:"),
    problems: [{ line: 8, code: "faces-only-floor", says: "a wall cannot face ground" }],
  },
];
