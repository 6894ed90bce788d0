import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import type { BrowserContext, BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, test } from "vitest";
import { browserIsHere, browserIsRequired, newWindow } from "../chromium.ts";

/** The page as it was built with the command. */
export const BUILT = fileURLToPath(new URL("../../../packages/report/bundle/warmside-page.html", import.meta.url));

/** How a page is opened. */
export interface Opening extends BrowserContextOptions {
  width?: number;
  /** The project inside the page's file; none: the page as it is built. */
  project?: string;
  /** Runs before the page's own script. */
  before?: () => void;
}

/** An open page, with what it asked for and said. */
export interface Live {
  page: Page;
  context: BrowserContext;
  requests: string[];
  messages: string[];
}

export interface LiveStage {
  /** A page of its own. */
  open: (opening?: Opening) => Promise<Live>;
  /** A page that other tests had before, with this project opened by its button: much the faster. */
  reopen: (opening: Opening & { project: string }) => Promise<Live>;
  address: (project?: string) => string;
}

/** Tests of the live page in the real browser; without one they are skipped, or fail where the run requires it. */
export function describeLive(title: string, tests: (stage: LiveStage) => void): void {
  if (!browserIsHere && !browserIsRequired) {
    describe.skip(`${title}: skipped, since no Chromium was found on this machine`, () => {
      test.todo("install Chromium, or name it in CHROMIUM");
    });
    return;
  }
  describe(title, () => {
    let folder: string;
    let count = 0;
    const contexts: BrowserContext[] = [];
    const kept = new Map<string, Live>();
    const address = (project?: string): string => {
      count += 1;
      const file = join(folder, `page-${count}.html`);
      const given = JSON.stringify({ text: project, fileName: "studio.yaml", tables: {} }).replaceAll("<", "\\u003c");
      const built = readFileSync(BUILT, "utf8");
      writeFileSync(
        file,
        project === undefined ? built : built.replace('id="given-project">null', () => `id="given-project">${given}`),
      );
      return pathToFileURL(file).href;
    };
    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), "warmside-live-"));
    });
    afterAll(async () => {
      for (const { context } of kept.values()) await context.close();
      for (const context of contexts) await context.close();
      if (folder) rmSync(folder, { recursive: true });
    });
    const open = async ({ width = 1280, project, before, ...more }: Opening = {}): Promise<Live> => {
      for (const old of contexts.splice(0)) await old.close();
      const size = { width, height: width < 600 ? 844 : 900 };
      const context = await newWindow({ viewport: size, acceptDownloads: true, ...more });
      contexts.push(context);
      if (before) await context.addInitScript(before);
      const page = await context.newPage();
      const live: Live = { page, context, requests: [], messages: [] };
      page.on("request", (request) => live.requests.push(request.url()));
      page.on("console", (message) => live.messages.push(message.text()));
      page.on("pageerror", (error) => live.messages.push(error.stack ?? error.message));
      await page.goto(address(project));
      await page.waitForSelector(".section, .problems");
      await settled(page);
      return live;
    };
    const reopen = async ({ project, width = 1280, ...more }: Opening & { project: string }): Promise<Live> => {
      const key = JSON.stringify({ width, ...more });
      const live = kept.get(key) ?? (await open({ width, ...more }));
      const at = contexts.indexOf(live.context);
      if (at !== -1) contexts.splice(at, 1);
      kept.set(key, live);
      await openFile(live.page, "studio.yaml", project);
      await live.page.evaluate(() => scrollTo(0, 0));
      return live;
    };
    tests({ open, reopen, address });
  });
}

/** Waits until what was changed is drawn. */
export async function drawn(page: Page): Promise<void> {
  await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
}

/** Waits until what is worked out beside the page is of what is shown. */
export async function settled(page: Page): Promise<void> {
  await drawn(page);
  await page.waitForFunction(
    () => document.querySelector(".section") === null || document.querySelector("main.is-working") === null,
  );
}

/** Opens a file by the page's own button. */
export async function openFile(page: Page, name: string, content: string | Buffer): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await page.getByRole("button", { name: "Open", exact: true }).click();
  await (await chooser).setFiles({ name, mimeType: "application/yaml", buffer: Buffer.from(content) });
  await page.waitForFunction(
    (file) =>
      document.querySelector("h1 small")?.textContent?.startsWith(file) || document.querySelector(".remark") !== null,
    name,
  );
  await settled(page);
}

/** The project file as it stands on the page. */
export async function textOf(page: Page): Promise<string> {
  await drawn(page);
  return await page.locator("#file-text").inputValue();
}

/** The judgement as it stands on the page. */
export async function wordOf(page: Page): Promise<string> {
  await drawn(page);
  return (await page.locator("#answer-word").textContent())!.trim();
}

/** Names of the layers as they are listed. */
export async function layersOf(page: Page): Promise<string[]> {
  await drawn(page);
  return await page.locator(".layers .what > span").allTextContents();
}

/** Types a project file in the place of the one that is there. */
export async function typeFile(page: Page, text: string): Promise<void> {
  await page.evaluate(() => {
    document.querySelector<HTMLDetailsElement>(".file")!.open = true;
  });
  await page.locator("#file-text").fill(text);
  await settled(page);
}

/** A wall with its sheet on the wrong side, as many build it. */
export const WRONG_SIDE = `# A wall to look at.
project: Alder Row
climate: de-bilt
indoor: { heating: 20 °C, humidity: class 3 }
build-ups:
  - name: Wall
    element: wall
    target: 0.25 W/(m2 K)
    framings:
      studs: { material: softwood timber, width: 45 mm, spacing: 600 mm }
    layers:                   # from the room outwards
      - { material: gypsum plasterboard, thickness: 12.5 mm }
      - { material: mineral wool slab, thickness: 140 mm, framing: studs }
      - { name: polythene, material: polyethylene sheet 0.15 mm }   # bought already
      - { material: oriented strand board, thickness: 11 mm }
      - { material: breather membrane }
      - { air: 25 mm, ventilation: well, open: both ends }
      - { name: cladding, material: softwood timber, thickness: 20 mm }
`;
