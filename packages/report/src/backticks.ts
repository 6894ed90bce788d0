import { type Html, html } from "./html.ts";

/**
 * A text in which words of the project file stand between backticks, for the page.
 *
 * @param text - any text; backticks without a partner stay as they are
 * @returns the text, those words as code
 */
export function backticksAsCode(text: string): Html {
  const pieces = text.split(/`([^`]+)`/);
  return html`${pieces.map((piece, index) => (index % 2 === 1 ? html`<code>${piece}</code>` : piece))}`;
}

/**
 * The same for a terminal, where the words stand as they are.
 *
 * @param text - any text
 * @returns the text without paired backticks
 * @example withoutBackticks("Name its `purpose`.") // "Name its purpose."
 */
export function withoutBackticks(text: string): string {
  return text.replace(/`([^`]+)`/g, "$1");
}
