import { existsSync } from "node:fs";
import { type Browser, chromium } from "playwright-core";

const PLACES = [process.env.CHROMIUM, "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
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

const program = PLACES.find((place) => place !== undefined && existsSync(place));

/** Whether this machine has a Chromium. */
export const browserIsHere: boolean = program !== undefined;

/** Whether tests that need a browser fail without one, instead of being skipped. */
export const browserIsRequired: boolean = process.env.WARMSIDE_BROWSER === "required";

/** Starts the machine's Chromium. */
export async function launchBrowser(): Promise<Browser> {
  if (program === undefined) throw new Error("this run requires Chromium, and none was found");
  return await chromium.launch({ executablePath: program, args: FLAGS });
}
