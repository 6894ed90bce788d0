/**
 * Makes the beginning of an id from a name: lower case, hyphens, different from all slugs made before.
 *
 * @param name - the user's own words
 * @param taken - slugs already given; the new one is added
 * @returns the slug
 * @example makeSlug("Studio wall", new Set()) // "studio-wall"
 */
export function makeSlug(name: string, taken: Set<string>): string {
  const plain = name.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase();
  const hyphened = plain.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "") || "build-up";
  let slug = hyphened;
  for (let number = 2; taken.has(slug); number += 1) slug = `${hyphened}-${number}`;
  taken.add(slug);
  return slug;
}
