import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { renderReport } from "@warmside/report";
import { describe, expect, it } from "vitest";
import { CLASSES } from "../../packages/report/src/judgement-icons.ts";
import { demoResult } from "./demo.ts";

const result = demoResult();
const livePageStyle = readFileSync(new URL("../../packages/report/src/live/page.css", import.meta.url), "utf8");

describe("style rules of the caller's own", () => {
  const rules = ":root { --link: #6b2d5c }\n.contents { display: none }";

  it("stand last in the one style sheet, and the policy allows just that", async () => {
    const page = await renderReport(result, { style: rules });
    const [, style] = /<style>([\s\S]*?)<\/style>/.exec(page)!;
    expect(style!.endsWith(rules)).toBe(true);
    const digest = createHash("sha256").update(style!, "utf8").digest("base64");
    expect(page).toContain(`default-src 'none'; style-src 'sha256-${digest}';`);
  });

  it("cannot end the style element", async () => {
    await expect(renderReport(result, { style: "</style><script>alert(1)</script>" })).rejects.toThrow(RangeError);
  });
});

describe("no rule of a style sheet hangs on theme and width at once: to look at each once is enough", () => {
  const ofReport = async (): Promise<string> => /<style>([\s\S]*?)<\/style>/.exec(await renderReport(result))![1]!;
  const ofLivePage = (): string => livePageStyle;

  it.each([
    ["the report", ofReport],
    ["the live page", ofLivePage],
  ])("%s", async (_, styleOf) => {
    const conditions = [...(await styleOf()).matchAll(/@media ([^{]*)\{/g)].map(([, condition]) => condition!);
    expect(conditions.some((condition) => condition.includes("width"))).toBe(true);
    expect(conditions.filter((condition) => /prefers-color-scheme/.test(condition) && /width/.test(condition))).toEqual(
      [],
    );
  });
});

describe("the style sheet of the live page", () => {
  it.each([...Object.values(CLASSES), "note", "caution", "fault"])("gives the mark of %s its colour", (name) => {
    const rule = new RegExp(`^(\\.\\w+, )*\\.${name}(, \\.\\w+)* \\{ --mark: var\\(--`, "m");
    expect(livePageStyle).toMatch(rule);
  });
});
