import { BARE, type ShownUnit, UNITS } from "./units.ts";

/** Lowest and highest value [SI], both allowed, and the reason for these limits. */
export interface Range {
  low: number;
  high: number;
  reason: string;
}

/** One quantity of the trade: how it is named, written, shown and limited. */
export interface Quantity {
  /** Its name in words, as in a message. */
  name: string;
  symbol: string;
  /** What the user must write, in words: "a length". */
  kind: string;
  unit: ShownUnit;
  /** As written in a project file. */
  example: string;
  /** Digits shown after the point. */
  decimals: number;
  /** Digits for values below a size [shown unit], smallest size first: `[[10, 1]]` means one digit below 10. */
  finer: readonly (readonly [below: number, decimals: number])[];
  /** Least figure shown [shown unit]; a smaller value other than 0 is shown as "under" it. Null if there is none. */
  least: number | null;
  /** A value outside it is a problem. Null for quantities that are only shown, never read. */
  possible: Range | null;
  /** A value outside it is odd and gets a note, which `accept:` acknowledges. */
  plausible: Range | null;
  /** Units that may have been meant where the unit is missing or wrong. */
  slipUnits: readonly string[];
  /** What the written unit must look like, where its dimensions alone are not enough. */
  form: RegExp | null;
}

type Limits = readonly [low: number, high: number, reason: string] | null;
type Extra = { slip?: readonly string[]; form?: RegExp; finer?: Quantity["finer"]; least?: number };

// biome-ignore format: one row of the table below
function quantity(
  name: string, symbol: string, kind: string, unit: ShownUnit, example: string, decimals: number,
  possible: Limits = null, plausible: Limits = null, extra: Extra = {},
): Quantity {
  const range = (limits: Limits): Range | null => limits && { low: limits[0], high: limits[1], reason: limits[2] };
  return {
    name, symbol, kind, unit, example, decimals,
    possible: range(possible), plausible: range(plausible),
    slipUnits: extra.slip ?? [], form: extra.form ?? null,
    finer: extra.finer ?? [], least: extra.least ?? null,
  };
}

const U = UNITS;
const LENGTHS = ["mm", "m"];
const PERCENT_SIGN = /percent/;
const FORCE_OR_PRESSURE = /N|Pa/;
const PERMEANCE_UNIT = /perm|Pa|N/;
const PER_AREA = /\/ ?m\^?2$/;
const PER_LENGTH = /\/ ?m$/;
/** One metre a second in millimetres a day. Source: definition. */
const DAY_IN_MILLIMETRES = 86_400 * 1000;

/**
 * Every quantity that is read, worded or shown. Ranges are in SI: the possible ones come from physics or from the size
 * of things that can be built; the plausible ones are common practice for small timber buildings.
 */
