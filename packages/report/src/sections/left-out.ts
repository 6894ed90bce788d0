import { type Html, html } from "../html.ts";

/**
 * What the method leaves out; the same on every report.
 *
 * @returns the section
 */
export function leftOut(): Html {
  return html`<section id="left-out"><h2>What is left out</h2>
<p>The words <em>dry</em>, <em>dries out</em> and <em>sound</em> speak of vapour that moves by diffusion through whole layers, in one dimension, in steady months. They say nothing of:</p><ul>
<li>rain, splash, leaks, rising damp, and water that capillary flow carries;</li>
<li>water built in: wet timber, wet plaster, rain during the works;</li>
<li>air that moves through gaps or inside air spaces and insulation, which can carry far more water than diffusion;</li>
<li>moisture that materials store, and properties that change with it;</li>
<li>sun, clear nights (but where a clear sky was asked for), latent heat, and swings shorter than a month;</li>
<li>heat and vapour that move sideways: corners, reveals, junctions, fixings.</li>
</ul><p>Source: the scope of ISO 13788:2012 (from memory).</p></section>`;
}
