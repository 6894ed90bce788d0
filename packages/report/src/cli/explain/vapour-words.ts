import type { Entry } from "./entry.ts";

/** Words about vapour: how much there is, what holds it back, in which units. */
export const VAPOUR_WORDS: readonly Entry[] = [
  {
    word: "sd",
    also: ["equivalent air layer thickness", "sd value", "sd-value"],
    unit: "m",
    says: [
      "How hard it is for vapour to pass a layer, told as the thickness of still air that would hold it back as much. sd = μ times thickness.",
      "A breather membrane has 0.02 to 0.2 m, a sheet of OSB about 0.5 m, a sheet of polythene 50 m and more. An sd is a property of the whole layer as it is laid: laps, holes and sockets make it smaller.",
      "From other units: 1 MN s/g is 0.2 m; 1 US perm is 3.5 m, 0.1 perm is 35 m. A product sheet that tells Sd, Z or perms tells the same thing.",
    ],
    source: "ISO 13788:2012; ISO 10456:2007",
    see: ["μ", "gauge", "perm", "vapour resistance"],
  },
  {
    word: "μ",
    also: ["mu", "vapour resistance factor", "µ"],
    unit: "a bare number, 1 or more",
    says: [
      "How many times harder it is for vapour to pass a material than the same thickness of still air. Mineral wool has 1, timber 20 to 50, expanded polystyrene 60.",
      "Tables give a dry and a wet value. warmside calculates with the dry one and runs a second time with whichever is worse for the build-up.",
    ],
    source: "ISO 10456:2007",
    see: ["sd"],
  },
  {
    word: "gauge",
    also: ["polythene", "500 gauge", "1000 gauge", "mil"],
    unit: "gauge",
    says: [
      "A measure of the thickness of plastic sheet: 1000 gauge is 0.25 mm, so 500 gauge is 0.125 mm.",
      "Gauge says nothing about vapour by itself. warmside takes an sd of 50 m for each 0.15 mm of polythene: about 83 m for 1000 gauge and 42 m for 500 gauge. Torn or unsealed it is far less; ask for the findings with gaps.",
    ],
    source: "common practice",
    see: ["sd", "vapour layer"],
  },
  {
    word: "vapour resistance",
    also: ["z", "mn s/g", "mns/g", "mn·s/g"],
    unit: "MN s/g",
    says: [
      "Another way to tell how tight a sheet is, usual on product sheets in the United Kingdom. 1 MN s/g is an sd of 0.2 m, so 250 MN s/g is 50 m.",
    ],
    source: "unit definition, with the vapour permeability of air of ISO 13788:2012",
    see: ["sd", "perm"],
  },
  {
    word: "perm",
    also: ["permeance", "perms", "us perm"],
    unit: "perm",
    says: [
      "The North American measure of how open a sheet is: the larger, the more open. sd in metres is 3.5 divided by the perms, so 0.06 perm is an sd of 58 m.",
    ],
    source: "unit definition: 1 US perm is 5.72e-11 kg/(m² s Pa)",
    see: ["sd"],
  },
  {
    word: "vapour pressure",
    also: ["p", "vapour", "drive"],
    unit: "Pa",
    says: [
      "How much water vapour the air holds, told as a pressure. A heated room in winter has about 1000 to 1400 Pa, frosty air outdoors 300 to 500 Pa.",
      "Vapour moves from the higher to the lower pressure, through every layer, fast where layers are open and slowly where they are tight.",
    ],
    source: "ISO 13788:2012",
    see: ["saturation pressure", "relative humidity", "warm side"],
  },
  {
    word: "saturation pressure",
    also: ["psat", "saturation"],
    unit: "Pa",
    says: [
      "The most vapour that air of a temperature can hold: 2337 Pa at 20 °C, 611 Pa at 0 °C. Where the vapour pressure inside a build-up would pass it, water condenses.",
    ],
    source: "ISO 13788:2012 Annex E",
    see: ["dew point", "vapour pressure"],
  },
  {
    word: "dew point",
    also: ["dewpoint", "dew"],
    unit: "°C",
    says: [
      "The temperature at which air of a given vapour pressure is full. A face colder than the dew point of the air that reaches it gets wet. Air of 20 °C and 50 % has its dew point at 9.3 °C.",
    ],
    source: "ISO 13788:2012 Annex E",
    see: ["saturation pressure", "margin"],
  },
  {
    word: "relative humidity",
    also: ["rh", "humidity", "φ"],
    unit: "%",
    says: [
      "Vapour pressure as a share of the saturation pressure at the same temperature. The same vapour is 50 % in a warm room and 100 % in a cold corner of it.",
    ],
    source: "ISO 13788:2012",
    see: ["vapour pressure", "humidity class"],
  },
  {
    word: "humidity class",
    also: ["class", "class 1", "class 2", "class 3", "class 4", "class 5", "classes"],
    unit: "class 1 to class 5",
    says: [
      "How much vapour the use of a heated room adds to the air from outdoors: class 1 a store, 2 an office or a dwelling with good ventilation, 3 a building whose use is not known, 4 a sports hall, kitchen or canteen, 5 a laundry or a pool.",
      "Drying clay, showers and drying laundry belong to class 4 or 5. A class tells nothing about a cooled room: give that a relative humidity.",
    ],
    source: "ISO 13788:2012 Annex A",
    see: ["relative humidity"],
  },
  {
    word: "condensation",
    also: ["condense", "condenses", "condensate"],
    unit: null,
    says: [
      "Vapour that turns to water where the air can hold no more, on a face colder than the dew point of the air that reaches it. Inside a build-up it is counted month by month and makes the verdict; on the room surface it is told by itself.",
    ],
    source: "ISO 13788:2012",
    see: ["dew point", "verdict", "temperature factor"],
  },
];
