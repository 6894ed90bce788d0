import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "../..");
const METHOD = readFileSync(join(ROOT, "packages/core/METHOD.md"), "utf8");
const HEADINGS = [...METHOD.matchAll(/^#{2,3} (.+)$/gm)].map(([, heading]) => heading!);

/** Where the method is cited: every source of the packages and of the tests. */
const SOURCES = ["packages/core/src", "packages/report/src", "tests"].flatMap((folder) =>
  readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !path.includes("node_modules"))
    .map((path) => join(folder, path)),
);

/** What follows each "METHOD.md, ". Lines of a comment are joined. */
function citationsIn(text: string): string[] {
  const joined = text.replace(/\s*\n\s*\*?\s*/g, " ");
  return [...joined.matchAll(/METHOD\.md, (.{0,80})/g)].map(([, rest]) => rest!);
}

/** The longest heading that a citation begins with; undefined where it names none. */
function headingOf(citation: string): string | undefined {
  return HEADINGS.filter(
    (heading) => citation.startsWith(heading) && !/^[\p{L}\d]/u.test(citation.slice(heading.length)),
  ).sort((a, b) => b.length - a.length)[0];
}

describe("METHOD.md", () => {
  it("has a heading for every citation of it", () => {
    const here = join("tests", "core", "method-citations.test.ts");
    const citations = SOURCES.filter((path) => path !== here).flatMap((path) =>
      citationsIn(readFileSync(join(ROOT, path), "utf8")).map((rest) => ({ path, rest })),
    );
    expect(citations.length).toBeGreaterThan(50);
    expect(citations.filter(({ rest }) => headingOf(rest) === undefined)).toEqual([]);
  });

  it("is cited under this name alone", () => {
    const other = SOURCES.filter((path) => readFileSync(join(ROOT, path), "utf8").includes(["method", "md"].join(".")));
    expect(other).toEqual([]);
  });

  it("has no two headings of one name, and links only to its own headings", () => {
    expect(HEADINGS).toEqual([...new Set(HEADINGS)]);
    const anchors = HEADINGS.map((heading) => heading.toLowerCase().replaceAll(" ", "-"));
    const links = [...METHOD.matchAll(/\]\(#([^)]+)\)/g)].map(([, anchor]) => anchor!);
    expect(links.filter((anchor) => !anchors.includes(anchor))).toEqual([]);
  });

  it("finds a citation of a heading that is not there", () => {
    expect(headingOf("Water in the year).")).toBe("Water in the year");
    expect(headingOf("Water in the yearbook).")).toBeUndefined();
    expect(headingOf("Water of the year).")).toBeUndefined();
    expect(citationsIn("/** (METHOD.md,\n * Framing). */")).toEqual(["Framing). */"]);
  });
});
