import type { ListedTerm } from "./term.ts";

/** What people ask that warmside does not answer, or answers by the way: each says where the answer is. */
export const BEYOND_TERMS: readonly ListedTerm[] = [
  {
    name: "sauna",
    also: ["steam room", "hot room", "sauna room"],
    says: [
      "Beyond this method. A sauna is at 80 °C for an hour and cold for days, and steam comes in bursts; monthly means say nothing of that, and rooms over 60 °C are refused. Common practice is aluminium foil directly behind the boards, taped at every joint, with a gap between foil and boards.",
      "Ask the maker of the sauna or a building physicist for an hourly simulation. warmside can answer for the room outside the cabin: describe that room, and the cabin as part of its moisture.",
    ],
    source: "common practice",
    see: ["beyond this method", "vapour layer"],
  },
  {
    name: "heating power",
    technical: "design heat load",
    unit: "kW",
    also: ["kw", "heater", "heat load", "2 kw", "is 2 kw enough", "radiator", "heating load"],
    says: [
      "Not worked out here, and easily estimated. Add up U times area over walls, roof, floor, windows and doors; add a third of the room's volume in m³ times the air changes in an hour. The sum is in watts for each degree. Multiply it by the room temperature less the coldest outdoor temperature of the place.",
      "A garden room of 15 m² with U-values of 0.25 and a window loses some 30 W for each degree: 1 kW holds it at 20 °C when it is −10 °C outside, and 2 kW warms it up from cold. For a heater to buy, ask an installer for a heat load by EN 12831-1.",
    ],
    source: "common practice",
    see: ["U-value"],
  },
  {
    name: "U-value alone",
    unit: "W/(m²·K)",
    also: ["u value only", "u-value only", "only u", "without climate", "no climate"],
    says: "The U-value does not depend on the place. Where only the U-value is wanted, write any climate and any room into the file, and read the U-value in the answer; leave the rest.",
    see: ["U-value"],
  },
];
