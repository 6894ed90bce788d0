import type { Term } from "./term.ts";

/** Heat: how well a build-up insulates, and how warm its surface stays. */
export const HEAT_TERMS: readonly Term[] = [
  {
    name: "U-value",
    technical: "thermal transmittance",
    symbol: "U",
    unit: "W/(m²·K)",
    also: ["u", "u value", "transmittance", "thermal transmittance"],
    says: [
      "The heat that passes a square metre for each degree between inside and outside, framing included. Lower is better: 0.25 is a good wall, 0.15 a good roof.",
    ],
    source: "ISO 6946:2017",
    see: ["R", "conductivity", "framing"],
  },
  {
    name: "R",
    technical: "thermal resistance",
    symbol: "R",
    unit: "m²·K/W",
    also: ["resistance", "thermal resistance", "r value", "r-value"],
    says: [
      "How well a layer holds heat back: its thickness divided by its conductivity. 100 mm of wool with 0.035 W/(m·K) has 2.86. The R of layers in a row add up; U is one over their sum with the surfaces.",
    ],
    source: "ISO 6946:2017",
    see: ["U-value", "conductivity"],
  },
  {
    name: "conductivity",
    technical: "thermal conductivity",
    symbol: "λ",
    unit: "W/(m·K)",
    also: ["lambda", "λ", "thermal conductivity"],
    says: [
      "How well a material lets heat through, whatever its thickness. Foam boards have 0.022 to 0.035, wool 0.032 to 0.044, timber 0.13, steel about 50.",
    ],
    source: "ISO 10456:2007",
    see: ["R", "U-value"],
  },
  {
    name: "thermal bridge",
    technical: null,
    symbol: null,
    unit: null,
    also: ["thermal bridges", "cold bridge", "thermal bridging"],
    says: [
      "A place where more heat passes than beside it: a stud through the insulation, a corner, the edge of a window. It raises the U-value, and its inside surface is colder, so mould starts there.",
    ],
    source: "ISO 6946:2017; ISO 10211:2007",
    see: ["framing", "temperature factor", "U-value"],
  },
  {
    name: "temperature factor",
    technical: "temperature factor at the internal surface",
    symbol: "fRsi",
    unit: "a bare number, 0 to 1",
    also: ["frsi", "f", "required temperature factor"],
    says: [
      "How warm the room surface stays in the cold: 1 is as warm as the room, 0 as cold as outdoors. Below the factor that the critical month requires, mould can grow on the surface.",
    ],
    source: "ISO 13788:2012 clause 5",
    see: ["growth limit", "critical month"],
  },
  {
    name: "emissivity",
    technical: null,
    symbol: "ε",
    unit: "a bare number, 0.01 to 1",
    also: ["ε", "foil", "foil face", "reflective"],
    says: [
      "How much heat a face sends out: nearly everything has 0.9, clean foil 0.05. A foil that faces a still upright air gap of 25 mm makes the gap insulate three to four times better. With no gap in front of it, foil does nothing for heat.",
    ],
    source: "ISO 6946:2017 Annex D",
    see: ["air layer", "R"],
  },
  {
    name: "margin",
    technical: null,
    symbol: null,
    unit: "K",
    also: ["dew point margin", "dewpoint margin"],
    says: [
      "How much warmer the warm face of the vapour layer stays than the dew point of the air that reaches it, in the worst month. Below 0 K water condenses on the sheet.",
    ],
    source: null,
    see: ["dew point", "vapour layer"],
  },
  {
    name: "Rsi",
    technical: "surface resistance",
    symbol: "Rsi, Rse",
    unit: "m²·K/W",
    also: ["rse", "surface resistance", "surface resistances"],
    says: [
      "The film of air on a face holds back some heat. Rsi is that of the room side: 0.13 for a wall, 0.10 where heat goes up and 0.17 where it goes down. Rse is that of the outer side, 0.04 outdoors. For mould on the room surface Rsi is 0.25, since air moves less in corners and behind furniture.",
    ],
    source: "ISO 6946:2017; ISO 13788:2012 clause 5",
    see: ["R", "temperature factor"],
  },
  {
    name: "corrosion",
    technical: null,
    symbol: null,
    unit: null,
    also: ["rust", "rusting"],
    says: [
      "Bare metal at the room surface rusts where the air at it reaches 60 % relative humidity, long before mould (80 %) or drops (100 %). It does not change the judgement.",
    ],
    source: "ISO 13788:2012 clause 5",
    see: ["temperature factor", "growth limit"],
  },
];
