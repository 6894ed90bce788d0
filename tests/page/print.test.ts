import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { beforeAll, expect } from "vitest";
import { demoResult } from "../report/demo.ts";
import { oneWall, roofFloorWall } from "../report/one-wall.ts";
import { describeInBrowser, pagesOf, testOnPaper } from "./browser.ts";
import { studied, studiesOf } from "./studies.ts";

const A4 = { width: 595, height: 842 };
/** Sizes are told in thirds of a point, rounded down: 8 pt is 24, 9.5 pt is 28. */
const THIRDS = 3;
const SMALLEST = 8 * THIRDS;
const BODY = Math.floor(9.5 * THIRDS);

const REPORTS = [
  ["the demo", demoResult, 19],
  ["one wall", oneWall, 6],
  ["a roof, a floor and a wall", roofFloorWall, 11],
] as const;

/** How many characters are printed in each size [a third of a point, rounded down], as the reader of pages tells it. */
function sizesOf(pdf: Uint8Array): Map<number, number> {
  const folder = mkdtempSync(join(tmpdir(), "warmside-sizes-"));
  const file = join(folder, "report.pdf");
  writeFileSync(file, pdf);
  const xml = execFileSync("pdftohtml", ["-xml", "-i", "-stdout", "-zoom", String(THIRDS), file], {
    encoding: "utf8",
    maxBuffer: 64_000_000,
  });
  rmSync(folder, { recursive: true });
  const sizes = new Map(
    [...xml.matchAll(/<fontspec id="(\d+)" size="(\d+)"/g)].map(([, id, size]) => [id!, Number(size)]),
  );
  const counts = new Map<number, number>();
  for (const [, font, text] of xml.matchAll(/<text [^>]*font="(\d+)"[^>]*>([\s\S]*?)<\/text>/g)) {
    const size = sizes.get(font!)!;
    const characters = text!.replace(/<[^>]*>/g, "").replace(/\s/g, "").length;
    counts.set(size, (counts.get(size) ?? 0) + characters);
  }
  return counts;
}

/** What the contents name, and the pages that they give. */
async function contentsOf(page: Page): Promise<{ title: string; page: number }[]> {
  return await page.evaluate(() =>
    [...document.querySelectorAll(".contents li")].map((entry) => ({
      title: entry.querySelector("a")!.textContent!,
      page: Number(entry.querySelector(".page-number")!.textContent),
    })),
  );
}

/** The lines of a page that say something. */
function linesOf(text: string): string[] {
  return text
    .split("\n")
    .map((line) => line.trim())
    .filter((line) => line !== "");
}

for (const [title, result, most] of REPORTS) {
  describeInBrowser(`${title} on paper`, result, ({ open }) => {
    let page: Page;
    let pdf: Buffer;
    beforeAll(async () => {
      ({ page } = await open(1280));
      pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
    });

    testOnPaper(
      `at most ${most} A4 pages, each with its running head and number; every part on the page that the contents name; sheets of two pages`,
      async () => {
        const entries = await contentsOf(page);
        const headings = await page.evaluate(() =>
          [...document.querySelectorAll("h2,h3,h4,caption")].map((heading) => heading.textContent!.trim()),
        );
        const box = /\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/.exec(Buffer.from(pdf).toString("latin1"))!;
        expect(Math.abs(Number(box[1]) - A4.width)).toBeLessThan(1.5);
        expect(Math.abs(Number(box[2]) - A4.height)).toBeLessThan(1.5);
        const pages = pagesOf(pdf);
        expect(pages.length).toBeLessThanOrEqual(most);
        pages.forEach((text, index) => {
          expect(text.includes(`Page ${index + 1} of ${pages.length}`), `number of page ${index + 1}`).toBe(true);
          expect(text.trimStart().startsWith(result().project), `running head of page ${index + 1}`).toBe(true);
          const lines = linesOf(text).slice(0, -1);
          expect(headings, `last on page ${index + 1}`).not.toContain(lines.at(-1));
        });
        expect(entries.length).toBeGreaterThan(5);
        for (const { title: part, page: number } of entries.slice(1)) {
          const lines = linesOf(pages[number - 1]!);
          expect(lines, `${part} on page ${number}`).toContain(part);
        }
        const sheets = entries.slice(3, -2);
        sheets.forEach(({ title: name, page: number }, index) => {
          expect(pages[number]!, `back of ${name}`).toContain(`${name}, continued`);
          expect(entries[index + 4]!.page).toBe(number + 2);
        });
      },
    );

    testOnPaper("no text under 8 pt, running text 9.5 pt", async () => {
      const sizes = sizesOf(pdf);
      const small = [...sizes].filter(([size]) => size < SMALLEST);
      expect(small).toEqual([]);
      const body = [...sizes].filter(([size]) => size >= BODY).reduce((sum, [, count]) => sum + count, 0);
      expect(body).toBeGreaterThan(1000);
    });
  });
}

