/** Prices as the user gave them; warmside ships none. */
export interface PriceList {
  currency: string;
  /** [currency/h] */
  hourRate: number | null;
  /** [currency/kWh], as written. */
  heatPricePerKilowattHour: number | null;
  entries: readonly PriceEntry[];
}

/** What a price is for: a square metre, a cubic metre, a metre, a roll or a sheet. */
export type PriceUnit = "m2" | "m3" | "m" | "roll" | "sheet";

/** A row of a price list. */
export interface PriceEntry {
  material: string;
  /** Thickness of the layer, or depth of the framing, that it is for [m]; null for any. */
  thickness: number | null;
  per: PriceUnit;
  /** [currency]; null for a roll or sheet given by size alone. */
  price: number | null;
  /** Area covered by one roll or sheet [m²]; null for other units. */
  covers: number | null;
  /** Width of a roll or sheet [m]; null when not given. */
  width: number | null;
  /** Lap of one edge over the next [m]; null when not given. */
  lap: number | null;
  /** Share wasted [–], 0 to 1. */
  waste: number;
  /** Hours per m² of the build-up [h/m²]. */
  hours: number | null;
}
