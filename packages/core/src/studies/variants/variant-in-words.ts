import { formatInShownUnit, formatNumber, formatQuantity } from "../../quantities/format-quantity.ts";
import { requireFinite, requireText } from "../../require.ts";
import type { AgainstBase } from "../../result/types.ts";
import type { PlainRow } from "./against-base.ts";

/**
 * Compares a variant with the build-up as drawn in one plain sentence.
 *
 * @param variant - its row
 * @param base - the row of the build-up as drawn
 * @param difference - the differences between the two
 * @param currency - as the file has it
 * @returns a sentence
 */
export function variantInWords(variant: PlainRow, base: PlainRow, difference: AgainstBase, currency: string): string {
  const clauses = [
    `${transmittance(variant, base)} and it is ${thickness(difference)}`,
    ...vapourLayer(variant, base),
    judgement(variant, base),
    ...heat(difference),
    ...cost(difference, currency),
  ];
  const sentence = clauses.join("; ");
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`;
}

/**
 * An amount of money in words.
 *
 * @param amount - [currency], any finite number
 * @param currency - any text; a symbol is put directly before the figure, a word with a space between
 * @param decimals - count of digits after the point; if not given, two below 100 and none above
 * @returns the amount without a minus sign
 * @example moneyInWords(-12.5, "£") // "£12.50"
 */
export function moneyInWords(amount: number, currency: string, decimals?: number): string {
  requireFinite(amount, "amount");
  requireText(currency, "currency");
  const size = Math.abs(amount);
  const figure = formatNumber(size, decimals ?? (size < WHOLE_FROM ? 2 : 0));
  if (currency === "") return figure;
  return /^[\p{L}]/u.test(currency) ? `${currency} ${figure}` : `${currency}${figure}`;
}

const WHOLE_FROM = 100;

function transmittance(variant: PlainRow, base: PlainRow): string {
  if (variant.transmittance === null) return "this method gives no U";
  const now = formatQuantity(variant.transmittance, "transmittance");
  const before = base.transmittance === null ? null : formatQuantity(base.transmittance, "transmittance");
  if (before === null) return `U is ${now}`;
  return now === before
    ? `U stays ${now}`
    : `U ${variant.transmittance < base.transmittance! ? "falls" : "rises"} from ${formatInShownUnit(base.transmittance!, "transmittance")} to ${now}`;
}

function thickness({ thickness: added }: AgainstBase): string {
  const difference = formatQuantity(Math.abs(added), "thickness");
  if (difference === "0 mm") return "no thicker";
  return `${difference} ${added > 0 ? "thicker" : "thinner"}`;
}

/** The vapour layer; mentioned only if it differs, or if the build-up depends on it in another way. */
function vapourLayer(variant: PlainRow, base: PlainRow): string[] {
  const now = variant.vapourLayer;
  const before = base.vapourLayer;
  const isSame = now?.name === before?.name && now?.sd === before?.sd && variant.dependence === base.dependence;
  if (isSame) return [];
  if (now === null) return ["it has no vapour layer on the warm side"];
  const rests = variant.dependence === null ? "" : `, which ${DEPENDENCE[variant.dependence]}`;
  const sd = / sd /.test(now.name) ? "" : ` (sd ${formatQuantity(now.sd, "sd")})`;
  return [`its vapour layer is ${now.name}${sd}${rests}`];
}

const DEPENDENCE: Readonly<Record<NonNullable<PlainRow["dependence"]>, string>> = {
  "forgives gaps": "may have gaps",
  "depends on its vapour layer": "has to be continuous",
};

function judgement(variant: PlainRow, base: PlainRow): string {
  return variant.judgement === base.judgement
    ? `the judgement stays ${variant.judgement}`
    : `the judgement changes from ${base.judgement} to ${variant.judgement}`;
}

function heat({ heat: saved, heatPerThickness }: AgainstBase): string[] {
  if (saved === null || Math.abs(saved) < LEAST_HEAT) return [];
  const amount = `${formatQuantity(Math.abs(saved), "heat over the year")} of heat a year`;
  if (saved < 0) return [`it loses ${amount} more`];
  return [
    `it saves ${amount}${heatPerThickness === null ? "" : `, ${formatNumber(heatPerThickness * TEN_MILLIMETRES, 1)} for each 10 mm`}`,
  ];
}

function cost({ extraCost, yearsToPay }: AgainstBase, currency: string): string[] {
  if (extraCost === null) return [];
  const amount = moneyInWords(extraCost, currency);
  if (Math.abs(extraCost) < LEAST_MONEY) return ["it costs the same"];
  if (extraCost < 0) return [`it costs ${amount}/m² less`];
  const pays = yearsToPay === null ? "" : `, paid back ${yearsInWords(yearsToPay)}`;
  return [`it costs ${amount}/m² more${pays}`];
}

/** The heat saved is overstated, so this is the shortest time possible. */
function yearsInWords(years: number): string {
  if (years > LONGEST) return `not before ${LONGEST} years`;
  return years < 1
    ? "within a year at the earliest"
    : `not before ${formatNumber(years, 0)} ${years < 1.5 ? "year" : "years"}`;
}

/** Differences below this are not mentioned: heat [kWh/m²], and a hundredth of the currency. */
const LEAST_HEAT = 0.05;
const LEAST_MONEY = 0.005;
const LONGEST = 100;
/** [m] */
const TEN_MILLIMETRES = 0.01;
