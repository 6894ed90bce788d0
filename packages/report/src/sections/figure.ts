import { type Html, html } from "../html.ts";

/**
 * A drawing or plot with its caption, kept whole in print.
 *
 * @param drawing - the SVG element, or the promise of one
 * @param caption - what it shows and where its figures stand
 * @param size - "small", "plain" or "wide"
 * @returns the figure
 */
export async function figure(
  drawing: Html | Promise<Html>,
  caption: string | Html,
  size: "small" | "plain" | "wide",
): Promise<Html> {
  return html`<figure class="${size}">${await drawing}<figcaption>${caption}</figcaption></figure>`;
}
