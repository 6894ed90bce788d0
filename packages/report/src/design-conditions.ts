import type { ClimateResult, MonthOfAir, ProjectResult, RoomResult } from "@warmside/core";
import { backticksAsCode } from "./backticks.ts";
import { type Html, html, pageClass } from "./html.ts";
import { fixed, NO_BREAK_SPACE, PER_CENT, signed } from "./numbers.ts";
import { type Column, figuresUnder, tableMarkup, wordsUnder } from "./table.ts";
import { symbolColumn } from "./terms/terms.ts";
import { climatePlace, roomWords, sentence, shortMonth } from "./words.ts";

/**
 * The design conditions: the place and its year, the rooms, month by month, and where the figures come from.
 *
 * @param result - the project's result
 * @param isBelow - whether they stand below something on their page (default no)
 * @returns the section
 */
export function designConditions(result: ProjectResult, isBelow = false): Html {
  const { climate, rooms } = result;
  const described = rooms.filter((room) => !isAsOutdoors(room, climate));
  const unheated = rooms.filter((room) => isAsOutdoors(room, climate));
  return html`<section id="design-conditions"${pageClass(!isBelow)}><h2>Design conditions</h2>
<p><strong>${climatePlace(climate)}</strong>, ${climate.severity}${placeWords(climate)}.${climatePlace(climate) === climate.name ? null : ` Climate table “${climate.name}”.`}</p>
${result.query?.site ? html`<p>Site: ${result.query.site}</p>` : null}
<ul>${described.map(
    ({ name, temperatureRule, humidityRule, source }) =>
      html`<li><strong>${sentence(roomWords(name))}</strong>: ${temperatureRule}; ${humidityRule}. <span class="aside">${source}.</span></li>`,
  )}${unheated.map(({ name, source }) => html`<li><strong>${sentence(roomWords(name))}</strong>: air as outdoors in every month. <span class="aside">${source}.</span></li>`)}</ul>
${groups(described, ROOMS_A_TABLE).map((some, index) => airTable(climate, some, index === 0))}
${origin(climate)}${oddities(result)}</section>`;
}

/** Rooms that share a table with the outdoor air. */
export const ROOMS_A_TABLE = 2;

/**
 * Whether a room has the outdoor air in every month.
 *
 * @param room - a room of the result
 * @param climate - the climate of the result
 * @returns true where its table would be the climate's again
 */
export function isAsOutdoors({ months }: RoomResult, { months: outdoors }: ClimateResult): boolean {
  return months.every(
    ({ temperature, vapourPressure }, index) =>
      temperature === outdoors[index]!.temperature && vapourPressure === outdoors[index]!.vapourPressure,
  );
}

function groups<Item>(items: readonly Item[], size: number): Item[][] {
  const made: Item[][] = [];
  for (let from = 0; from < Math.max(1, items.length); from += size) made.push(items.slice(from, from + size));
  return made;
}

function placeWords(climate: ClimateResult): string {
  const at = [
    climate.latitude === null ? null : `latitude ${fixed(climate.latitude, 2)}°`,
    climate.longitude === null ? null : `longitude ${fixed(climate.longitude, 2)}°`,
    climate.altitude === null ? null : `${fixed(climate.altitude, 0)}${NO_BREAK_SPACE}m above the sea`,
  ].filter((part) => part !== null);
  const lift = climate.altitudeCorrection;
  const corrected = lift
    ? `, corrected to the site’s ${fixed(lift.siteAltitude, 0)}${NO_BREAK_SPACE}m at ${fixed(lift.lapseRate * METRES_PER_KILOMETRE, 1)} K/km`
    : "";
  return `${at.length > 0 ? ` (${at.join(", ")})` : ""}${corrected}`;
}

const METRES_PER_KILOMETRE = 1000;

/**
 * Outdoor air and rooms side by side, to the digits that retrace what is made from them; of each room its vapour excess,
 * which is the pressure difference that drives vapour outwards.
 */
function airTable(climate: ClimateResult, rooms: readonly RoomResult[], withOutdoors: boolean): Html {
  const air = (prefix: string): Column[] => [
    figuresUnder(`${prefix} θ`, "°C"),
    symbolColumn("relative humidity"),
    symbolColumn("vapour pressure"),
  ];
  const cells = ({ temperature, relativeHumidity, vapourPressure }: MonthOfAir): string[] => [
    fixed(temperature, 2),
    fixed(relativeHumidity * PER_CENT, 1),
    fixed(vapourPressure, 2),
  ];
  return tableMarkup({
    caption: `Air month by month: ${[...(withOutdoors ? ["outdoors"] : []), ...rooms.map(({ name }) => roomWords(name))].join(", ")}`,
    columns: [
      wordsUnder("Month"),
      ...(withOutdoors ? air("Outdoors") : []),
      ...rooms.flatMap(({ name }) => [...air(name === "indoor" ? "Room" : sentence(name)), figuresUnder("Δp", "Pa")]),
    ],
    rows: climate.months.map((outdoors, index) => [
      shortMonth(outdoors.month),
      ...(withOutdoors ? cells(outdoors) : []),
      ...rooms.flatMap(({ months }) => [
        ...cells(months[index]!),
        signed(months[index]!.vapourPressure - outdoors.vapourPressure, 1),
      ]),
    ]),
    note: html`<p class="aside">θ temperature, φ relative humidity, p vapour pressure, Δp vapour excess over outdoors.</p>`,
  });
}

function origin(climate: ClimateResult): Html {
  const lines = climate.origin.filter((line) => line.trim() !== "");
  return lines.length === 0
    ? html`<p class="aside">The climate table says nothing about its origin.</p>`
    : html`<h3 id="climate-origin">Origin of the climate table</h3><p class="aside">${lines.join("; ")}</p>`;
}

function oddities({ oddities: found }: ProjectResult): Html | null {
  if (found.length === 0) return null;
  return html`<h3>Odd values</h3><ul>${found.map(
    ({ message, accepted }) =>
      html`<li>${backticksAsCode(message)} <span class="aside">(${accepted ? "confirmed in the file" : "not confirmed in the file"})</span></li>`,
  )}</ul>`;
}
