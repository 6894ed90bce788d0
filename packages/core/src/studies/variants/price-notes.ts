import { comparable } from "../../problems/near-names.ts";
import { inSpeech } from "../../problems/wording.ts";
import type { BuildUp, PriceEntry, PriceUnit, Project } from "../../project/types.ts";
import { plainDigits } from "../../quantities/format-quantity.ts";
import { type Goods, goodsOf } from "./goods.ts";
import { priceFor } from "./price-for.ts";
import { TAPE } from "./tape.ts";

/** Units in which the price does not rise with thickness: a price given for any thickness then hides the difference. */
const WHATEVER_THE_THICKNESS: readonly PriceUnit[] = ["m2", "roll", "sheet", "m"];

/**
 * Notes odd prices: those that are never used, and those used for several thicknesses alike.
 *
 * @param project - the project with its prices
 * @returns sentences; none if there are no prices
 */
export function priceNotes({ buildUps, prices }: Project): string[] {
  if (prices === null) return [];
  const all = buildUps.flatMap((buildUp) => [buildUp, ...buildUp.variants.map((variant) => variant.buildUp)]);
  const goods = all.flatMap((buildUp: BuildUp) => goodsOf(buildUp));
  return [...unused(prices.entries, goods), ...usedAlike(prices.entries, goods)];
}

function unused(entries: readonly PriceEntry[], goods: readonly Goods[]): string[] {
  const used = new Set([TAPE, ...goods.map(({ material }) => comparable(material))]);
  const names = entries.flatMap(({ material }) => (used.has(comparable(material)) ? [] : [material]));
  return [...new Set(names)].map(
    (name) => `No build-up uses ${name}, which has a price: check the spelling of the name.`,
  );
}

function usedAlike(entries: readonly PriceEntry[], goods: readonly Goods[]): string[] {
  return entries.flatMap((entry) => {
    if (entry.thickness !== null || !WHATEVER_THE_THICKNESS.includes(entry.per)) return [];
    const priced = goods.filter((one) => one.thickness !== null && priceFor(one, entries) === entry);
    const millimetres = [...new Set(priced.map(({ thickness }) => Number(plainDigits(thickness! * 1000))))];
    if (millimetres.length < 2) return [];
    const thicknesses = millimetres.sort((one, other) => one - other).map((one) => `${one} mm`);
    return [
      `The price of ${entry.material} per ${entry.per} is used for ${inSpeech(thicknesses, "and")} alike: state its thickness.`,
    ];
  });
}
