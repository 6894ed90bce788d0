import type { Entry } from "./entry.ts";

/** Words of the building: what it is made of, and where things lie. */
export const BUILDING_WORDS: readonly Entry[] = [
  {
    word: "build-up",
    also: ["buildup", "build up", "construction"],
    unit: null,
    says: ["A wall, roof, floor or partition as its layers, always written from the room outwards."],
    source: null,
    see: ["layer", "section"],
  },
  {
    word: "layer",
    also: ["layers", "sheet"],
    unit: null,
    says: [
      "One material with a thickness, an air layer, or a sheet that takes no thickness. Timber that runs through a layer is its framing.",
    ],
    source: null,
    see: ["build-up", "framing"],
  },
  {
    word: "framing",
    also: ["frame", "share", "fraction", "bridging", "other timber"],
    unit: "% of the area",
    says: [
      "Timber that runs through a layer and bridges it. Its share is width over spacing, and on top of that the timber nobody counts: plates, rails, noggins and corners, 7.5 % of a wall. Studs of 45 mm at 600 mm so take 15 %.",
      "Forgetting it makes a wall look much better than it is: 0.22 instead of 0.34 W/(m²·K) for 90 mm of foil-faced board between such studs.",
    ],
    source: "common practice",
    see: ["stud", "noggin", "U-value", "section"],
  },
  {
    word: "variant",
    also: ["variants", "changes", "compare", "swap"],
    unit: null,
    says: [
      "The same build-up with a few changes, set beside it by `warmside compare`. Each change has one verb and names a layer by its name, or by its material where that occurs once: `set` gives a layer other keys, `swap … for` puts another layer in its place, `add … before` or `after` puts one in, `remove` takes one out, `move … before` or `after` puts it elsewhere.",
      "A name always means a layer of the build-up as drawn, whatever earlier changes did to it; only where it has none of that name does it mean a layer that an earlier change put in.",
    ],
    source: null,
    see: ["build-up", "layer", "prices"],
  },
  {
    word: "prices",
    also: ["price", "cost", "costs", "waste"],
    unit: "money of your own",
    says: [
      "Prices are yours: none come with warmside. They stand in the project file, as in `prices: [ { material: plywood, thickness: 12 mm, per: m2, price: 14, waste: 10 % } ]`, or in a table that it names. Units are m2, m3, m, roll and sheet; a roll or sheet says what it `covers`, and its `width` where laps are to be counted.",
      "A price without a thickness is used for every thickness; `hour rate` prices the `hours` of each layer, and `heat price` tells after how many years a variant pays.",
    ],
    source: null,
    see: ["variant"],
  },
  {
    word: "stud",
    also: ["studs", "joist", "rafter", "batten"],
    unit: null,
    says: [
      "An upright of a timber wall. In a floor or flat roof the same thing is a joist, in a pitched roof a rafter; a batten is a thin strip that holds boards off what is behind.",
    ],
    source: "common practice",
    see: ["framing", "noggin"],
  },
  {
    word: "noggin",
    also: ["noggins", "nogging", "dwang"],
    unit: null,
    says: [
      "A short piece of timber fixed between studs or joists to hold them in line or to carry the edge of a board. It counts among the other timber of a framing.",
    ],
    source: "common practice",
    see: ["framing"],
  },
  {
    word: "section",
    also: ["sections", "between framing", "through studs"],
    unit: null,
    says: [
      "A straight way through a build-up: between the framing, through the studs, through the battens. Each is worked out by itself, and the worst decides.",
    ],
    source: null,
    see: ["framing", "verdict"],
  },
  {
    word: "node",
    also: ["nodes", "plane", "interface"],
    unit: null,
    says: [
      "A place where temperature and vapour pressure are worked out: the faces between layers, and cuts inside thick ones. Node 0 is the room surface. A plane is a node where water gathers.",
    ],
    source: "ISO 13788:2012 clause 6",
    see: ["section", "peak"],
  },
  {
    word: "vapour layer",
    also: ["vapour control layer", "vcl", "vapour barrier", "vapour check"],
    unit: "its sd, in m",
    says: [
      "The layer that holds vapour back on the warm side of the insulation: a sheet of polythene, a foil face, a tight board. warmside finds it by figures, not by name: an sd of 0.5 m or more, and at least a tenth of the whole.",
      "It keeps its worth only when laps, edges, sockets and pipes are sealed. Not every build-up needs one.",
    ],
    source: "common practice",
    see: ["warm side", "tight outer skin", "breather membrane", "sd"],
  },
  {
    word: "breather membrane",
    also: ["membrane", "underlay", "breather"],
    unit: "its sd, in m",
    says: [
      "A sheet that keeps rain and wind out and lets vapour through, with an sd of about 0.02 to 0.2 m. It belongs on the cold side, under the cladding or the tiles. It is no vapour layer.",
    ],
    source: "common practice",
    see: ["vapour layer", "sd"],
  },
  {
    word: "tight outer skin",
    also: ["outer skin", "cold side sheet"],
    unit: "its sd, in m",
    says: [
      "A layer on the cold side that is tighter than what is on the warm side: metal sheet, felt, polythene. Vapour that gets in cannot leave through it.",
    ],
    source: "common practice",
    see: ["vapour layer", "warm side"],
  },
  {
    word: "warm side",
    also: ["cold side"],
    unit: null,
    says: [
      "The side that vapour is driven from over the year. For a heated room that is the room; for a cooled room in a hot and damp place it is outdoors; between two rooms it is the damper one.",
    ],
    source: null,
    see: ["vapour layer", "vapour pressure"],
  },
  {
    word: "cold roof",
    also: ["cold flat roof", "cold deck"],
    unit: null,
    says: [
      "A roof with its insulation between the joists, under the deck. It needs at least 50 mm of ventilated space above the insulation, open at both ends, or it gathers water under the deck however well it calculates.",
    ],
    source: "common practice",
    see: ["warm roof", "air layer"],
  },
  {
    word: "warm roof",
    also: ["warm flat roof", "warm deck"],
    unit: null,
    says: [
      "A roof with its insulation on top of the deck, and a vapour layer on the deck under it. All timber is kept warm; nothing has to be ventilated.",
    ],
    source: "common practice",
    see: ["cold roof", "vapour layer"],
  },
  {
    word: "air layer",
    also: ["air gap", "air space", "cavity", "ventilation", "slight", "well", "well ventilated"],
    unit: "mm",
    says: [
      "A gap in a build-up. Still air insulates a little, and more with foil on one face. With openings over 500 mm² for each metre it is slightly ventilated, from 1500 mm² on well ventilated: then it and all outside it no longer count for the U-value, and vapour leaves there.",
      "The project file has to say which: ventilation: none, slight or well.",
    ],
    source: "ISO 6946:2017 clause 6.9",
    see: ["emissivity", "cold roof"],
  },
  {
    word: "room",
    also: ["rooms", "indoor", "heated", "unheated"],
    unit: null,
    says: [
      "The air a build-up begins at. It is heated to a set point, held at a temperature, or unheated, and has a humidity. A build-up that names none belongs to the room called indoor.",
      "A second room stands under `rooms`, as in `rooms: { damp room: { heating: 18 °C, humidity: class 4 } }` or `{ store: { unheated: true } }`. A build-up begins in it with `room: damp room`, and may lie against it with `faces: damp room`.",
    ],
    source: "ISO 13788:2012 Annex A",
    see: ["humidity class", "faces", "cooling", "project"],
  },
  {
    word: "project",
    also: ["project file", "file", "yaml"],
    unit: null,
    says: [
      'One text file: the place, the rooms, and the build-ups to assess. "warmside new" writes one to begin with, "warmside check" lists what is wrong in it, "warmside schema" tells an editor its keys.',
    ],
    source: null,
    see: ["build-up", "room"],
  },
  {
    word: "gaps",
    also: ["gap", "hole", "tear", "laps"],
    unit: "% of the area",
    says: [
      "What is missing of a sheet: holes, tears, open laps. A thousandth of the area turns a sheet of 50 m into one of 8 m, if vapour from all around reaches the holes; so it is an upper bound.",
    ],
    source: "conductances in parallel, with the sd of an air layer of ISO 13788:2012",
    see: ["vapour layer", "air leak"],
  },
  {
    word: "air leak",
    also: ["leak", "leakage", "draught", "air leakage"],
    unit: "g/m² in a month",
    says: [
      "Room air that flows through a gap carries far more water than diffuses through layers: a gap of one square centimetre on each square metre can bring over a kilogram in a winter month. So seal before you reckon.",
    ],
    source: "flow through an opening at 2 Pa; common practice",
    see: ["gaps", "vapour layer"],
  },
  {
    word: "partition",
    also: ["partitions", "internal wall"],
    unit: null,
    says: [
      "A wall between two rooms: its layers begin in the one named under `room`, and it `faces` the other. Its warm side is the damper of the two rooms, which need not be the warmer one.",
    ],
    source: null,
    see: ["faces", "room", "warm side"],
  },
  {
    word: "faces",
    also: ["far side", "other side"],
    unit: null,
    says: [
      "Key of a build-up: what lies where its layers end. Outdoors where it is not said; else ground, void, or the name of a room.",
    ],
    source: null,
    see: ["room", "partition"],
  },
  {
    word: "cooling",
    also: ["cooled", "air conditioning"],
    unit: "°C",
    says: [
      "Key of a room: the temperature that it is never let above, as in `cooling: 24 °C`. In a hot and damp place a cooled room turns the warm side to outdoors; write its humidity as a percentage, since a class tells nothing about it.",
    ],
    source: null,
    see: ["warm side", "humidity class", "room"],
  },
];
