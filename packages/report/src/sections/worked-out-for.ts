import type { ClimateResult, MonthOfAir, ProjectResult, RoomResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { fixed, PER_CENT } from "../numbers.ts";
import { airPlot } from "../plots/air-plot.ts";
import { toSvg } from "../plots/to-svg.ts";
import { tableMarkup } from "../table.ts";
import { climatePlace, roomWords, sentence, shortMonth } from "../words.ts";
import { figure } from "./figure.ts";

/**
 * What the answer was worked out for: the place and its year, the rooms, where the figures come from.
 *
 * @param result - the project's result
 * @returns the section
 */
export async function workedOutFor(result: ProjectResult): Promise<Html> {
  const rooms = await Promise.all(result.rooms.map((room, index) => roomPart(room, result.climate, index + 1)));
  const title = `Outdoor air of ${climatePlace(result.climate)}, month by month`;
  const drawn = toSvg(airPlot([{ name: "outdoors", months: result.climate.months }], title), "climate-plot");
  const plot = figure(drawn, "Outdoor air, month by month. Its table has the figures.", "small");
  return html`<section id="worked-out-for"><h2>What it was worked out for</h2>
<h3>Outdoors: ${climatePlace(result.climate)}</h3>
${placeWords(result.climate)}
<div class="pair">${await plot}${airTable(`Outdoor air, ${result.climate.severity}`, result.climate.months)}</div>
${origin(result.climate)}
${rooms}
${oddities(result)}
</section>`;
}

function placeWords(climate: ClimateResult): Html {
  const at = [
    climate.latitude === null ? null : `latitude ${fixed(climate.latitude, 2)}°`,
    climate.longitude === null ? null : `longitude ${fixed(climate.longitude, 2)}°`,
    climate.altitude === null ? null : `${fixed(climate.altitude, 0)} m above the sea`,
  ].filter((part) => part !== null);
  const lift = climate.altitudeCorrection;
  const correction = lift
    ? ` Corrected from the station's height to the site's ${fixed(lift.siteAltitude, 0)} m, at ${fixed(lift.lapseRate * METRES_PER_KILOMETRE, 1)} K/km.`
    : "";
  return html`<p>${climatePlace(climate) === climate.name ? null : `Climate table “${climate.name}”. `}Year: ${climate.severity}.${at.length > 0 ? ` ${sentence(at.join(", "))}.` : null}${correction}</p>`;
}

const METRES_PER_KILOMETRE = 1000;

function origin(climate: ClimateResult): Html {
  const lines = climate.origin.filter((line) => line.trim() !== "");
  return lines.length === 0
    ? html`<p class="aside">The climate table says nothing about its origin.</p>`
    : html`<div class="origin" id="climate-origin"><h4>Origin of the climate table</h4><ul>${lines.map((line) => html`<li>${line}</li>`)}</ul></div>`;
}

async function roomPart(room: RoomResult, climate: ClimateResult, number: number): Promise<Html> {
  const name = roomWords(room.name);
  const airs = [
    { name: "outdoors", months: climate.months },
    { name: room.name, months: room.months },
  ];
  const plot = figure(
    toSvg(airPlot(airs, `Air of ${name} beside the outdoor air`), `room-plot-${number}`),
    `Air of ${name} (whole line) beside the outdoor air (dashed). Its table has the figures.`,
    "small",
  );
  return html`<section class="room"><h3>Room: ${room.name}</h3>
<p>Temperature: ${room.temperatureRule}. Humidity: ${room.humidityRule}. <span class="source">Source: ${room.source}.</span></p>
<div class="pair">${await plot}${airTable(`Air of ${name}, month by month`, room.months)}</div></section>`;
}

function airTable(caption: string, months: readonly MonthOfAir[]): Html {
  return tableMarkup({
    caption,
    columns: [
      { head: "Month", kind: "words" },
      { head: "Temperature", unit: "°C", kind: "figures" },
      { head: "Relative humidity", unit: "%", kind: "figures" },
      { head: "Vapour pressure", unit: "Pa", kind: "figures" },
    ],
    rows: months.map(({ month, temperature, relativeHumidity, vapourPressure }) => [
      shortMonth(month),
      fixed(temperature, 1),
      fixed(relativeHumidity * PER_CENT, 1),
      fixed(vapourPressure, 0),
    ]),
  });
}

function oddities(result: ProjectResult): Html | null {
  if (result.oddities.length === 0) return null;
  const entries = result.oddities.map(
    ({ message, path, accepted }) =>
      html`<li>${message} <span class="aside">(${path}; ${accepted ? "confirmed under accept" : "not confirmed under accept"})</span></li>`,
  );
  return html`<h3>Odd values</h3><ul>${entries}</ul>`;
}
