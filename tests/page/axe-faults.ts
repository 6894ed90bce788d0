/// <reference lib="dom" />
import axe from "axe-core";
import type { Page } from "playwright-core";
import { howMany } from "../how-many.ts";

/** How many rows, entries and shapes of one kind axe looks at, side by side: those after them are made alike. */
const ALIKE = howMany(4, Number.POSITIVE_INFINITY);

/**
 * What axe finds on a page that is no longer needed, each with where: of what comes again and again the first few stay.
 *
 * @param page - a page, which loses most rows of its tables
 * @returns the faults
 */
export async function axeFaultsOfFew(page: Page): Promise<string[]> {
  await page.evaluate((most) => {
    const counts = new Map<Element, Map<string, number>>();
    for (const one of document.querySelectorAll("tr, li, svg *")) {
      const parent = one.parentElement;
      if (parent === null) continue;
      const ofParent = counts.get(parent) ?? new Map<string, number>();
      const kind = `${one.tagName} ${one.getAttribute("class")}`;
      const count = (ofParent.get(kind) ?? 0) + 1;
      counts.set(parent, ofParent.set(kind, count));
      if (count > most) one.remove();
    }
  }, ALIKE);
  return await axeFaults(page);
}

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
