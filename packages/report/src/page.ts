import { jsonInHtml } from "./escape.ts";
import { sha256, withFingerprint } from "./fingerprint.ts";
import { type Html, html, markup } from "./html.ts";

/** The parts of the document. */
export interface Page {
  title: string;
  /** BCP 47 tag of the language the page is written in. */
  language: string;
  style: string;
  first: Html;
  main: readonly Html[];
  /** Plain data that travels inside the page. */
  data: unknown;
}

/**
 * The document: one file that asks nothing of any network and runs nothing.
 *
 * @param page - its pieces
 * @returns HTML text, with its fingerprint behind it
 */
export async function document(page: Page): Promise<string> {
  const style = btoa(String.fromCharCode(...(await sha256(page.style))));
  const policy = `default-src 'none'; style-src 'sha256-${style}'; base-uri 'none'; form-action 'none'`;
  const whole = html`${markup("<!doctype html>")}
<html lang="${page.language}"><head><meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${markup(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="generator" content="warmside">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<title>${page.title}</title>
<style>${markup(page.style)}</style></head>
<body><a class="skip" href="#main">To the answer</a>
<main id="main">${page.first}
${page.main}</main>
<script type="application/json" id="result">${markup(jsonInHtml(page.data))}</script>
</body></html>
`;
  return await withFingerprint(whole.text);
}
