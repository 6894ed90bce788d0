/// <reference lib="dom" />
import type { Page } from "playwright-core";
import { expect, test } from "vitest";
import { FOIL_BETWEEN_STUDS } from "../../core/foil-between-studs.ts";
import { axeFaults, slidesSideways } from "../axe-faults.ts";
import { pagesOf, testOnPaper } from "../browser.ts";
import { PHONE, VIEWS } from "../views.ts";
import { describeLive, drawn, openFile, settled, typeFile, WRONG_SIDE } from "./live-page.ts";

/** Least size of what is to be touched [px]. Source: WCAG 2.2, 2.5.5 (from memory). */
const TARGET = 44;

const PAPER = { light: "rgb(255, 255, 255)", dark: "rgb(29, 35, 38)" };

/** A gap between two taps up to which nothing is told yet, the page's own pause being 900 [ms]. */
const SHORTER_THAN_THE_PAUSE = 700;

/** What can be touched and is smaller than a finger, in words. */
async function smallTargets(page: Page): Promise<string[]> {
  return await page.evaluate((least) => {
    const all = [
      ...document.querySelectorAll<HTMLElement>(
        "button, select, summary, input, textarea, [role=slider], label:has(> input)",
      ),
    ];
    return all
      .filter((one) => one.checkVisibility({ opacityProperty: false }) && !one.closest(".skip"))
      .filter((one) => !(one instanceof HTMLInputElement && one.closest("label") !== null))
      .map((one) => ({ one, box: one.getBoundingClientRect() }))
      .filter(({ box }) => box.width > 0 && (box.width < least - 0.5 || box.height < least - 0.5))
      .map(({ one, box }) => `${one.outerHTML.slice(0, 80)} ${box.width.toFixed(0)}×${box.height.toFixed(0)}`);
  }, TARGET);
}

/** Brings the page into each of its states. */
const STATES: [string, (page: Page) => Promise<void>][] = [
  ["at first", async () => undefined],
  [
    "a layer taken up, all opened",
    async (page) => {
      await page.locator(".what").nth(1).click();
      await page.evaluate(() => {
        for (const one of document.querySelectorAll<HTMLDetailsElement>("main details")) one.open = true;
      });
    },
  ],
  [
    "a roof",
    async (page) => {
      await page.getByRole("button", { name: "New", exact: true }).click();
      await page.getByRole("button", { name: /^cold flat roof/ }).click();
    },
  ],
  ["a sheet in seven gaps", async (page) => openFile(page, "seven.yaml", SEVEN_GAPS)],
  [
    "choosing a layer",
    async (page) =>
      page
        .getByRole("button", { name: /^Add a layer/ })
        .first()
        .click(),
  ],
  ["foil-faced boards between studs", async (page) => openFile(page, "foil.yaml", FOIL_BETWEEN_STUDS)],
  ["with problems", async (page) => typeFile(page, WRONG_SIDE.replace("140 mm", "140").replace("de-bilt", "de-blit"))],
];

const SEVEN_GAPS = WRONG_SIDE.replace(
  "      - { material: gypsum plasterboard, thickness: 12.5 mm }\n",
  "      - { material: gypsum plasterboard, thickness: 12.5 mm }\n      - { air: 30 mm, ventilation: none }\n      - { material: gypsum fibre board, thickness: 10 mm }\n      - { material: wood fibre insulation board, thickness: 40 mm }\n",
);

