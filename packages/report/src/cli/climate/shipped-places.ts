import type { RecordsPlace } from "@warmside/core";

/** A place whose climate is shipped, and the file of records it is made from. */
export interface ShippedPlace extends RecordsPlace {
  /** Name in project files; `NAME.csv` in climate/. */
  name: string;
  /** The file in the folder of records. */
  records: string;
}

/** What all stations of one source have in common. */
type SourceTerms = Pick<RecordsPlace, "origin" | "terms" | "acknowledgement">;

const EUROPEAN: SourceTerms = {
  origin:
    "daily means of air temperature and relative humidity, European Climate Assessment & Dataset (ECA&D), as arranged in " +
    "the open weather prediction dataset by F. Huber (Zenodo 10.5281/zenodo.7525955), where up to 5 % of a column's " +
    "missing days were filled with the column's mean",
  terms:
    "ECA&D data can be used freely provided that the source is acknowledged; its own policy page speaks of " +
    "non-commercial research and education (from memory). The arrangement is under the MIT licence",
  acknowledgement:
    "Klein Tank, A.M.G. and Coauthors, 2002. Daily dataset of 20th-century surface air temperature and precipitation " +
    "series for the European Climate Assessment. Int. J. of Climatol., 22, 1441-1453",
};

const AMERICAN: SourceTerms = {
  origin:
    "hourly air temperature and relative humidity of a typical meteorological year, NREL Typical Meteorological Year 3 " +
    "(TMY3): twelve months picked from different years as typical, not a mean of years",
  terms: "a work of the United States Government, public domain",
  acknowledgement: null,
};

/** Every place whose climate is shipped, Europe first, by name. Positions are the station list's unless `from memory`. */
export const SHIPPED_PLACES: readonly ShippedPlace[] = [
  european("basel", "Basel Binningen", "Switzerland", 47.533, 7.583, 316),
  european("budapest", "Budapest", "Hungary", 47.511, 19.021, 153),
  european("de-bilt", "De Bilt", "Netherlands", 52.1, 5.18, 2, "from memory"),
  european("dresden", "Dresden Wahnsdorf", "Germany", 51.117, 13.683, 246),
  european("dusseldorf", "Düsseldorf", "Germany", 51.3, 6.78, 37, "from memory"),
  european("heathrow", "London Heathrow", "United Kingdom", 51.479, -0.449, 25),
  european("kassel", "Kassel", "Germany", 51.298, 9.444, 231),
  european("ljubljana", "Ljubljana Bežigrad", "Slovenia", 46.066, 14.513, 299),
  european("maastricht", "Maastricht", "Netherlands", 50.905, 5.762, 114),
  european("montelimar", "Montélimar", "France", 44.581, 4.733, 73),
  european("munich", "Munich", "Germany", 48.164, 11.544, 515),
  european("oslo", "Oslo Blindern", "Norway", 59.943, 10.721, 94),
  european("perpignan", "Perpignan", "France", 42.737, 2.873, 42),
  european("rome", "Rome Ciampino", "Italy", 41.783, 12.583, 105),
  european("tours", "Tours", "France", 47.444, 0.727, 108),
  american("albuquerque-new-mexico", "Albuquerque, New Mexico", 723650, 35.04, -106.62, 1619),
  american("greensboro-north-carolina", "Greensboro, North Carolina", 723170, 36.1, -79.95, 273),
  american("melbourne-florida", "Melbourne, Florida", 722040, 28.117, -80.65, 11),
  american("sand-point-alaska", "Sand Point, Alaska", 703165, 55.317, -160.517, 7),
];

function european(
  name: string,
  place: string,
  country: string,
  latitude: number,
  longitude: number,
  altitude: number,
  position: "of the station list" | "from memory" = "of the station list",
): ShippedPlace {
  const where = { name, records: `daily-${name}.csv`, place, country, latitude, longitude, altitude };
  const origin = `${EUROPEAN.origin}; latitude, longitude and altitude ${position}`;
  return { ...where, ...EUROPEAN, origin };
}

function american(
  name: string,
  place: string,
  station: number,
  latitude: number,
  longitude: number,
  altitude: number,
): ShippedPlace {
  const where = { name, records: `hourly-${name}.csv`, place, country: "United States", latitude, longitude, altitude };
  return { ...where, ...AMERICAN, origin: `${AMERICAN.origin}; station ${station}` };
}
