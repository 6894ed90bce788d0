import type { BuildUpResult, SheetPlaces } from "@warmside/core";

/**
 * The flags of a moment ago, for the build-up as it is now: moving the sheet does not change the result of each place, as
 * long as the other layers keep their order.
 *
 * @param places - as they were worked out
 * @param names - of all layers when they were worked out
 * @param result - the build-up now
 * @returns the places with the sheet where it is now; null where they are of other layers
 */
export function placesNow(places: SheetPlaces, names: readonly string[], result: BuildUpResult): SheetPlaces | null {
  const others = names.filter((_, index) => index !== places.own);
  const now = result.layers.map(({ name }) => name);
  if (sameNames(now, others)) return withSheetAt(places, null);
  const at = now.findIndex((name, index) => name === places.name && sameNames(now.toSpliced(index, 1), others));
  return at === -1 ? null : withSheetAt(places, at);
}

function withSheetAt(places: SheetPlaces, own: number | null): SheetPlaces {
  return { ...places, own, places: places.places.map((place) => ({ ...place, isDrawn: place.at === own })) };
}

function sameNames(one: readonly string[], other: readonly string[]): boolean {
  return one.length === other.length && one.every((name, index) => name === other[index]);
}
