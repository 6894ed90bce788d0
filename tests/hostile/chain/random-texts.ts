import fc from "fast-check";
import { between, overPowers } from "../../published/random-sections.ts";

/** Texts as a project file may hold them: quantities with the units that are taken, and names that mean harm. */

/** Pieces that would act if they were put into a page, a style sheet, a script or a plot as they stand. */
export const HOSTILE_PIECES: readonly string[] = [
  "<script>alert(7)</script>",
  "</script><script>alert(7)//",
  "</style><b onclick=alert(7)>",
  '"><img src=x onerror=alert(7)>',
  "' onmouseover='alert(7)",
  "--><svg onload=alert(7)>",
  "]]><!--",
  "&lt;script&gt;",
  "&#60;b&#62;",
  "javascript:alert(7)",
  "url(http://example.invalid/x)",
  `$${"{7*7}"} {{7*7}} \`7\``,
  "\u202eyrettop",
  "\u2066clay\u2069 \u200f",
  "\u0007bell\u001b[31m",
  "\\u003cb\\u003e",
  "__proto__",
  "constructor",
  "../../x",
  "%s %d %n",
  "=1+1",
  "粘土 أرفف 🏺",
  "a\nb\tc",
  "x".repeat(120),
];

const plainNames = fc.constantFrom("Studio wall", "kiln room", "outer boarding", "drying shelf", "clay store");

/** A name: plain, hostile, or both; never empty. */
export const names: fc.Arbitrary<string> = fc.oneof(
  { weight: 3, arbitrary: plainNames },
  { weight: 3, arbitrary: fc.constantFrom(...HOSTILE_PIECES) },
  { weight: 1, arbitrary: fc.tuple(plainNames, fc.constantFrom(...HOSTILE_PIECES)).map((both) => both.join(" ")) },
  {
    weight: 1,
    arbitrary: fc.string({ unit: "grapheme", maxLength: 20 }).map((text) => `n${text.replaceAll("\uFFFD", "")}`),
  },
);

const written = (value: number, unit: string): string => `${Number(value.toPrecision(4))} ${unit}`.trim();

/** A quantity between two values of one unit, all alike. */
export const quantity = (least: number, most: number, unit: string): fc.Arbitrary<string> =>
  between(least, most).map((value) => written(value, unit));

/** A quantity between two values of one unit, spread over its powers of ten. */
export const quantityOverPowers = (least: number, most: number, unit: string): fc.Arbitrary<string> =>
  overPowers(least, most).map((value) => written(Math.min(most, Math.max(least, Number(value.toPrecision(4)))), unit));

/** A bare number with few figures. */
export const bare = (least: number, most: number): fc.Arbitrary<number> =>
  between(least, most).map((value) => Number(value.toPrecision(4)));

/** Twelve of a kind. */
export const twelve = <Value>(value: fc.Arbitrary<Value>): fc.Arbitrary<Value[]> =>
  fc.array(value, { minLength: 12, maxLength: 12 });

/** Keys of which each may be left out. */
export const someOf = (keys: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<Record<string, unknown>> =>
  fc.record(keys, { requiredKeys: [] });
