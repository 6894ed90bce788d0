import { inBrackets } from "../by-hand/printed.ts";
import { surfaceByHand } from "../by-hand/surface-by-hand.ts";
import { type Html, html } from "../html.ts";
import { fixed, percent } from "../numbers.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { shortMonth } from "../words.ts";
import type { AnnexOf, Part } from "./part.ts";

/** The inside surface: temperature factor against the factor required each month. */
export function surfacePart(page: AnnexOf): Part | null {
  const { buildUp } = page;
  const { surface, heat } = buildUp;
  if (!surface || !heat) return null;
  const required = heat.requiredTemperatureFactor;
  const answer =
    required === null
      ? html`<p>Temperature factor <strong>${fixed(heat.temperatureFactor, 3)}</strong>. No month requires one${surface.reason ? `: ${surface.reason}` : null}.</p>`
      : html`<p>Temperature factor <strong>${fixed(heat.temperatureFactor, 3)}</strong> against <strong>${fixed(required, 3)}</strong> required to keep mould off, in ${heat.criticalMonth ?? "the critical month"}: <strong>${required > 1 ? "no construction meets it; ventilate or dry the room" : heat.temperatureFactor >= required ? "enough" : "not enough"}</strong>. Corners, reveals and junctions are lower and are not covered.</p>`;
  const body = html`${answer}
${factors(page)}
<div class="pair">${requiredTable(page)}${byHand(page)}</div>
${surface.condensationMonths.length > 0 ? html`<p>The room surface itself is at saturation in ${surface.condensationMonths.join(", ")}.</p>` : null}
${
  surface.humidityStood
    ? html`<p>In ${surface.humidityStood.month}, the worst month, mould risk begins above ${percent(surface.humidityStood.mould, 0)} room humidity and drops form above ${percent(surface.humidityStood.condensation, 0)}.</p>`
    : null
}
${
  surface.otherFace
    ? html`<p>The other face: temperature factor ${fixed(surface.otherFace.temperatureFactor, 3)}${surface.otherFace.required === null ? ", none required" : ` against ${fixed(surface.otherFace.required, 3)} in ${surface.otherFace.criticalMonth}`}.${surface.otherFace.condensationMonths.length > 0 ? ` It is at saturation in ${surface.otherFace.condensationMonths.join(", ")}.` : null}</p>`
    : null
}
${junctions(page)}`;
  return { heading: "Inside surface", body };
}

function factors({ buildUp }: AnnexOf): Html {
  const parts = buildUp.surface!.temperatureFactors.map(({ where, factor }) => `${where} ${fixed(factor, 3)}`);
  const openOrClosed = buildUp.surface!.slightVentilationCase;
  const ofCase = openOrClosed ? ` The slightly ventilated air layer is taken as ${CASE_IN_WORDS[openOrClosed]}` : null;
  return html`<p class="aside">By place: ${parts.join(", ")}. The lowest counts.${ofCase}</p>`;
}

/** The case of a slightly ventilated air layer that gives the colder surface. */
const CASE_IN_WORDS = {
  closed: "closed, the colder of its two cases.",
  open: "well ventilated, the colder of its two cases: neither it nor what lies beyond it counts.",
} as const;

function requiredTable({ buildUp }: AnnexOf): Html {
  const surface = buildUp.surface!;
  const cell = (factor: number | null): string => (factor === null ? "–" : fixed(factor, 3));
  return tableMarkup({
    caption: "Required temperature factor",
    columns: [wordsUnder("Month"), figuresUnder("against mould"), figuresUnder("against drops")],
    rows: surface.required.map(({ month, mould, condensation }) => [
      shortMonth(month),
      cell(mould),
      cell(condensation),
    ]),
    marked: surface.required.flatMap(({ month }, index) => (month === surface.critical.mould?.month ? [index] : [])),
  });
}

function byHand({ buildUp, result }: AnnexOf): Html | null {
  const room = result.rooms.find(({ name }) => name === buildUp.room);
  const steps = room ? surfaceByHand(buildUp.surface!, room.months, buildUp.farSide.months) : null;
  if (!steps) return null;
  const { indoor, outdoorTemperature, neededSaturation, leastSurfaceTemperature, required } = steps;
  return html`<section class="by-hand" data-by-hand="surface"><h5>Hand check: the factor required in ${steps.month}</h5><ol class="steps">
<li>Saturation pressure the surface needs: pi / 0.8 = ${indoor.pressure.text} / 0.8 = <b>${neededSaturation.text}</b> Pa</li>
<li>Air is saturated with that at <b>${leastSurfaceTemperature.text}</b> °C</li>
<li>Required factor = (${leastSurfaceTemperature.text} − ${inBrackets(outdoorTemperature)}) / (${indoor.temperature.text} − ${inBrackets(outdoorTemperature)}) = <b>${required.text}</b></li>
</ol></section>`;
}

function junctions({ buildUp }: AnnexOf): Html | null {
  const given = buildUp.surface!.junctions;
  if (given.length === 0) return null;
  const words = (meets: boolean | null): string => (meets === null ? "not asked" : meets ? "meets it" : "too low");
  return tableMarkup({
    caption: "Junctions, stated or calculated in the plane",
    columns: [wordsUnder("Junction"), figuresUnder("Factor"), wordsUnder("against mould"), wordsUnder("against drops")],
    rows: given.map(({ name, factor, meetsMould, meetsCondensation }) => [
      name,
      fixed(factor, 3),
      words(meetsMould),
      words(meetsCondensation),
    ]),
  });
}
