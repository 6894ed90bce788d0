import { existsSync } from "node:fs";
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium } from "playwright-core";

/** First the one without windows, which takes a fifth less time for the same pages. */
const PLACES = [
  process.env.CHROMIUM,
  "/usr/bin/chromium-headless-shell",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
];
/** Longer than anything takes on the busiest machine [ms]. */
const HANGS = 3_600_000;
const FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

/** Where this machine has its Chromium. */
export const browserProgram: string | undefined = PLACES.find((place) => place !== undefined && existsSync(place));

/** Whether this machine has a Chromium. */
export const browserIsHere: boolean = browserProgram !== undefined;

/** Whether tests that need a browser fail without one, instead of being skipped. */
export const browserIsRequired: boolean = process.env.WARMSIDE_BROWSER === "required";

let started: Promise<Browser> | undefined;

/** The machine's Chromium, started once for all files of a worker: it ends when the worker does. */
async function sharedBrowser(): Promise<Browser> {
  if (started !== undefined && !(await started).isConnected()) started = undefined;
  started ??= launchBrowser();
  return await started;
}

/** A window of the shared browser with a storage of its own, in which only what hangs is ended. */
export async function newWindow(options?: BrowserContextOptions): Promise<BrowserContext> {
  const context = await (await sharedBrowser()).newContext(options);
  context.setDefaultTimeout(HANGS);
  return context;
}

/** Starts the machine's Chromium. */
export async function launchBrowser(): Promise<Browser> {
  if (browserProgram === undefined) throw new Error("this run requires Chromium, and none was found");
  return await chromium.launch({ executablePath: browserProgram, args: FLAGS, timeout: HANGS });
}
