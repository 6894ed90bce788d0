/**
 * Text made safe inside HTML elements and quoted attributes.
 * Marks that turn the direction of writing, and control characters, are shown by their code instead of acting.
 *
 * @param text - any text
 * @returns the same text without a character that HTML or a reading direction would act on
 * @example escapeText("a < b & \"c\"") // "a &lt; b &amp; &quot;c&quot;"
 */
export function escapeText(text: string): string {
  return showHiddenMarks(text).replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}

/**
 * Data as JSON that cannot end the element it stands in.
 *
 * @param data - plain data
 * @returns JSON of the same value in which `<`, `>`, `&` and all hidden marks are written as escapes
 * @example jsonInHtml({ a: "</script>" }) // "{\"a\":\"\\u003c/script\\u003e\"}"
 */
export function jsonInHtml(data: unknown): string {
  return JSON.stringify(data).replace(ACTING_IN_JSON, (character) => `\\u${code(character)}`);
}

/**
 * Text as a quoted string of a style sheet.
 *
 * @param text - any text
 * @returns the string with its quotes; nothing in it can end the string or the style element
 * @example styleString("a\"b") // "\"a\\22 b\""
 */
export function styleString(text: string): string {
  const safe = showHiddenMarks(text).replace(
    /[^\p{L}\p{N} .,:;()+=°²³–—−-]/gu,
    (character) => `\\${character.codePointAt(0)!.toString(16)} `,
  );
  return `"${safe}"`;
}

/**
 * A text cut to a length for places with no room, such as a drawing or a running head.
 *
 * @param text - any text
 * @param longest - greatest length in characters, at least 2
 * @returns the text, or its beginning and an ellipsis
 * @example shorten("mineral wool slab", 8) // "mineral…"
 */
export function shorten(text: string, longest: number): string {
  const characters = [...text];
  if (characters.length <= longest) return text;
  return `${characters
    .slice(0, longest - 1)
    .join("")
    .trimEnd()}…`;
}

/**
 * Text in which hidden marks are shown by their code.
 *
 * @param text - any text
 * @returns the same text; marks of direction, control characters and broken characters as "[U+202E]"
 * @example showHiddenMarks("a\u202eb") // "a[U+202E]b"
 */
export function showHiddenMarks(text: string): string {
  return text.replace(HIDDEN_MARKS, (character) => `[U+${code(character).toUpperCase()}]`);
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/** Control characters but tab and line feed, marks of direction, invisible joiners and lone surrogates. */
const HIDDEN_MARKS =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
  /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufff9-\ufffb]|\p{Surrogate}/gu;

const ACTING_IN_JSON = /[<>&\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/g;

function code(character: string): string {
  return character.charCodeAt(0).toString(16).padStart(4, "0");
}