for (const [title, study, options] of studiesOf(studied)) {
  describeInBrowser(
    `${title} on paper`,
    study,
    ({ open }) => {
      testOnPaper(
        "every part is on the page that the contents name, contents on one page; no heading last on a page; no text under 8 pt",
        async () => {
          const { page } = await open(1280);
          const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
          const entries = await contentsOf(page);
          const headings = await page.evaluate(() =>
            [...document.querySelectorAll("h1,h2,h3,h4,caption,.plot-title")].map((one) => one.textContent!.trim()),
          );
          await page.close();
          const pages = pagesOf(pdf).map(linesOf);
          expect(entries.length).toBeGreaterThan(3);
          for (const { title: part, page: number } of entries.slice(1))
            expect(pages[number - 1], `${part} on page ${number}`).toContain(part.replace("Sheet ", ""));
          const listed = pages.filter((lines) => lines.some((line) => line.includes(entries.at(-1)!.title)));
          expect(listed).toHaveLength(2);
          pages.forEach((lines, index) => {
            expect(lines.at(-1)).toContain(`Page ${index + 1} of ${pages.length}`);
            expect(headings, `last on page ${index + 1}`).not.toContain(lines.at(-2));
          });
          expect([...sizesOf(pdf)].filter(([size]) => size < SMALLEST)).toEqual([]);
        },
      );
    },
    options,
  );
}

describeInBrowser("paper does not hang on the font of the screen", oneWall, ({ open }) => {
  testOnPaper("pages are the same where the first font for reading is a fifth wider than Times", async () => {
    const { page } = await open(1280);
    const print = async (): Promise<string[]> => pagesOf(await page.pdf({ preferCSSPageSize: true }));
    const heightOfHead = (): Promise<number> => page.evaluate(() => document.querySelector("h1")!.scrollHeight);
    await page.evaluate(() => {
      document.querySelector("h1")!.textContent = "so many words that they run on to a further line ".repeat(8);
    });
    const [asItIs, low] = [await print(), await heightOfHead()];
    await page.evaluate(async () => {
      const wide = new FontFace("Charter", 'local("Liberation Serif"), local("Times New Roman")', {
        sizeAdjust: "120%",
      } as FontFaceDescriptors);
      document.fonts.add(await wide.load());
    });
    expect(await heightOfHead()).toBeGreaterThan(low);
    expect(await print()).toEqual(asItIs);
    await page.close();
  });
});

describeInBrowser("the report on paper", roofFloorWall, ({ open }) => {
  testOnPaper("prints the annex only where it is open", async () => {
    const { page } = await open(1280);
    const folded = pagesOf(await page.pdf({ preferCSSPageSize: true })).join("\n");
    expect(folded).not.toContain("Hand check:");
    await page.evaluate(() => {
      document.querySelector<HTMLDetailsElement>("#annex")!.open = true;
    });
    const opened = pagesOf(await page.pdf({ preferCSSPageSize: true })).join("\n");
    await page.close();
    expect(opened.match(/Annex \d: /g)!.length).toBeGreaterThanOrEqual(roofFloorWall().buildUps.length);
    expect(opened).toContain("Hand check: the U-value");
  });

  testOnPaper("prints the checklist alone when it is shown alone", async () => {
    const { page } = await open(1280);
    await page.locator("a.to-alone").click();
    const pages = pagesOf(await page.pdf({ preferCSSPageSize: true }));
    await page.close();
    expect(pages.length).toBeLessThan(3);
    const whole = pages.join("\n");
    expect(whole.includes("under 20 %")).toBe(true);
    expect(whole.includes("Design conditions")).toBe(false);
  });
});
