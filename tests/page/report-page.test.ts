/// <reference lib="dom" />
import type { ProjectResult } from "@warmside/core";
import { expect, test } from "vitest";
import { howMany, isLong } from "../how-many.ts";
import { demoResult } from "../report/demo.ts";
import { everyPart } from "../report/every-part.ts";
import { oneWall } from "../report/one-wall.ts";
import { axeFaultsOfFew, slidesSideways } from "./axe-faults.ts";
import { describeInBrowser, testWithFonts } from "./browser.ts";
import { studied, studiesOf } from "./studies.ts";
import { DESK, PHONE, VIEWS } from "./views.ts";

/** Height of a telephone's screen [px]. */
const SCREEN = 844;
/** Height of a row on a telephone [px]. */
const HIGHEST_ROW = 240;

const STUDIES = studiesOf(studied);

/** The demo's report, which has nothing that the other has not, is gone through where there is time. */
const REPORTS: [string, () => ProjectResult][] = (
  [
    ["a report with every part in the browser", everyPart],
    ["the demo's report in the browser", demoResult],
  ] satisfies [string, () => ProjectResult][]
).slice(0, howMany(1, 2));

for (const [title, result] of REPORTS) {
  describeInBrowser(title, result, ({ look }) => {
    test.each([PHONE, DESK])(
      "%i px: asks for nothing, says nothing to the console, does not scroll sideways",
      async (width) => {
        const { page, requests, messages } = await look(width);
        await page.evaluate(async () => {
          for (let y = 0; y < document.body.scrollHeight; y += 5000) window.scrollTo(0, y);
        });
        const wide = await slidesSideways(page);
        expect({ requests, messages, wide }).toEqual({ requests: [], messages: [], wide: 0 });
      },
    );

    test.each([PHONE, DESK])(
      "%i px: drawings and plots stand within the page, their words within them",
      async (width) => {
        const { page } = await look(width);
        const problems = await page.evaluate(() => {
          const out: string[] = [];
          for (const svg of document.querySelectorAll<SVGSVGElement>("figure svg")) {
            const frame = svg.getBoundingClientRect();
            if (frame.width < 200 || frame.height < 100) out.push(`${svg.id} is ${frame.width} × ${frame.height}`);
            if (frame.left < 0 || frame.right > document.documentElement.clientWidth)
              out.push(`${svg.id} leaves the page`);
            for (const text of svg.querySelectorAll("text")) {
              const box = text.getBoundingClientRect();
              const out1 = box.left < frame.left - 2 || box.right > frame.right + 2 || box.top < frame.top - 2;
              if (out1 || box.bottom > frame.bottom + 2)
                out.push(`${svg.id}: “${text.textContent}” leaves the drawing`);
            }
          }
          return out;
        });
        expect(problems).toEqual([]);
      },
    );

    test("a table that is wider than the page slides in a frame with a shade at its edge, and lies open in print", async () => {
      const { page } = await look(PHONE);
      const shaded = (): Promise<boolean[]> =>
        page.evaluate(() =>
          [...document.querySelectorAll<HTMLElement>(".scroll")].map((frame) =>
            getComputedStyle(frame).backgroundImage.includes("gradient"),
          ),
        );
      expect((await shaded()).every((isShaded) => isShaded)).toBe(true);
      await page.emulateMedia({ media: "print" });
      expect((await shaded()).some((isShaded) => isShaded)).toBe(false);
      await page.emulateMedia({ media: null });
    });

    testWithFonts(
      "on a telephone no row stands higher than half a screen: long texts keep room to run on",
      async () => {
        const { page } = await look(PHONE);
        const high = await page.evaluate(
          (most) =>
            [...document.querySelectorAll("tbody tr")]
              .map((row) => ({ height: row.getBoundingClientRect().height, words: row.textContent }))
              .filter(({ height }) => height > most),
          HIGHEST_ROW,
        );
        expect(high).toEqual([]);
      },
    );

    testWithFonts("names of layers in plots do not lie on each other", async () => {
      const { page } = await look(DESK);
      const overlaps = await page.evaluate(() => {
        const out: string[] = [];
        for (const svg of document.querySelectorAll<SVGSVGElement>("figure svg")) {
          const boxes = [...svg.querySelectorAll("text")].map((text) => ({
            words: text.textContent,
            box: text.getBoundingClientRect(),
          }));
          boxes.forEach(({ words, box }, index) => {
            for (const other of boxes.slice(index + 1)) {
              const across = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
              const down = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
              if (across > 2 && down > 4) out.push(`${svg.id}: “${words}” and “${other.words}”`);
            }
          });
        }
        return out;
      });
      expect(overlaps).toEqual([]);
    });

    test.each(VIEWS)("%i px, %s: axe-core finds nothing", async (width, scheme) => {
      const { page } = await look(width, scheme);
      await page.evaluate(() => {
        for (const folded of document.querySelectorAll("details")) folded.open = true;
      });
      expect(await axeFaultsOfFew(page)).toEqual([]);
    });
  });
}

