import { type Html, html } from "./html.ts";

/**
 * A plot with its message above and its caption below, kept whole in print.
 *
 * @param message - what there is to see in it, a short sentence
 * @param drawing - the SVG element, or the promise of one
 * @param caption - how it is read
 * @returns the figure
 */
export async function figure(
  message: string | Html,
  drawing: Html | Promise<Html>,
  caption: string | Html,
): Promise<Html> {
  return html`<figure class="wide"><p class="plot-title"><strong>${message}</strong></p>${await drawing}<figcaption>${caption}</figcaption></figure>`;
}
