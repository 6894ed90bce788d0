/// <reference lib="dom" />
import axe from "axe-core";
import type { Page } from "playwright-core";

/** What axe finds on a page, each with where. */
export async function axeFaults(page: Page): Promise<string[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  return await page.evaluate(async () => {
    const { axe: inPage } = window as unknown as { axe: typeof axe };
    const { violations } = await inPage.run(document, { resultTypes: ["violations"] });
    return violations.map(
      ({ id, nodes }) =>
        `${id}: ${nodes
          .slice(0, 3)
          .map(({ html }) => html.slice(0, 140))
          .join(" | ")}`,
    );
  });
}

/** How much wider a page is than its window [px]. */
export async function slidesSideways(page: Page): Promise<number> {
  return await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}
