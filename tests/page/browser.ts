import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { ProjectResult } from "@warmside/core";
import { type ReportOptions, renderReport } from "@warmside/report";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, test } from "vitest";
import { browserIsHere, browserIsRequired, newWindow } from "./chromium.ts";

/** The reader of printed pages, where the machine has it. */
export const hasPageReader: boolean = canRun("pdftotext");

/** Whether the machine's fonts are as wide as those that pages are planned with; Windows and macOS bring them. */
const hasFonts = process.platform !== "linux" || ["Arial", "Times New Roman"].every(isPlannedFont);

/** What a test in the browser is given. */
export interface Opened {
  page: Page;
  /** Addresses asked for, the report itself left out. */
  requests: string[];
  /** Everything the page wrote to its console, and errors. */
  messages: string[];
}

export interface Stage {
  open: (width: number, scheme?: "light" | "dark") => Promise<Opened>;
  /** The same for all who only look: much the faster. */
  look: (width: number, scheme?: "light" | "dark") => Promise<Opened>;
}

const AS_USUAL: ReportOptions = {};

/**
 * Tests in the real browser, on a report written to disk. Without a browser they are skipped with one sentence,
 * or fail where the run requires one.
 */
export function describeInBrowser(
  title: string,
  result: () => ProjectResult,
  tests: (stage: Stage) => void,
  options: ReportOptions = AS_USUAL,
): void {
  if (!browserIsHere && !browserIsRequired) {
    describe.skip(`${title}: skipped, since no Chromium was found on this machine`, () => {
      test.todo("install Chromium, or name it in CHROMIUM");
    });
    return;
  }
  describe(title, () => {
    let folder: string;
    let address: string;
    beforeAll(async () => {
      folder = mkdtempSync(join(tmpdir(), "warmside-page-"));
      const file = join(folder, "report.html");
      writeFileSync(file, await rendered(result, options));
      address = pathToFileURL(file).href;
    });
    afterAll(async () => {
      for (const context of contexts) await context.close();
      if (folder) rmSync(folder, { recursive: true });
    });
    const contexts: BrowserContext[] = [];
    const open: Stage["open"] = async (width, scheme = "light") => {
      const context = await newWindow({ viewport: { width, height: 900 }, colorScheme: scheme });
      contexts.push(context);
      const page = await context.newPage();
      const requests: string[] = [];
      const messages: string[] = [];
      page.on("request", (request) => {
        if (request.url().split("#")[0] !== address) requests.push(request.url());
      });
      page.on("console", (message) => messages.push(message.text()));
      page.on("pageerror", (error) => messages.push(error.message));
      await page.goto(address, { waitUntil: "load" });
      return { page, requests, messages };
    };
    const looked = new Map<string, Promise<Opened>>();
    const look: Stage["look"] = (width, scheme = "light") => {
      const key = `${width} ${scheme}`;
      const opened = looked.get(key) ?? open(width, scheme);
      looked.set(key, opened);
      return opened;
    };
    tests({ open, look });
  });
}

const RENDERED = new Map<() => ProjectResult, Map<ReportOptions, Promise<string>>>();

/** The report of a result, made once for all tests that are about it. */
function rendered(result: () => ProjectResult, options: ReportOptions): Promise<string> {
  const ofResult = RENDERED.get(result) ?? new Map<ReportOptions, Promise<string>>();
  const page = ofResult.get(options) ?? renderReport(result(), options);
  RENDERED.set(result, ofResult.set(options, page));
  return page;
}

/** Pages of a PDF as text, in the order of the page. */
export function pagesOf(pdf: Uint8Array): string[] {
  const text = execFileSync("pdftotext", ["-layout", "-", "-"], {
    input: pdf,
    encoding: "utf8",
    maxBuffer: 64_000_000,
  });
  return text.split("\f").slice(0, -1);
}

/** A test of what hangs on the width of fonts: skipped where there are only others, unless the run requires it. */
export const testWithFonts: typeof test | typeof test.skip = hasFonts || browserIsRequired ? test : test.skip;

/** A test that needs the reader of printed pages too. */
export const testOnPaper: typeof test | typeof test.skip =
  hasPageReader || browserIsRequired ? testWithFonts : test.skip;

function isPlannedFont(name: string): boolean {
  try {
    return /^(Liberation|Arial|Arimo|Times|Tinos)/.test(
      execFileSync("fc-match", ["-f", "%{family}", name], { encoding: "utf8" }),
    );
  } catch {
    return false;
  }
}

function canRun(name: string): boolean {
  try {
    execFileSync(name, ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}
