/** Whether a report is well-formed HTML that runs nothing: a strict reader for the markup that a report may have. */

/** Elements that a report has, drawings with it; any other has come in from a file. */
const ELEMENTS = new Set(
  (
    "html head meta title style body main script header nav section figure figcaption details summary div p span a b em " +
    "strong code ul ol li dl dt dd table caption thead tbody tfoot tr th td h1 h2 h3 h4 h5 br hr small sub sup time " +
    "svg g path line rect circle text tspan desc defs pattern clipPath polyline polygon linearGradient stop"
  ).split(" "),
);
const WITHOUT_END = new Set(["meta", "br", "hr"]);
/** Elements whose content is no markup; they end at their own end tag. */
const RAW = new Set(["style", "script"]);

const TAG = /^<(\/?)([A-Za-z][A-Za-z0-9-]*)((?:\s+[A-Za-z_:][\w:.-]*(?:=(?:"[^"<]*"|'[^'<]*'))?)*)\s*(\/?)>/;
const ATTRIBUTE = /\s+([A-Za-z_:][\w:.-]*)(?:=("[^"]*"|'[^']*'))?/g;
const LONE_AMPERSAND = /&(?!(?:amp|lt|gt|quot|nbsp|#\d+|#x[0-9a-f]+);)/i;
/** What no text of a page may hold: marks of direction and control characters but tab and line feed. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
const HIDDEN = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/;

/** The last line of a page, the only comment in it. */
const FINGERPRINT = /(?<=<\/html>\n)<!-- made by warmside, fingerprint [0-9a-f]{64} -->\n$/;

/**
 * Reads a page strictly: every tag whole, known, closed in its turn, every attribute quoted and harmless.
 *
 * @returns what is wrong first, with its surroundings; null for a page that is well-formed
 */
export function faultOfPage(whole: string): string | null {
  const doctype = "<!doctype html>\n";
  if (!whole.startsWith(doctype)) return "it does not begin with its doctype";
  if (!FINGERPRINT.test(whole)) return "it does not end with its fingerprint";
  const page = whole.replace(FINGERPRINT, "");
  const hidden = HIDDEN.exec(page);
  if (hidden !== null) return at(page, hidden.index, "a hidden mark");
  const open: string[] = [];
  const ids = new Set<string>();
  let place = doctype.length;
  let scripts = 0;
  while (place < page.length) {
    const next = page.indexOf("<", place);
    const text = page.slice(place, next < 0 ? page.length : next);
    if (text.includes(">") || LONE_AMPERSAND.test(text)) return at(page, place, "a sign that is not escaped");
    if (next < 0) break;
    const tag = TAG.exec(page.slice(next, next + LONGEST_TAG));
    if (tag === null) return at(page, next, "no whole tag");
    const [tagged, slash, name = "", attributes = "", selfClosing] = tag;
    if (!ELEMENTS.has(name)) return at(page, next, `an element ${name}`);
    const fault = faultOfAttributes(attributes, ids);
    if (fault !== null) return at(page, next, fault);
    place = next + tagged.length;
    if (slash === "/") {
      if (open.pop() !== name) return at(page, next, `an end of ${name} that was not open`);
    } else if (RAW.has(name)) {
      if (name === "script" && !attributes.includes('type="application/json"')) return at(page, next, "a script");
      scripts += name === "script" ? 1 : 0;
      const end = page.indexOf(`</${name}`, place);
      if (end < 0 || page.slice(place, end).includes("<")) return at(page, next, `a ${name} that holds markup`);
      if (name === "script") JSON.parse(page.slice(place, end));
      place = end + `</${name}>`.length;
    } else if (selfClosing === "" && !WITHOUT_END.has(name)) open.push(name);
  }
  if (scripts !== 1) return `${scripts} elements of data`;
  return open.length === 0 ? null : `${open.join(", ")} left open`;
}

/** Attributes in which an address would be fetched. */
const DRAWN = /^(?:fill|stroke|filter|mask|marker.*|clip-path|cursor)$/;

/** Longest tag that is taken for one [characters]: paths of drawings are the longest. */
const LONGEST_TAG = 200_000;

function faultOfAttributes(attributes: string, ids: Set<string>): string | null {
  for (const [, name = "", quoted = ""] of attributes.matchAll(ATTRIBUTE)) {
    const value = quoted.slice(1, -1);
    if (/^on/i.test(name) || name === "src" || name === "style") return `an attribute ${name}`;
    if (/href$/i.test(name) && !value.startsWith("#")) return `an address ${value}`;
    if (DRAWN.test(name) && /url\((?!#)/i.test(value)) return `an address ${value}`;
    if (LONE_AMPERSAND.test(value)) return `an attribute ${name} that is not escaped`;
    if (name !== "id") continue;
    if (ids.has(value)) return `two elements called ${value}`;
    ids.add(value);
  }
  return null;
}

function at(page: string, index: number, fault: string): string {
  return `${fault} at …${page.slice(Math.max(0, index - 40), index + 160)}`;
}
