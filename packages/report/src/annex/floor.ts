import { DAYS_IN_MONTH, type FloorBasis, type HeatResult, type MonthOfAir } from "@warmside/core";
import { DECIMALS_OF_GIVEN, type FloorByHand, floorByHand, type VoidByHand } from "../by-hand/floor-by-hand.ts";
import { DECIMALS, inBrackets, type Printed, printed } from "../by-hand/printed.ts";
import { type Html, html } from "../html.ts";
import { fixed, trimmed } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import type { AnnexOf } from "./part.ts";

/**
 * A floor on the ground or over a void: its input, every formula with its figures, and the void's temperatures.
 *
 * @param page - the build-up's pages
 * @param resistance - R of the floor with its surfaces, as the sum by hand came to it [m²·K/W]
 * @returns the section; null for what is no such floor
 */
export function floorPart(page: AnnexOf, resistance: Printed): Html | null {
  const heat = page.buildUp.heat;
  const basis = heat?.groundBasis ?? null;
  if (!heat || basis === null) return null;
  const sum = floorByHand(basis, resistance, heat);
  return html`${given(basis)}
<section class="by-hand" data-by-hand="floor"><h5>Hand check: the floor and the ground, ISO 13370:2017</h5>
${heat.slightVentilation ? html`<p>With the slightly ventilated air layer as far open as above; calculated without rounding, U itself is taken between the closed and the open case.</p>` : null}
<ol class="steps">${sum.steps.map(({ symbol, formula, outcome, unit }) => html`<li>${symbol} = ${formula} = <b>${outcome.text}</b> ${unit}</li>`)}${voidStep(page, basis, sum)}</ol>
<p class="aside">Calculated without rounding: U ${fixed(heat.transmittance, 4)}.</p></section>
${whatIsAssumed(page, basis)}${working(heat)}`;
}

/** The figures stated in the file, or the defaults. */
function given(basis: FloorBasis): Html {
  const { edgeInsulation: edge, void: space } = basis;
  const rows: [string, string, string, string][] = [
    ["area", "A", figure(basis.area), "m²"],
    ["exposed perimeter", "P", figure(basis.perimeter), "m"],
    ["thickness of the walls", "dw", figure(basis.wallThickness), "m"],
    [`conductivity of the ground: ${basis.soil}`, "λg", figure(basis.soilConductivity), "W/(m·K)"],
    ["surface, inside", "Rsi", figure(basis.surfaceResistanceInside), "m²·K/W"],
    ["surface, outside", "Rse", figure(basis.surfaceResistanceOutside), "m²·K/W"],
  ];
  if (edge !== null)
    rows.push(
      ["edge insulation, resistance", "Rn", figure(edge.resistance), "m²·K/W"],
      ["edge insulation, thickness", "dn", figure(edge.thickness), "m"],
      [`edge insulation, ${edge.upright ? "upright, depth" : "level, width"}`, "D", figure(edge.extent), "m"],
    );
  if (space !== null)
    rows.push(
      ["height of the floor above the ground outside", "h", figure(space.height), "m"],
      ["transmittance of the void’s walls", "Uw", figure(space.wallTransmittance), "W/(m²·K)"],
      ["openings for each metre of perimeter", "ε", figure(space.openings), "m²/m"],
      ["mean wind at 10 m", "v", figure(space.windSpeed), "m/s"],
      [`wind shielding: ${space.shelter}`, "fw", figure(space.windShielding), "–"],
      ["insulation on the void’s ground", "Rg", figure(space.groundInsulation), "m²·K/W"],
    );
  return tableMarkup({
    caption: "Floor and ground, ISO 13370:2017: what it is worked out from",
    columns: COLUMNS,
    rows,
  });
}

const COLUMNS = [wordsUnder("Quantity"), wordsUnder("Symbol"), figuresUnder("Value"), wordsUnder("Unit")] as const;

function figure(value: number): string {
  return trimmed(value, DECIMALS_OF_GIVEN);
}

function working({ ground }: HeatResult): Html {
  return tableMarkup({
    caption: "Floor and ground: the same without rounding",
    columns: COLUMNS,
    rows: (ground ?? []).map(({ name, symbol, value, unit }) => [name, symbol, fixed(value, 4), unit]),
  });
}

/** The void's air in the critical month, if it was calculated and not stated. */
function voidStep({ result, view }: AnnexOf, basis: FloorBasis, sum: FloorByHand): Html | null {
  if (sum.void === null || view === null || basis.void?.isAirStated) return null;
  const month = view.deciding.month;
  const outdoors = result.climate.months.find((entry) => entry.month === month);
  if (outdoors === undefined) return null;
  const inside = printed(view.deciding.indoor.temperature, DECIMALS.temperature);
  const outside = printed(outdoors.temperature, DECIMALS.temperature);
  const year = printed(meanOfYear(result.climate.months), DECIMALS.temperature);
  return html`<li>Air of the void in ${month}: θu = (Uf × θi + Ug × θe,year + Ux × θe) / (Uf + Ug + Ux) = ${voidFormula(sum.void, inside, year, outside)} °C</li>`;
}

function voidFormula({ floor, ground, outdoors }: VoidByHand, inside: Printed, year: Printed, outside: Printed): Html {
  const heatIn = floor.value * inside.value + ground.value * year.value + outdoors.value * outside.value;
  const temperature = printed(heatIn / (floor.value + ground.value + outdoors.value), DECIMALS.temperature);
  return html`(${floor.text} × ${inside.text} + ${ground.text} × ${inBrackets(year)} + ${outdoors.text} × ${inBrackets(outside)}) / (${floor.text} + ${ground.text} + ${outdoors.text}) = <b>${temperature.text}</b>`;
}

/** Mean of the outdoor temperature over the year, weighted by days [°C]. */
function meanOfYear(months: readonly MonthOfAir[]): number {
  const days = DAYS_IN_MONTH.reduce((sum, count) => sum + count, 0);
  return months.reduce((sum, { temperature }, index) => sum + temperature * DAYS_IN_MONTH[index]!, 0) / days;
}

function whatIsAssumed({ buildUp }: AnnexOf, basis: FloorBasis): Html {
  return basis.void === null
    ? html`<p>Below the slab: ${buildUp.farSide.rule}, in every month alike.</p>`
    : html`<p>The void: ${buildUp.farSide.rule}.${basis.void.isAirStated ? null : " The ground below it counts at the year’s mean outdoor temperature, θe,year; damp ground makes the void wetter than this."}</p>`;
}
