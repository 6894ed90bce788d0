import { MONTH_NAMES } from "@warmside/core";
import { expect } from "vitest";
import { demoResult } from "../report/demo.ts";
import { describeInBrowser, pagesOf, testOnPaper } from "./browser.ts";

const A4 = { width: 595, height: 842 };
const LONG = 60_000;

describeInBrowser("the demo's report on paper", demoResult, ({ open }) => {
  testOnPaper(
    "has A4 pages with running heads and numbers, each build-up from a new page, no table torn",
    async () => {
      const result = demoResult();
      const { page } = await open(1280);
      const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
      await page.close();
      const box = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(Buffer.from(pdf).toString("latin1"))!;
      expect(Math.abs(Number(box[1]) - A4.width)).toBeLessThan(1.5);
      expect(Math.abs(Number(box[2]) - A4.height)).toBeLessThan(1.5);
      const pages = pagesOf(pdf);
      const count = pages.length;
      expect(count).toBeGreaterThan(result.buildUps.length * 3);
      expect(count).toBeLessThan(result.buildUps.length * 6 + 7);
      pages.forEach((text, index) => {
        expect(text.includes(`Page ${index + 1} of ${count}`), `number of page ${index + 1}`).toBe(true);
        expect(text.trimStart().startsWith(result.project), `running head of page ${index + 1}`).toBe(true);
      });
      result.buildUps.forEach(({ name }, index) => {
        const heading = `${index + 1} ${name}`;
        // The contents list names it too, under another running head.
        const starts = pages.filter((text) => {
          const [runningHead, ...lines] = text.trim().split("\n");
          return runningHead!.includes(heading) && lines.slice(0, 5).some((line) => line.trim() === heading);
        });
        expect(starts, heading).toHaveLength(1);
      });
      const months = MONTH_NAMES.map((month) => month.slice(0, 3));
      const tables = pages.filter((text) => text.includes("Temperature factor that each month asks for"));
      expect(tables.length).toBe(result.buildUps.filter(({ surface }) => surface !== null).length);
      for (const text of tables) {
        const rows = text.slice(text.indexOf("Temperature factor that each month asks for"));
        expect(months.filter((month) => !new RegExp(`^\\s*${month}\\s`, "m").test(rows))).toEqual([]);
      }
      const lists = pages.filter((text) => text.includes("Site checklist"));
      expect(lists.length).toBeGreaterThan(0);
      for (const [index, text] of pages.entries()) {
        const begun = text.split("Worked by hand: the transmittance").length;
        const ended = text.split("Calculated without rounding: U").length;
        expect(ended, `sums of the transmittance torn on page ${index + 1}`).toBe(begun);
      }
      const whole = pages.join("\n");
      for (const words of ["What is left out", "Cautions", "Sources of the values", "Signature", "Worked by hand"]) {
        expect(whole.includes(words), words).toBe(true);
      }
    },
    LONG,
  );

  testOnPaper(
    "prints the checklist alone when it is shown alone",
    async () => {
      const { page } = await open(1280);
      await page.locator("a.to-alone").click();
      const pages = pagesOf(await page.pdf({ preferCSSPageSize: true }));
      await page.close();
      expect(pages.length).toBeLessThan(6);
      const whole = pages.join("\n");
      expect(whole.includes("below 20 %")).toBe(true);
      expect(whole.includes("Worked by hand")).toBe(false);
    },
    LONG,
  );
});
