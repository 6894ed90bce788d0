/** What tests need of a page: its text without markup, its attributes. */

/** The text a reader sees, white space as single blanks. */
export function visibleText(page: string): string {
  return decoded(
    page
      .replace(/<(style|script|title)[^>]*>[\s\S]*?<\/\1>/g, " ")
      .replace(/<desc[^>]*>[\s\S]*?<\/desc>/g, " ")
      .replace(/<\/?code>/g, "")
      .replace(/<[^>]*>/g, " "),
  );
}

/** Every value of an attribute, in order. */
export function attributeValues(page: string, name: string): string[] {
  return [...page.matchAll(new RegExp(`\\s${name}="([^"]*)"`, "g"))].map(([, value]) => value!);
}

/** The part of the page about one build-up, from 1. */
export function buildUpPart(page: string, number: number): string {
  const start = page.indexOf(`id="build-up-${number}"`);
  const next = page.indexOf(`id="build-up-${number + 1}"`);
  return page.slice(start, next > 0 ? next : page.indexOf('id="method"'));
}

/** The annex of one build-up, from 1. */
export function annexPart(page: string, number: number): string {
  const start = page.indexOf(`id="annex-${number}"`);
  const next = page.indexOf(`id="annex-${number + 1}"`);
  return page.slice(start, next > 0 ? next : page.indexOf("</details>", start));
}

/** Entities back to characters, hard and thin spaces to blanks where they only keep words together. */
export function decoded(text: string): string {
  return text
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/[\s\u00a0\u2007\u2008]+/g, " ");
}

/**
 * Every “dry”, “dries out” and “sound” on a page that does not say what it covers: in a sentence the limit follows the
 * word, in a table it stands once below it.
 */
export function uncoveredWords(page: string): { words: number; uncovered: string[] } {
  const words = [
    ...page.matchAll(/<em class="verdict">(?:dry|dries out)<\/em>|<strong class="judgement">sound[^<]*<\/strong>/g),
  ];
  const isCovered = ({ index, 0: word }: RegExpExecArray): boolean => {
    const endOfTable = page.indexOf("</table>", index);
    const isInTable = endOfTable >= 0 && page.lastIndexOf("<table", index) > page.lastIndexOf("</table>", index);
    return isInTable
      ? /^<\/table><p class="aside">[^<]*<a\s*href="#left-out">vapour diffusion only/.test(
          page.slice(endOfTable, endOfTable + 200),
        )
      : /^\s*<a class="limit"\s*href="#left-out">\(vapour/.test(page.slice(index + word.length));
  };
  const uncovered = words.filter((word) => !isCovered(word));
  return { words: words.length, uncovered: uncovered.map(({ index }) => page.slice(index, index + 120)) };
}