describeLive("the live page for everybody", ({ open, reopen }) => {
  test.each(VIEWS)(
    "%i px, %s: in each state axe finds nothing, targets are 44 px, nothing scrolls sideways",
    async (width, colorScheme) => {
      const { page, messages } = await open({ width, colorScheme, bypassCSP: true });
      const paper = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
      expect(paper).toBe(PAPER[colorScheme]);
      const found: string[] = [];
      for (const [name, bring] of STATES) {
        await bring(page);
        await settled(page);
        found.push(...(await axeFaults(page)).map((fault) => `${name}: ${fault}`));
        found.push(...(await smallTargets(page)).map((small) => `${name}: ${small}`));
        if ((await slidesSideways(page)) > 0) found.push(`${name}: scrolls sideways`);
        await page.keyboard.press("Escape");
      }
      expect(found).toEqual([]);
      expect(messages).toEqual([]);
    },
  );

  test("crowded flags over seven gaps stand apart, each whole within the page", async () => {
    const { page } = await reopen({ width: PHONE, hasTouch: true, project: SEVEN_GAPS });
    const boxes = await page
      .locator(".flag")
      .evaluateAll((flags) => flags.map((flag) => flag.getBoundingClientRect().toJSON()));
    expect(boxes.length).toBe(9);
    for (const [index, one] of boxes.entries()) {
      expect(one.left).toBeGreaterThanOrEqual(0);
      expect(one.right).toBeLessThanOrEqual(PHONE);
      for (const other of boxes.slice(index + 1)) {
        const apart =
          one.right <= other.left || other.right <= one.left || one.bottom <= other.top || other.bottom <= one.top;
        expect(apart).toBe(true);
      }
    }
    const words = await page
      .locator(".flag span")
      .evaluateAll((spans) => spans.filter((span) => span.scrollWidth > 46).map((span) => span.textContent));
    expect(words).toEqual([]);
  });

  test("who listens is told the answer once, after a pause", async () => {
    const { page } = await reopen({ width: PHONE, hasTouch: true, project: WRONG_SIDE });
    const longGaps = await page.evaluate(async (pause) => {
      const live = document.querySelector("[aria-live]")!;
      const told: string[] = [];
      Object.assign(window, { told });
      const observer = new MutationObserver(() => {
        const text = live.textContent!;
        if (text !== "") told.push(text);
      });
      let last = performance.now();
      let gaps = 0;
      for (let index = 0; index < 5; index += 1) {
        document.querySelector<HTMLButtonElement>('[aria-label="2 mineral wool slab: thicker"]')!.click();
        if (index === 0) observer.observe(live, { childList: true, characterData: true, subtree: true });
        await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
        if (performance.now() - last > pause) gaps += 1;
        last = performance.now();
      }
      return gaps;
    }, SHORTER_THAN_THE_PAUSE);
    await page.waitForFunction(() => (window as unknown as { told: string[] }).told.length > 0);
    await settled(page);
    const told = await page.evaluate(() => (window as unknown as { told: string[] }).told);
    expect(told.length).toBeLessThanOrEqual(1 + longGaps);
    expect(told.at(-1)).toMatch(/^Wall: change it, stays wet, U 0\.\d\d\.$/);
    expect(await page.locator("[aria-live]").count()).toBe(1);
  });

  test("all of it can be reached by Tab, with a visible focus", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.locator("h1").click();
    const reached = new Set<string>();
    for (let index = 0; index < 70; index += 1) {
      await page.keyboard.press("Tab");
      const { id, isSeen } = await page.evaluate(() => {
        const one = document.activeElement as HTMLElement;
        const holder = one.closest<HTMLElement>(".flag, .strip, .lens label") ?? one;
        const seen = [one, holder].some((each) => getComputedStyle(each).outlineStyle !== "none");
        return {
          id: one.getAttribute("aria-label") || one.id || one.textContent,
          isSeen: seen || one === document.body,
        };
      });
      expect(isSeen, id ?? "").toBe(true);
      reached.add(id ?? "");
    }
    expect([...reached]).toEqual(
      expect.arrayContaining(["Undo", "Place", "Month", "7 20, cladding", "The project file"]),
    );
  });

  test("forced colours: the section, the bars and what is chosen can be told apart", async () => {
    const { page } = await open({ project: WRONG_SIDE, forcedColors: "active", bypassCSP: true });
    const seen = await page.evaluate(() => {
      const style = (selector: string) => getComputedStyle(document.querySelector(selector)!);
      return {
        bar: style(".bar-of-month").fill,
        limit: style(".lines .limit").stroke,
        chosen: style(".flag.is-drawn").outlineStyle,
        button: style(".tools button").borderStyle,
      };
    });
    expect(seen).toEqual({ bar: "rgb(0, 114, 179)", limit: "rgb(213, 94, 0)", chosen: "solid", button: "solid" });
    expect(await axeFaults(page)).toEqual([]);
  });

  test("reduced motion: the year goes by in whole months, and nothing glides", async () => {
    const { page } = await open({ project: WRONG_SIDE, reducedMotion: "reduce" });
    expect(await page.evaluate(() => getComputedStyle(document.querySelector(".tab")!).transitionDuration)).toBe("0s");
    const wholeMonths = new Set<string>();
    for (const month of [11, 10, 9, 8]) {
      await page.getByLabel("Month").fill(String(month));
      await drawn(page);
      wholeMonths.add((await page.locator(".lines .limit").getAttribute("d"))!);
    }
    await page.evaluate(() => {
      const lines = new Set<string>();
      Object.assign(window, { lines });
      const drawing = document.querySelector(".lines .limit")!;
      new MutationObserver(() => lines.add(drawing.getAttribute("d")!)).observe(drawing, { attributeFilter: ["d"] });
    });
    const button = page.locator(".year-head button");
    await button.click();
    await page.waitForFunction(
      () =>
        (window as unknown as { lines: Set<string> }).lines.size > 0 &&
        document.querySelector(".year-head button")!.textContent === "Run the year",
    );
    const lines = await page.evaluate(() => [...(window as unknown as { lines: Set<string> }).lines]);
    expect(lines.filter((line) => !wholeMonths.has(line))).toEqual([]);
    expect(lines.length).toBeGreaterThan(1);
  });

  testOnPaper("printed: one page with the answer, the section, the bars and the layers", async () => {
    const { page } = await reopen({ project: WRONG_SIDE });
    await page.emulateMedia({ media: "print" });
    const bars = await page
      .locator(".bar-of-month")
      .evaluateAll((all) => all.filter((bar) => bar.getBoundingClientRect().height > 3).length);
    expect(bars).toBeGreaterThan(6);
    await page.emulateMedia({ media: null });
    const pages = pagesOf(await page.pdf({ format: "A4", printBackground: false, preferCSSPageSize: true }));
    expect(pages).toHaveLength(1);
    for (const words of ["change it", "mineral wool slab", "U 0.30", "vapour pushes out", "The year"])
      expect(pages[0]).toContain(words);
  });
});
