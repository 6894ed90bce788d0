/// <reference lib="dom" />
import { readFileSync } from "node:fs";
import { assessProject, readProjectOrThrow } from "@warmside/core";
import { renderReport } from "@warmside/report";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { resultAsJson } from "../../../packages/report/src/cli/answers/result-as-json.ts";
import { openFile } from "./live-page.ts";

const MANIFEST = new URL("../../../packages/report/package.json", import.meta.url);
// From its sources the program has no version; the page has the command's.
Object.assign(globalThis, { WARMSIDE_VERSION: JSON.parse(readFileSync(MANIFEST, "utf8")).version });

/** Holds that the page makes the very report of a project that the command makes. */
export async function expectSameReport(page: Page, name: string, text: string): Promise<void> {
  await openFile(page, `${name}.yaml`, text);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Report", exact: true }).click(),
  ]);
  expect(download.suggestedFilename()).toBe(`${name}-report.html`);
  const made = readFileSync(await download.path(), "utf8");
  const asked = await renderReport(assessProject(readProjectOrThrow(text)));
  expect(made === asked, name).toBe(true);
}

/** The same for the figures of `--json`. */
export async function expectSameFigures(page: Page, name: string, text: string): Promise<void> {
  await openFile(page, `${name}.yaml`, text);
  const [download] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "All figures as JSON" }).click(),
  ]);
  const made = readFileSync(await download.path(), "utf8");
  expect(made === resultAsJson(assessProject(readProjectOrThrow(text))).asIs, name).toBe(true);
}
