import { comparable } from "../problems/near-names.ts";
import type { EverydayName } from "../project/types.ts";
import { requireText } from "../require.ts";
import { SHIPPED_EVERYDAY_NAMES } from "../shipped-tables.ts";

/**
 * Looks up a name used on site; case, hyphens, spaces and a plural s make no difference.
 *
 * @param name - as the user wrote it
 * @returns the rows of the material table that may be meant, and what to ask; null for any other name
 * @example everydayName("OSB")?.materials // ["oriented strand board"]
 */
export function everydayName(name: string): EverydayName | null {
  requireText(name, "name");
  const wanted = comparable(name);
  return BY_NAME.get(wanted) ?? BY_NAME.get(wanted.replace(/s$/, "")) ?? null;
}

const BY_NAME: ReadonlyMap<string, EverydayName> = new Map(
  SHIPPED_EVERYDAY_NAMES.map((entry) => [comparable(entry.name), entry]),
);
