/// <reference lib="dom" />
import { readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import { browserIsHere, launchBrowser } from "../page/chromium.ts";
import { median } from "./measure.ts";
import { DEMO } from "./start.ts";
import type { Measure } from "./table.ts";

const PAGE = "packages/report/bundle/warmside-page.html";
/** The first starter has six layers; this one makes it seven. */
const SHEET = /^1\|2,/;
const CHANGES = 40;

/** What a change on the live page costs, over one assessment of the same wall in the same browser; and its bytes. */
export async function changesOnPage(): Promise<Measure[]> {
  const bytes: Measure = {
    name: "pageBytes",
    value: statSync(PAGE).size,
    unit: "bytes",
    goal: { atMost: 2_000_000 },
    what: "the live page, whole",
  };
  if (!browserIsHere) return [bytes];
  const browser = await launchBrowser();
  try {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(pathToFileURL(join(process.cwd(), PAGE)).href);
    await page.getByLabel(SHEET).check();
    const wall = await page.locator("#file-text").inputValue();
    const one = await changesOf(page);
    await page.locator("#file-text").evaluate(
      (area: HTMLTextAreaElement, text) => {
        area.value = text;
        area.dispatchEvent(new Event("input", { bubbles: true }));
      },
      readFileSync(DEMO, "utf8"),
    );
    await page.waitForSelector(".build-ups");
    const seven = await changesOf(page);
    const blank = await browser.newPage();
    await blank.addScriptTag({ content: await coreAlone() });
    const assessment = await assessmentOf(blank, wall);
    return [
      {
        name: "changeToAssess",
        value: median(one) / assessment,
        unit: "times",
        goal: { atMost: 25 },
        what: "a change of a wall of seven layers, until it is drawn, over one assessment",
      },
      { name: "changeTime", value: median(one) / 1000, unit: "s", goal: { atMost: 0.016 }, what: "its script" },
      {
        name: "changeOfSevenTime",
        value: median(seven) / 1000,
        unit: "s",
        goal: { atMost: 0.05 },
        what: "the same with seven build-ups in the file",
      },
      {
        name: "longestChange",
        value: Math.max(...one, ...seven) / 1000,
        unit: "s",
        goal: { atMost: 0.05 },
        what: "the longest of those changes",
      },
      bytes,
    ];
  } finally {
    await browser.close();
  }
}

/** Script of each change [ms]: from the click to the end of what it has to do at once, and drawing in the next frame. */
async function changesOf(page: Page): Promise<number[]> {
  return await page.evaluate(async (count) => {
    const times: number[] = [];
    for (let change = 0; change < count; change += 1) {
      const time = await new Promise<number>((resolve) => {
        let frame = 0;
        requestAnimationFrame(() => {
          frame = performance.now();
        });
        const start = performance.now();
        // Thicker and thinner by turns.
        document.querySelectorAll<HTMLButtonElement>(".size button")[change % 2 === 0 ? 3 : 2]!.click();
        const atOnce = performance.now() - start;
        requestAnimationFrame(() => resolve(atOnce + performance.now() - frame));
      });
      times.push(time);
    }
    return times;
  }, CHANGES);
}

/** One assessment [ms]. */
async function assessmentOf(page: Page, text: string): Promise<number> {
  const times = await page.evaluate(
    ({ written, count }) => {
      const { readProjectOrThrow, assessBuildUp, surroundingsOf } = (
        window as unknown as { core: typeof import("@warmside/core") }
      ).core;
      const project = readProjectOrThrow(written);
      const surroundings = surroundingsOf(project);
      return Array.from({ length: count }, () => {
        const start = performance.now();
        assessBuildUp(project.buildUps[0]!, surroundings);
        return performance.now() - start;
      });
    },
    { written: text, count: CHANGES },
  );
  return median(times);
}

async function coreAlone(): Promise<string> {
  const made = await build({
    stdin: {
      contents: 'import * as core from "@warmside/core"; Object.assign(globalThis, { core });',
      resolveDir: process.cwd(),
    },
    alias: { "@warmside/core": join(process.cwd(), "packages/core/src/index.ts") },
    bundle: true,
    minify: true,
    format: "iife",
    write: false,
  });
  return made.outputFiles[0]!.text;
}
