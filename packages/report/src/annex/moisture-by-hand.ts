import type { BuildUpResult } from "@warmside/core";
import { moistureByHand } from "../by-hand/moisture-by-hand.ts";
import { inBrackets } from "../by-hand/printed.ts";
import type { MoistureByHand } from "../by-hand/types.ts";
import { type Html, html } from "../html.ts";
import { fixed } from "../numbers.ts";
import type { SectionView } from "../section-view.ts";
import { figuresUnder, tableMarkup, wordsUnder } from "../table.ts";
import { sentence, sideWords } from "../words.ts";

/**
 * The deciding month written out so that anyone with a pocket calculator gets the same figure.
 *
 * @param view - the governing section
 * @param buildUp - its build-up, for the surface resistances
 * @returns the steps with their numbers
 */
export function moistureByHandPart(view: SectionView, buildUp: BuildUpResult): Html | null {
  if (!buildUp.heat) return null;
  const surfaces = {
    inside: buildUp.heat.surfaceResistanceInside,
    outside: buildUp.heat.surfaceResistanceOutsideMoisture,
  };
  const isGround = buildUp.heat.groundResistance !== null;
  const sum = moistureByHand(view, surfaces);
  return html`<section class="by-hand" data-by-hand="moisture"><h5>Hand check: ${sum.month}</h5>
<p>Each step uses the rounded figures above.</p>
<ol class="steps">
<li>Air of the room: ${sum.indoor.temperature.text} °C, ${sum.indoor.pressure.text} Pa. Other side (${sideWords(view.buildUp).far}): ${sum.outdoor.temperature.text} °C${sum.underSky ? " under a clear sky" : null}, ${sum.outdoor.pressure.text} Pa.</li>
<li>Resistance from air to air: ${fixed(surfaces.inside, 2)} (room surface) + ${fixed(layersOf(view), 4)} (layers) + ${isGround ? fixed(surfaces.outside, 4) : fixed(surfaces.outside, 2)} (${isGround ? "ground" : "outer surface"}) = <b>${sum.totalResistance.text}</b> m²·K/W.</li>
<li>Temperature at a place: θ = ${sum.indoor.temperature.text} − (${sum.indoor.temperature.text} − ${inBrackets(sum.outdoor.temperature)}) × R to there / ${sum.totalResistance.text}. Saturation pressure: 610.5 × exp(17.269 θ / (237.3 + θ)) from 0 °C up, 610.5 × exp(21.875 θ / (265.5 + θ)) below.</li>
</ol>
${nodes(sum)}
${sum.balances.length > 0 ? flowSteps(sum) : drySteps(sum)}</section>`;
}

function layersOf(view: SectionView): number {
  return view.section.layers.reduce((sum, { resistance }) => sum + resistance, 0);
}

function nodes(sum: MoistureByHand): Html {
  return tableMarkup({
    caption: `Temperatures, saturation and vapour line, ${sum.month}`,
    columns: [
      wordsUnder("Place"),
      figuresUnder("R to there", "m²·K/W"),
      figuresUnder("Temperature θ", "°C"),
      figuresUnder("Saturation", "Pa"),
      figuresUnder("sd to there", "m"),
      figuresUnder("Vapour pressure", "Pa"),
    ],
    rows: sum.nodes.map(({ place, resistance, temperature, saturation, sd, pressure }) => [
      place,
      resistance.text,
      temperature.text,
      saturation.text,
      sd.text,
      pressure.text,
    ]),
  });
}

function flowSteps(sum: MoistureByHand): Html {
  const name = (node: number): string => sum.nodes.find((entry) => entry.node === node)?.short ?? "";
  const place = (node: number) => sum.nodes.find((entry) => entry.node === node)!;
  const flows = sum.flows.map(({ from, to, grams }) => {
    const before = place(from);
    const after = place(to);
    return html`<li>From ${name(from)} to ${name(to)}: ${sum.gramsPerPascal.text} × (${before.pressure.text} − ${after.pressure.text}) / (${after.sd.text} − ${before.sd.text}) = <b>${grams.text}</b> g/m²</li>`;
  });
  const balances = sum.balances.map(({ place: where, arrives, leaves, change, before, counted, calculated }) => {
    const more =
      counted.value !== change.value
        ? html` Only ${before.text} g/m² were there, so no more evaporates: <b>${counted.text}</b> g/m².`
        : null;
    return html`<li>${sentence(where)}: inflow minus outflow = ${arrives.text} − ${inBrackets(leaves)} = <b>${change.text}</b> g/m² in the month.${more} <span class="aside">Accumulated before: ${before.text} g/m². Calculated without rounding: <span class="calculated">${calculated.text}</span> g/m².</span></li>`;
  });
  return html`<p>At a place with water the vapour pressure is the saturation pressure; at a surface it is the air’s, at most saturation. Over ${sum.days} days one pascal drives 2·10⁻¹⁰ × ${sum.days} × 86 400 × 1000 = <b>${sum.gramsPerPascal.text}</b> g through each square metre of one metre of still air.</p>
<ol class="steps flows">${flows}</ol><ol class="steps balances">${balances}</ol>`;
}

function drySteps(sum: MoistureByHand): Html {
  const first = sum.nodes[0]!;
  const last = sum.nodes.at(-1)!;
  const steps = sum.nodes
    .slice(1, -1)
    .map(
      ({ place, pressure, saturation, sd }) =>
        html`<li>${sentence(place)}: ${first.pressure.text} − (${first.pressure.text} − ${last.pressure.text}) × ${sd.text} / ${last.sd.text} = <b>${pressure.text}</b> Pa, against ${saturation.text} Pa at saturation: ${pressure.value < saturation.value ? "no water" : "at saturation"}.</li>`,
    );
  return html`<p>With no water anywhere the vapour pressure falls in a straight line over sd.</p><ol class="steps dry">${steps}</ol>`;
}