// biome-ignore format: one table
export const VOCABULARY = {
  // What things are made of
  thickness: quantity("thickness", "d", "a length", U.mm, "140 mm", 2, [1e-6, 3, "layers are between a film and the thickest wall"], [5e-5, 0.6, "layers of small buildings are mostly 0.05 to 600 mm thick"], { slip: LENGTHS }),
  "thickness of an air layer": quantity("thickness of the air layer", "d", "a length", U.mm, "25 mm", 1, [0.001, 3, "under 1 mm it is not an air layer, over 3 m it is a room"], [0.005, 0.3, "air layers in walls and roofs are mostly 5 to 300 mm"], { slip: LENGTHS }),
  conductivity: quantity("conductivity", "λ", "a thermal conductivity", U.conductivity, "0.035 W/(m K)", 3, [0.002, 500, "building materials lie between an evacuated panel and copper"], [0.012, 400, "insulation starts at about 0.012 W/(m K)"], { slip: ["W/(m K)"] }),
  "vapour resistance factor": quantity("vapour resistance factor", "μ", "a number of 1 or more", BARE, "60", 0, [1, 1e7, "still air has 1, and nothing is more open; metal and glass have 1000000"], [1, 2e6, "materials have 1 (wool) to 1000000 (metal and glass)"]),
  density: quantity("density", "ρ", "a density", U.density, "500 kg/m3", 0, [0.5, 25_000, "between still air and the heaviest metal"], [5, 12_000, "insulation starts at about 8 kg/m3, lead ends at 11300"], { slip: ["kg/m3"] }),
  "specific heat": quantity("specific heat", "c", "a specific heat capacity", U.specificHeat, "1600 J/(kg K)", 0, [50, 5000, "metals have 130 J/(kg K) or more, and no solid has more than the 4180 of water"], [120, 2600, "building materials have 130 to 2500 J/(kg K)"], { slip: ["J/(kg K)", "kJ/(kg K)"] }),
  emissivity: quantity("emissivity", "ε", "a number from 0.01 to 1", BARE, "0.9", 2, [0.01, 1, "emissivity is 0.01 to 1"], [0.02, 0.98, "clean foil has about 0.05, most other surfaces 0.9"]),
  sd: quantity("equivalent air layer thickness sd", "sd", "a length", U.m, "2 m", 0, [1e-4, 1e6, "sheets lie between a tenth of a millimetre of air and glass"], [0.005, 3000, "sheets have 0.01 m to 1500 m (metal foil)"], { slip: ["m", "mm"], finer: [[0.1, 3], [1, 2], [10, 1]] }),
  "vapour resistance": quantity("vapour resistance", "Z", "a vapour resistance", U.vapourResistance, "250 MN s/g", 1, [5e5, 5e15, "sd is 0.0001 m to 1000000 m, at 0.2 m for 1 MN s/g"], [2.5e7, 1.5e13, "sheets have 0.05 to 7500 MN s/g (metal foil)"], { slip: ["MN s/g"], form: FORCE_OR_PRESSURE }),
  permeance: quantity("permeance", "W", "a vapour permeance", U.perm, "0.3 perm", 2, [2e-16, 2e-6, "sd is 0.0001 m to 1000000 m, and 1 perm is one of 3.5 m"], [6e-14, 4e-8, "sheets have 0.002 perm (metal foil) to about 350 perm"], { slip: ["perm"], form: PERMEANCE_UNIT }),
  permeability: quantity("permeability", "δ", "a vapour permeability", U.permInch, "1.5 perm in", 2, [1e-17, 2e-10, "still air has 138 perm in, and nothing is more open; metal foil has 0.0001"], [1e-16, 1.9e-10, "materials run from the 0.0001 perm in of foil to the 130 of wool"], { slip: ["perm in"] }),
  "vapour transmission": quantity("vapour transmission rate", "g", "a mass of water per area and time", U.transmission, "12 g/(m2 day)", 2, [1e-13, 1, "between metal foil and no sheet at all"], null, { slip: ["g/(m2 day)"] }),
  "humidity of a test": quantity("relative humidity", "φ", "a relative humidity", U.percent, "85 %", 1, [0, 1, "air holds between 0 and 100 % of what it can"], null, { slip: ["%"], form: PERCENT_SIGN }),
  spread: quantity("spread", "±", "a share", U.percent, "10 %", 1, [0, 0.9, "values spread by 0 to 90 %, since none can fall below zero"], [0.005, 0.5, "values spread by 1 to 50 %"], { slip: ["%"], form: PERCENT_SIGN }),
  // Framing and fixings
  width: quantity("width", "b", "a length", U.mm, "45 mm", 1, [0.001, 2, "framing is between 1 mm and 2 m wide"], [0.015, 0.3, "studs and joists of timber are 15 to 300 mm wide"], { slip: LENGTHS }),
  spacing: quantity("spacing", "s", "a length", U.mm, "600 mm", 0, [0.01, 10, "framing is set from 10 mm to 10 m apart"], [0.1, 2.5, "framing is mostly set 300 to 1200 mm apart"], { slip: LENGTHS }),
  "share of the area": quantity("share of the area", "f", "a share", U.percent, "15 %", 1, [0, 0.95, "framing takes 0 to 95 % of a layer; with more, nothing of the layer is left"], [0, 0.4, "framing mostly takes 5 to 25 % of the area"], { slip: ["%"], form: PERCENT_SIGN }),
  "share missing": quantity("share missing", "a", "a share", U.percent, "0.1 %", 3, [0, 0.5, "0 to 50 % can be missing; with more, it is no longer a sheet"], [1e-5, 0.05, "gaps are mostly a thousandth of the area or less"], { slip: ["%"], form: PERCENT_SIGN }),
  "width of a gap": quantity("width of the gap", "b", "a length", U.mm, "2 mm", 2, [1e-5, 0.5, "a gap is wider than a hair and narrower than half a metre"], [1e-4, 0.02, "gaps are mostly 0.1 to 20 mm wide"], { slip: LENGTHS }),
  "fasteners per area": quantity("fasteners per area", "nf", "a number per area", U.perArea, "2.5 /m2", 1, [0.01, 200, "there is one fastener or more on 100 m2, and 200 on one square metre leave no insulation"], [0.5, 20, "boards take 1 to 15 fasteners on a square metre"], { slip: ["/m2"] }),
  "diameter of a fastener": quantity("diameter of the fastener", "df", "a length", U.mm, "4 mm", 1, [5e-4, 0.05, "fasteners lie between a pin and a pipe"], [0.002, 0.02, "fasteners are 2 to 20 mm thick"], { slip: LENGTHS }),
  recess: quantity("recess", "d0", "a length", U.mm, "20 mm", 1, [0, 1, "a recess is 0 mm to 1 m deep, since a fastener ends within the layer"], [0, 0.3, "fasteners are recessed by 0 to 300 mm"], { slip: LENGTHS }),
  "thickness of sheet metal": quantity("thickness of the sheet metal", "t", "a length", U.mm, "1.2 mm", 2, [1e-4, 0.02, "sheet metal lies between foil and plate"], [4e-4, 0.004, "steel studs are folded from 0.5 to 3 mm of sheet"], { slip: LENGTHS }),
  flange: quantity("width of the flange", "b", "a length", U.mm, "50 mm", 0, [0.005, 0.5, "a flange is between 5 mm and half a metre wide"], [0.02, 0.1, "flanges of studs are 30 to 75 mm wide"], { slip: LENGTHS }),
  lip: quantity("length of the lip", "c", "a length", U.mm, "12 mm", 0, [0, 0.2, "a lip is 0 to 200 mm long, and shorter than its flange"], [0, 0.03, "lips of studs are 5 to 20 mm long"], { slip: LENGTHS }),
  "gap beside framing": quantity("gap beside the framing", "b", "a length", U.mm, "2 mm", 1, [0, 0.1, "gaps beside framing are 0 to 100 mm wide; a wider one is an air space"], [0, 0.02, "boards cut between studs leave 0 to 10 mm"], { slip: LENGTHS }),
  tape: quantity("length of tape on the framing", "b", "a length", U.mm, "20 mm", 0, [0.001, 0.5, "tape lies on the framing by 1 mm to half a metre"], [0.005, 0.15, "tape reaches 10 to 50 mm onto the framing"], { slip: LENGTHS }),
  "set back": quantity("set-back of the frame", "b", "a length", U.mm, "30 mm", 0, [0, 1, "a frame is set back by 0 mm to 1 m, no more than the thickest wall"], [0, 0.3, "window frames are set back by 0 to 150 mm"], { slip: LENGTHS }),
  // Air layers and openings
  "ventilation area upright": quantity("ventilation area", "Av", "an area of openings per metre of length", U.openingPerLength, "1000 mm2/m", 0, [0, 1, "openings are 0 to 1 m2 per metre; with more, no layer is left"], [0, 0.1, "openings are 0 to 100000 mm2/m"], { slip: ["mm2/m"], form: PER_LENGTH }),
  "ventilation area level": quantity("ventilation area", "Av", "an area of openings per square metre", U.openingPerArea, "1000 mm2/m2", 0, [0, 1, "openings are 0 to 1 m2 per square metre; with more, no layer is left"], [0, 0.1, "openings are 0 to 100000 mm2/m2"], { slip: ["mm2/m2"], form: PER_AREA }),
  "openings of a void": quantity("openings of the void", "ε", "an area of openings per metre of perimeter", U.openingPerLength, "1500 mm2/m", 0, [0, 0.5, "openings of a void are 0 to 0.5 m2 per metre, since they cannot be larger than the wall they are in"], [0, 0.03, "voids have 500 to 5000 mm2/m"], { slip: ["mm2/m"], form: PER_LENGTH }),
  "thermal resistance": quantity("thermal resistance", "R", "a thermal resistance", U.resistance, "0.18 m2 K/W", 2, [0, 50, "resistances are 0 to 50 m2 K/W, and more cannot be built"], [0, 12, "whole walls and roofs reach 12 m2 K/W"], { slip: ["m2 K/W"] }),
  // Air and climate
  temperature: quantity("temperature", "θ", "a temperature", U.celsius, "20 °C", 1, [-60, 60, "rooms and places stay between −60 and 60 °C; a sauna is beyond this method"], [-5, 35, "rooms are mostly kept between −5 and 35 °C"], { slip: ["°C"] }),
  "temperature difference": quantity("temperature difference", "Δθ", "a difference of temperatures", U.kelvin, "2 K", 1, [-30, 30, "no year is more than 30 K warmer or colder than the mean year"], [-6, 6, "years differ by up to about 6 K"], { slip: ["K"] }),
  "relative humidity": quantity("relative humidity", "φ", "a relative humidity", U.percent, "55 %", 1, [0.01, 1, "relative humidity is 1 to 100 %"], [0.15, 0.95, "rooms are mostly between 15 and 95 %"], { slip: ["%"], form: PERCENT_SIGN }),
  "moisture production": quantity("moisture production", "G", "a mass of water per time", U.kilogramPerDay, "6 kg/day", 1, [0, 0.02, "sources give 0 to 1728 kg/day"], [1e-6, 6e-4, "people, drying clay and showers give 0.1 to 50 kg/day"], { slip: ["kg/day"] }),
  "air changes": quantity("air changes", "n", "air changes per hour", U.perHour, "0.6 /h", 2, [0.01 / 3600, 100 / 3600, "rooms change their air between 0.01 and 100 times an hour"], [0.1 / 3600, 20 / 3600, "rooms change their air 0.1 to 20 times an hour"], { slip: ["/h"] }),
  altitude: quantity("altitude", "z", "a height", U.m, "340 m", 0, [-450, 6000, "building sites lie between the Dead Sea and 6000 m"], [-10, 2500, "most sites lie below 2500 m"], { slip: ["m", "km"] }),
  "lapse rate": quantity("lapse rate", "Γ", "a temperature difference per height", U.kelvinPerKilometre, "6.5 K/km", 1, [0, 0.012, "air cools by 0 to about 10 K for each kilometre"], [0.003, 0.01, "air cools by 4 to 9 K for each kilometre"], { slip: ["K/km"] }),
  "wind speed": quantity("wind speed", "v", "a speed", U.metrePerSecond, "4 m/s", 1, [0, 30, "mean winds are 0 to 30 m/s, far below storms"], [0.5, 10, "mean winds are 1 to 8 m/s"], { slip: ["m/s"] }),
  pressure: quantity("pressure difference", "Δp", "a pressure", U.pascal, "2 Pa", 1, [0.01, 500, "pressure differences are 0.01 to 500 Pa, the most that a blower test reaches"], [0.2, 60, "buoyancy, wind and fans give 1 to 50 Pa"], { slip: ["Pa"] }),
  // The building
  transmittance: quantity("transmittance", "U", "a thermal transmittance", U.transmittance, "0.25 W/(m2 K)", 2, [0.01, 10, "nothing built lies outside 0.01 to 10 W/(m2 K)"], [0.05, 6, "walls, roofs and floors lie between 0.08 and 6 W/(m2 K)"], { slip: ["W/(m2 K)"] }),
  pitch: quantity("pitch", "α", "an angle from level", U.degrees, "5 °", 1, [0, 90, "a roof lies between level and upright"], [0, 75, "roofs are mostly 1 to 60 degrees steep"], { slip: ["°"] }),
  span: quantity("span", "l", "a length", U.m, "4 m", 1, [0.1, 100, "a roof spans between 100 mm and 100 m"], [0.5, 15, "roofs of small buildings span 1 to 10 m"], { slip: ["m", "mm"] }),
  rain: quantity("rain of the heating season", "p", "a depth of rain per day", U.millimetrePerDay, "2.5 mm/day", 1, [0, 100 / DAY_IN_MILLIMETRES, "rain is 0 to 100 mm a day; no place has more on every day"], [0.2 / DAY_IN_MILLIMETRES, 15 / DAY_IN_MILLIMETRES, "heating seasons have 0.5 to 8 mm a day"], { slip: ["mm/day"] }),
  area: quantity("area", "A", "an area", U.m2, "24 m2", 1, [0.01, 1e5, "a build-up covers a hundredth of a square metre to 100000 m2"], [0.5, 2000, "small buildings have 1 to 2000 m2 of a build-up"], { slip: ["m2"] }),
  volume: quantity("volume", "V", "a volume", U.m3, "90 m3", 1, [0.1, 1e6, "a room holds a tenth of a cubic metre to a million"], [2, 5000, "rooms hold 5 to 5000 m3"], { slip: ["m3"] }),
  length: quantity("length", "l", "a length", U.m, "8 m", 2, [0.01, 10_000, "a building is between 10 mm and 10 km long"], [0.1, 300, "small buildings are 1 to 100 m long"], { slip: ["m", "mm"] }),
  height: quantity("height", "h", "a length", U.m, "0.3 m", 2, [0, 10, "voids are 0 to 10 m high; a higher one is a storey"], [0.05, 2, "voids under floors are 0.1 to 1 m high"], { slip: ["m", "mm"] }),
  "thickness of a wall": quantity("wall thickness", "dw", "a length", U.m, "0.3 m", 2, [0.01, 3, "walls are 10 mm to 3 m thick"], [0.05, 1, "walls of small buildings are 0.1 to 0.6 m thick"], { slip: ["m", "mm"] }),
  extent: quantity("width or depth of edge insulation", "D", "a length", U.m, "0.6 m", 2, [0.01, 20, "edge insulation reaches 10 mm to 20 m"], [0.2, 3, "edge insulation reaches 0.3 to 2 m"], { slip: ["m", "mm"] }),
  "water held": quantity("amount of water", "Ma", "a mass of water per area", U.kilogramPerArea, "1 kg/m2", 3, [1e-4, 200, "amounts are 0.1 g to 200 kg per square metre; less is next to nothing, more is a pool"], [0.01, 10, "trapped water is mostly 0.1 to 5 kg/m2"], { slip: ["kg/m2", "g/m2"] }),
  "moisture reading": quantity("moisture reading", "u", "a share of the dry mass", U.percent, "28 %", 0, [0.01, 2, "timber holds 1 to 200 % of its dry mass"], [0.06, 0.6, "meters show 6 to 60 %"], { slip: ["%"], form: PERCENT_SIGN }),
  "temperature factor": quantity("temperature factor", "fRsi", "a number from 0 to 1", BARE, "0.75", 3, [0, 1, "0 is the air outside, 1 the air of the room"], [0.3, 0.99, "junctions lie between 0.3 and 0.99"]),
  "heated days": quantity("heated days", "–", "a number of days a week, 1 to 7", BARE, "3", 0, [1, 7, "a week has seven days"]),
  "humidity margin": quantity("humidity margin", "–", "a number from 1 to 2", BARE, "1.10", 2, [1, 2, "a margin is 1 to 2"], [1, 1.25, "the 2001 edition of ISO 13788 asked for 1.10"]),
  "hour rate": quantity("hour rate", "–", "an amount of money for an hour", BARE, "40", 2, [0, 1e7, "amounts of money are 0 to 10000000"]),
  price: quantity("price", "–", "an amount of money", BARE, "4.50", 2, [0, 1e7, "amounts of money are 0 to 10000000"]),
  "width of a roll": quantity("width of a roll or sheet", "–", "a length", U.m, "1.5 m", 2, [0.05, 20, "rolls and sheets are between 50 mm and 20 m wide"], [0.2, 6, "rolls and sheets are mostly 0.3 to 4 m wide"], { slip: ["m", "mm"] }),
  lap: quantity("lap", "–", "a length", U.mm, "100 mm", 0, [0, 1, "laps are 0 to 1 m wide"], [0.02, 0.3, "laps are mostly 50 to 300 mm wide"], { slip: LENGTHS }),
  waste: quantity("waste", "–", "a share", U.percent, "10 %", 0, [0, 1, "waste is 0 to 100 %"], [0, 0.3, "offcuts are mostly 0 to 20 %"], { slip: ["%"], form: PERCENT_SIGN }),
  "heat price": quantity("heat price", "–", "an amount of money for a kilowatt hour", U.perKilowattHour, "0.12 /kWh", 2, [0, 1e6, "amounts of money are 0 to 1000000"], null, { slip: ["/kWh"] }),
  "waste in per cent": quantity("waste", "–", "a number of per cent", BARE, "10", 0, [0, 100, "waste is 0 to 100 %"], [0, 30, "offcuts are mostly 0 to 20 %"]),
  "hours per area": quantity("hours per square metre", "–", "a number of hours", BARE, "0.5", 2, [0, 1000, "work takes 0 to 1000 hours for a square metre"], [0, 20, "work takes minutes to hours for a square metre"]),
  // Shown, never read
  "transmittance in working": quantity("transmittance", "U", "a thermal transmittance", U.transmittance, "0.303 W/(m2 K)", 3),
  "vapour pressure": quantity("vapour pressure", "p", "a pressure", U.pascal, "1168 Pa", 0),
  "saturation pressure": quantity("saturation pressure", "psat", "a pressure", U.pascal, "2337 Pa", 0),
  "condensate": quantity("condensate", "Ma", "a mass of water per area", U.gramPerArea, "20 g/m2", 0, null, null, { finer: [[10, 1]], least: 0.1 }),
  "moisture content": quantity("moisture content", "u", "a share of the dry mass", U.percent, "18 %", 1),
  share: quantity("share", "–", "a share", U.percent, "15 %", 0, null, null, { finer: [[1, 2], [10, 1]] }),
  "heat over the year": quantity("heat over the year", "Q", "heat per area", U.kilowattHourPerArea, "24 kWh/m2", 1),
} satisfies Record<string, Quantity>;

/** Names of the quantities in the vocabulary. */
export type QuantityName = keyof typeof VOCABULARY;

/**
 * Looks a quantity up.
 *
 * @param name - its name in the vocabulary
 * @returns how it is named, written, shown and limited
 * @throws RangeError when the vocabulary has no such name
 * @example quantityOf("thickness").unit.written // "mm"
 */
export function quantityOf(name: QuantityName): Quantity {
  const found = Object.hasOwn(VOCABULARY, name as PropertyKey) ? VOCABULARY[name] : undefined;
  if (found === undefined) throw new RangeError(`quantity must be one of the vocabulary's names, was ${String(name)}`);
  return found;
}

/**
 * Highest conductivity of anything but metal [W/(m·K)]; the densest stone reaches about 4. A higher value is odd unless
 * the material's kind is metal. Rule of this project.
 */
export const CONDUCTIVITY_OF_ALL_BUT_METAL = {
  most: 5,
  reason: "only metal (`kind: metal`) has more than 5 W/(m K); divide figures in mW/(m K) by 1000",
} as const;