describeInBrowser("moving about the demo's report", demoResult, ({ open }) => {
  test("every link of the contents leads to its place", async () => {
    const { page } = await open(DESK);
    const links = await page.locator(".contents a").all();
    expect(links.length).toBeGreaterThan(8);
    for (const link of links) {
      const target = await link.getAttribute("href");
      await link.click();
      const top = await page.locator(target!).evaluate((element) => element.getBoundingClientRect().top);
      const end = await page.evaluate(
        () => window.innerHeight + window.scrollY >= document.documentElement.scrollHeight - 2,
      );
      expect(end || (top > -5 && top < 120), `${target} stands at ${top}`).toBe(true);
    }
  });

  test("the site checklist can be shown alone, and left again", async () => {
    const { page } = await open(PHONE);
    await page.locator("a.to-alone").click();
    const shown = (): Promise<string[]> =>
      page.evaluate(() =>
        [...document.querySelectorAll<HTMLElement>("main > *")]
          .filter((part) => part.offsetHeight > 0)
          .map((part) => part.id),
      );
    expect(await shown()).toEqual(["checklist"]);
    await page.locator("a.from-alone").click();
    expect((await shown()).length).toBeGreaterThan(8);
  });

  test("in a dark theme no drawing keeps ink on dark paper", async () => {
    const { page } = await open(DESK, "dark");
    const dark = await page.evaluate(() => {
      const light = (colour: string): number => {
        const [red = 0, green = 0, blue = 0] = colour.match(/\d+/g)?.map(Number) ?? [];
        return (0.2126 * red + 0.7152 * green + 0.0722 * blue) / 255;
      };
      return [...document.querySelectorAll("figure svg text")]
        .filter((text) => light(getComputedStyle(text).fill) < 0.4)
        .map((text) => text.textContent);
    });
    expect(dark).toEqual([]);
  });
});

describeInBrowser("the demo on a telephone", demoResult, ({ open }) => {
  test("the decision is on the first screen: the answer, and for what must change to what", async () => {
    const { page } = await open(PHONE);
    const bottoms = await page.evaluate(() => {
      const change = [...document.querySelectorAll(".row.change p")].find((line) =>
        line.textContent!.startsWith("Change it to"),
      );
      return [document.querySelector(".verdict-line")!, change!].map(
        (element) => element.getBoundingClientRect().bottom,
      );
    });
    for (const bottom of bottoms) expect(bottom).toBeLessThanOrEqual(SCREEN);
  });
});

for (const [index, [title, study, options]] of STUDIES.entries()) {
  describeInBrowser(
    title,
    study,
    ({ look }) => {
      test.each(isLong ? VIEWS : [VIEWS[index % VIEWS.length]!])(
        "%i px, %s: does not scroll sideways, and axe-core finds nothing",
        async (width, scheme) => {
          const { page } = await look(width, scheme);
          expect(await slidesSideways(page)).toBe(0);
          expect(await axeFaultsOfFew(page)).toEqual([]);
        },
      );
    },
    options,
  );
}

for (const [title, result, options] of [
  ["one wall", oneWall],
  ...STUDIES.slice(-howMany(1, STUDIES.length)),
] as const) {
  describeInBrowser(
    `${title} by keyboard`,
    result,
    ({ open }) => {
      test("the tab key reaches every link, fold and table that slides, in the page's order, each with an outline", async () => {
        const { page } = await open(PHONE);
        await page.evaluate(() => {
          for (const folded of document.querySelectorAll("details")) folded.open = true;
        });
        const wanted = await page.evaluate(() => {
          const reached = [...document.querySelectorAll<HTMLElement>("a[href],summary,.scroll")].filter((one) =>
            one.checkVisibility({ visibilityProperty: true }),
          );
          reached.forEach((one, index) => {
            one.dataset.place = String(index);
          });
          return reached.length;
        });
        expect(wanted).toBeGreaterThan(5);
        const seen: { place: string | undefined; outline: number }[] = [];
        for (let presses = 0; presses < wanted; presses += 1) {
          await page.keyboard.press("Tab");
          seen.push(
            await page.evaluate(() => {
              const focused = document.activeElement as HTMLElement;
              const { outlineStyle, outlineWidth } = getComputedStyle(focused);
              return {
                place: focused.dataset.place,
                outline: outlineStyle === "none" ? 0 : Number.parseFloat(outlineWidth),
              };
            }),
          );
        }
        expect(seen.map(({ place }) => place)).toEqual(Array.from({ length: wanted }, (_, index) => String(index)));
        expect(seen.filter(({ outline }) => outline < 1)).toEqual([]);
      });
    },
    options,
  );
}

describeInBrowser("one wall on a telephone", oneWall, ({ open }) => {
  test("what is filed is under twelve screens", async () => {
    const { page } = await open(PHONE);
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    expect(height).toBeLessThan(12 * SCREEN);
  });
});
