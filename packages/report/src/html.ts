import { escapeText } from "./escape.ts";

/** A piece of markup that may be put into the page as it stands. Only `html` and `markup` make one. */
export class Html {
  readonly text: string;

  constructor(text: string) {
    this.text = text;
  }
}

/** What may stand in a template: text and numbers are escaped, pieces of markup are not, nothing is left out. */
export type Insertion = string | number | Html | null | undefined | false | readonly Insertion[];

/**
 * Markup from a template in which every inserted text is escaped.
 *
 * @param parts - the markup between the insertions, written in the source
 * @param insertions - texts, numbers, pieces of markup, or lists of them
 * @returns the piece of markup
 */
export function html(parts: TemplateStringsArray, ...insertions: readonly Insertion[]): Html {
  const pieces = parts.map((part, index) => part + (index < insertions.length ? inserted(insertions[index]) : ""));
  return new Html(pieces.join(""));
}

/**
 * Markup that is already whole, such as a drawing.
 *
 * @param text - markup made by this package, never text from a file
 * @returns the piece of markup
 */
export function markup(text: string): Html {
  return new Html(text);
}

/** The class attribute of what begins a page in print; nothing where it does not. */
export function pageClass(beginsPage: boolean): Html | null {
  return beginsPage ? BEGINS_PAGE : null;
}

const BEGINS_PAGE = markup(' class="page"');

function inserted(insertion: Insertion): string {
  if (insertion === null || insertion === undefined || insertion === false) return "";
  if (insertion instanceof Html) return insertion.text;
  if (typeof insertion === "string") return escapeText(insertion);
  if (typeof insertion === "number") return escapeText(String(insertion));
  return insertion.map(inserted).join("");
}
