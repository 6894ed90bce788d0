import type { Material } from "@warmside/core";

/** A material that was looked for. */
export interface FoundMaterial {
  material: Material;
  /** Its other name, if it was found by that; null if it was found by its own. */
  alsoCalled: string | null;
}

/**
 * Searches materials by words: each must be a word of the name, group or kind or the beginning of one, or another name
 * of the material; all of them together may be another name too.
 *
 * @param wanted - lower case, at least one
 * @param table - where to look
 * @returns those that are found, in the table's order
 */
export async function searchMaterials(wanted: readonly string[], table: readonly Material[]): Promise<FoundMaterial[]> {
  const { everydayName } = await import("@warmside/core");
  const isCalled = ({ name }: Material, other: string): boolean =>
    everydayName(other)?.materials.includes(name) === true;
  const phrase = wanted.join(" ");
  return table.flatMap((material): FoundMaterial[] => {
    const own = wordsIn(`${material.name} ${material.group ?? ""} ${material.kind ?? ""}`);
    const others = wanted.filter((word) => !own.some((one) => one.startsWith(word)));
    if (others.length === 0) return [{ material, alsoCalled: null }];
    if (isCalled(material, phrase)) return [{ material, alsoCalled: phrase }];
    return others.every((word) => isCalled(material, word)) ? [{ material, alsoCalled: others.join(", ") }] : [];
  });
}

/**
 * The words of a name; hyphens part words, apostrophes do not.
 *
 * @param text - a name, or what was asked for
 * @returns lower case
 * @example wordsIn("Foil-faced PIR board") // ["foil", "faced", "pir", "board"]
 */
export function wordsIn(text: string): string[] {
  return text
    .normalize("NFC")
    .toLowerCase()
    .replace(/['’]/g, "")
    .split(/[\s_-]+/)
    .filter((word) => word !== "");
}
