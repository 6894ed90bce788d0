/** A town of the gazetteer: degrees, north and east positive. */
export interface Town {
  name: string;
  /** Two letters. Source: ISO 3166-1. */
  country: string;
  latitude: number;
  longitude: number;
}

/**
 * Towns with a name, whatever its case, accents, hyphens and spaces; a country's two letters may follow a comma.
 *
 * @param written - such as `Bath`, `Bath, GB`
 * @param towns - one line a town, largest first: name, country, latitude, longitude with `|` between them
 * @returns those of that name, largest first
 */
export function findTowns(written: string, towns: string): Town[] {
  const [name = "", country = ""] = written.split(",").map(comparableName);
  if (name === "") return [];
  return towns
    .split("\n")
    .map((line) => line.split("|"))
    .filter(([town, code]) => comparableName(town!) === name && (country === "" || code!.toLowerCase() === country))
    .map(([town, code, latitude, longitude]) => ({
      name: town!,
      country: code!,
      latitude: Number(latitude),
      longitude: Number(longitude),
    }));
}

function comparableName(name: string): string {
  return name
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[\s_-]+/g, " ")
    .trim();
}
