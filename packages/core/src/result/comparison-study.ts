import type { PriceUnit } from "../project/types.ts";
import type { Peak } from "./moisture-result.ts";
import type { JudgementWord, VerdictWord } from "./words.ts";

/** The build-ups compared with their variants. */
export interface ComparisonStudy {
  /** As stated in the file; empty when it states none. */
  currency: string;
  /** [currency/h] */
  hourRate: number | null;
  /** [currency/kWh] */
  heatPricePerKilowattHour: number | null;
  /** Build-ups that have variants. */
  buildUps: ComparisonOfBuildUp[];
  /** Unusual prices, in sentences: unused ones, and one price for several thicknesses. */
  notes: string[];
  /** Assumptions of the figures, in sentences. */
  assumptions: string[];
}

/** A build-up and its variants. */
export interface ComparisonOfBuildUp {
  name: string;
  slug: string;
  /** Area without openings [m²], and length of the wall [m]; null when not stated. */
  area: number | null;
  /** [m] */
  length: number | null;
  /** The build-up as drawn, then its variants in the order of the file. */
  rows: ComparisonRow[];
}

/** The build-up as drawn, or one of its variants. */
export interface ComparisonRow {
  /** Null for the build-up as drawn. */
  variant: string | null;
  slug: string;
  /** The changes in words, one for each. */
  changes: string[];
  judgement: JudgementWord;
  /** The reason for the judgement, in a sentence. */
  reason: string;
  /** [W/(m²·K)]; figures are null where the variant is beyond the method. */
  transmittance: number | null;
  /** [W/(m²·K)] */
  clearTransmittance: number | null;
  /** [–] */
  temperatureFactor: number | null;
  /** [–] */
  requiredTemperatureFactor: number | null;
  verdict: VerdictWord | null;
  peak: Peak | null;
  /** [kg/m²] */
  carriedOver: number | null;
  /** Of the whole build-up [m]. */
  thickness: number;
  /** Floor area taken up by a wall of the stated length [m²]; null for roofs and floors, or without a length. */
  floorArea: number | null;
  /** The one on the warm side, with its sd [m]; null without one there. */
  vapourLayer: { name: string; sd: number } | null;
  /** Whether it must be unbroken; null without a vapour layer, or where there is too much water anyway. */
  dependence: "forgives gaps" | "depends on its vapour layer" | null;
  /** Maximum accumulation with the vapour layer ten times more open [kg/m²]; null without a vapour layer. */
  whenOpened: { verdict: VerdictWord; peak: number } | null;
  /** The same without the vapour layer [kg/m²]. */
  whenLeftOut: { verdict: VerdictWord; peak: number } | null;
  /** Heat loss over the year [kWh/m²], and below in all [kWh]. */
  heatPerYear: number | null;
  /** [kWh a year] */
  heatPerYearInAll: number | null;
  goods: GoodsResult[];
  /** Null when none of its goods has a price. */
  cost: CostResult | null;
  /** Null for the build-up as drawn. */
  againstBase: AgainstBase | null;
  /** The effect of the variant, in one plain sentence; null for the build-up as drawn. */
  sentence: string | null;
}

/** One item of the quantities for a build-up; `perArea` and `inAll` exclude waste. */
export interface GoodsResult {
  use: "layer" | "framing" | "tape";
  material: string;
  /** Thickness of the layer, or depth of the framing [m]; null for sheets and tape. */
  thickness: number | null;
  /** For a square metre of the build-up; null for tape, which is counted only for the whole. */
  perArea: GoodsAmounts | null;
  /** For the whole build-up without openings; null where no area is stated. */
  inAll: GoodsAmounts | null;
  /** The price used, in the file's currency, and the area that a roll or sheet covers [m²]; null without a price. */
  unitPrice: { amount: number; per: PriceUnit; covers: number | null } | null;
  /** Share of waste [–]; 0 where no price states one. */
  waste: number;
  /** Count of whole rolls and sheets to order, or the quantity, with waste; null without a price or size. */
  toBuy: { count: number; unit: PriceUnit } | null;
  /** [currency/m²] */
  costPerArea: number | null;
  /** [currency] */
  costInAll: number | null;
  /** Hours for a square metre of the build-up [h/m²]; null when not stated. */
  hours: number | null;
  /** How tape was counted. */
  note: string | null;
}

/** Area [m²], volume [m³] and length [m]; null where not counted that way or unknown. */
export interface GoodsAmounts {
  /** [m²] */
  area: number | null;
  /** [m³] */
  volume: number | null;
  /** [m] */
  length: number | null;
}

/** Costs in the file's currency. */
export interface CostResult {
  /** [currency/m²] */
  materialsPerArea: number;
  /** [currency/m²]; null without an hour rate. */
  labourPerArea: number | null;
  /** Materials and labour for a square metre, with partial rolls and sheets [currency/m²]. */
  perArea: number;
  /** For the whole build-up, with whole rolls and sheets [currency]; null without an area. */
  inAll: number | null;
  /** Hours for a square metre [h/m²]. */
  hoursPerArea: number;
  /** Goods without a price, which are left out. */
  unpriced: string[];
}

/** A variant minus the build-up as drawn; savings are positive. */
export interface AgainstBase {
  /** [m], [m²] */
  thickness: number;
  /** [m²] */
  floorArea: number | null;
  /** Heat saved over a year [kWh/m²] and [kWh]. */
  heat: number | null;
  /** [kWh a year] */
  heatInAll: number | null;
  /** Heat saved over a year for each metre of thickness added [kWh/m³]; null where none is added. */
  heatPerThickness: number | null;
  /** Money saved over a year for a square metre and in all [currency/m² a year]; null without a heat price. */
  money: number | null;
  /** [currency a year] */
  moneyInAll: number | null;
  /** Money saved over a year for a square metre and each metre of thickness added [currency/m² a year for each m]. */
  moneyPerThickness: number | null;
  /** [currency/m²]; null where goods without a price differ. */
  extraCost: number | null;
  /** [currency] */
  extraCostInAll: number | null;
  /** [a]; null without a heat price, without savings, or where the extra cost is unknown. */
  yearsToPay: number | null;
}
