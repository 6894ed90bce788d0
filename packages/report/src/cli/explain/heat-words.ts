import type { Entry } from "./entry.ts";

/** Words about heat: how well a build-up insulates, and how warm its surface stays. */
export const HEAT_WORDS: readonly Entry[] = [
  {
    word: "U-value",
    also: ["u", "u value", "transmittance", "thermal transmittance"],
    unit: "W/(m²·K)",
    says: [
      "The heat that passes a square metre for each degree between inside and outside, framing and all. Lower is better: 0.25 is a good wall, 0.15 a good roof.",
    ],
    source: "ISO 6946:2017",
    see: ["R", "conductivity", "framing"],
  },
  {
    word: "R",
    also: ["resistance", "thermal resistance", "r value", "r-value"],
    unit: "m²·K/W",
    says: [
      "How well a layer holds heat back: thickness divided by conductivity. 100 mm of wool with 0.035 W/(m·K) has 2.86. The R of layers in a row add up, and U is one over their sum with the surfaces.",
    ],
    source: "ISO 6946:2017",
    see: ["U-value", "conductivity"],
  },
  {
    word: "conductivity",
    also: ["lambda", "λ", "thermal conductivity"],
    unit: "W/(m·K)",
    says: [
      "How well a material lets heat through, whatever its thickness. Foam boards have 0.022 to 0.035, wool 0.032 to 0.044, timber 0.13, steel about 50.",
    ],
    source: "ISO 10456:2007",
    see: ["R", "U-value"],
  },
  {
    word: "temperature factor",
    also: ["frsi", "f", "required temperature factor"],
    unit: "a bare number, 0 to 1",
    says: [
      "How warm the room surface stays in the cold: 1 is as warm as the room, 0 as cold as outdoors. Below the required factor of the critical month the surface may grow mould.",
    ],
    source: "ISO 13788:2012 clause 5",
    see: ["growth limit"],
  },
  {
    word: "growth limit",
    also: ["mould", "mold", "mould growth"],
    unit: "%",
    says: [
      "The relative humidity over which mould can grow on something it feeds on: about 80 % in the warm, more in the cold. A place can pass it without any water condensing.",
    ],
    source: "Hukka and Viitanen 1999",
    see: ["temperature factor", "wood moisture"],
  },
  {
    word: "wood moisture",
    also: ["moisture content", "timber moisture", "rot", "decay"],
    unit: "% of the dry mass",
    says: [
      "Water in timber for each hundred parts of dry wood. It follows the humidity around it: about 12 % at 65 % and 21 % at 90 %. Over 20 % for long, timber is at risk.",
    ],
    source: "FPL Wood Handbook ch. 4",
    see: ["growth limit"],
  },
  {
    word: "emissivity",
    also: ["ε", "foil", "foil face", "reflective"],
    unit: "a bare number, 0.01 to 1",
    says: [
      "How much heat a face sends out: nearly everything has 0.9, clean foil 0.05. Foil facing a still upright air gap of 25 mm makes it insulate three to four times better. With no gap in front of it, foil does nothing for heat.",
    ],
    source: "ISO 6946:2017 Annex D",
    see: ["air layer", "R"],
  },
  {
    word: "margin",
    also: ["dew point margin", "dewpoint margin"],
    unit: "K",
    says: [
      "How much warmer the warm face of the vapour layer stays than the dew point of the air that reaches it, in the worst month. Below nothing, water condenses on the sheet.",
    ],
    source: null,
    see: ["dew point", "vapour layer"],
  },
  {
    word: "Rsi",
    also: ["rse", "surface resistance", "surface resistances"],
    unit: "m²·K/W",
    says: [
      "The film of air that clings to a face holds back some heat: Rsi is that of the room side, 0.13 for a wall, 0.10 where heat goes up and 0.17 where it goes down, and Rse is that of the far side, 0.04 outdoors. For mould on the room surface Rsi is taken as 0.25, since air moves less in corners and behind furniture.",
    ],
    source: "ISO 6946:2017; ISO 13788:2012 clause 5",
    see: ["R", "temperature factor"],
  },
  {
    word: "corrosion",
    also: ["rust", "rusting"],
    unit: null,
    says: [
      "Metal at the room surface rusts where the air at it stands at 60 % or more, long before there is mould (80 %) or there are drops (100 %). The table of the surface gives the temperature factor that it would need; it matters only where there is bare metal, and turns no judgement.",
    ],
    source: "ISO 13788:2012 clause 5",
    see: ["temperature factor", "growth limit"],
  },
];
