import { type Html, html } from "../html.ts";

/**
 * Cautions for whoever builds from the report.
 *
 * @returns the section
 */
export function cautions(): Html {
  return html`<section id="cautions"><h2>Cautions</h2><ul>
<li>A figure here is as good as the values that went in. Take conductivity and vapour resistance from the maker’s declaration of the product that is really bought, and work it out again when a product changes.</li>
<li>Wet rooms (drying clay, showers, drying laundry) belong to humidity class 4 or 5. A room that turns out wetter than stated makes the answer void.</li>
<li>A vapour layer works only when it is whole. Every hole for a socket, pipe or screw counts; the part on other assumptions says how much.</li>
<li>This report is not an approval. The building-control body decides, and may ask for an assessment by another method.</li>
<li>Structure, fire, sound, radon and electrical safety are not looked at.</li>
</ul></section>`;
}
