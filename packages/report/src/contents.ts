import { type Html, html } from "./html.ts";

/** An entry of the contents: a part of the document and the page on which it begins in print. */
export interface Entry {
  id: string;
  title: string;
  /** Null where it is not known before printing. */
  page: number | null;
}

/**
 * The list of contents, each entry a link; in print its page number.
 *
 * @param entries - in the order of the document
 * @returns the navigation of the page
 */
export function contents(entries: readonly Entry[]): Html {
  return html`<nav class="contents" aria-labelledby="contents-heading"><h2 id="contents-heading">Contents</h2><ul>${entries.map(
    ({ id, title, page }) =>
      html`<li><a href="#${id}">${title}</a>${page === null ? null : html`<span class="page-number">${page}</span>`}</li>`,
  )}</ul></nav>`;
}
