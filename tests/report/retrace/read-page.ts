/** Reads what is printed on a page: tables as rows of cells, lines of text. Nothing of the program is asked. */

/** A table by its caption: heads and rows of cells. */
export interface PrintedTable {
  caption: string;
  heads: string[];
  rows: string[][];
}

/** The tables of a part of the page, in order. */
export function tablesOf(markup: string): PrintedTable[] {
  return [...markup.matchAll(/<table[^>]*>([\s\S]*?)<\/table>/g)].map(([, table]) => {
    const rows = [...table!.matchAll(/<tr[^>]*>([\s\S]*?)<\/tr>/g)].map(([, row]) =>
      [...row!.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => plain(cell!)),
    );
    const caption = plain(/<caption>([\s\S]*?)<\/caption>/.exec(table!)?.[1] ?? "");
    return { caption, heads: rows[0] ?? [], rows: rows.slice(1) };
  });
}

/** The first table whose caption begins so. */
export function tableNamed(markup: string, caption: string): PrintedTable | null {
  return tablesOf(markup).find((table) => table.caption.startsWith(caption)) ?? null;
}

/** Text without markup, entities back, white space as single blanks. */
export function plain(markup: string): string {
  return markup
    .replace(/<svg[\s\S]*?<\/svg>/g, "")
    .replace(/<span class="(?:unit|remark)">/g, " $&")
    .replace(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&")
    .replace(/[\s\u00a0\u2007\u2008]+/g, " ")
    .trim();
}

/** A printed figure; NaN for a word or a dash. */
export function figure(text: string | undefined): number {
  const digits = (text ?? "").replaceAll("\u202f", "").replace("−", "-").replace("+", "").replace(" %", "");
  return /^-?\d+(\.\d+)?$/.test(digits) ? Number(digits) : Number.NaN;
}

/** Digits after the point of a printed figure. */
export function decimalsOf(text: string): number {
  return (text.split(".")[1] ?? "").replace(/\D/g, "").length;
}
