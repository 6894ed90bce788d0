import { renderReport } from "@warmside/report";
import fc from "fast-check";
import { expect } from "vitest";
import { projectFiles } from "./random-project-files.ts";
import { resultOf } from "./run-chain.ts";
import { faultOfPage } from "./well-formed.ts";

/** Holds that so many random project files end in a page that is well-formed HTML with every text escaped. */
export async function pagesAreWellFormed(count: number, seed: number): Promise<void> {
  const property = fc.asyncProperty(projectFiles, async (file) => {
    const result = resultOf(file);
    fc.pre(result !== null);
    const page = await renderReport(result);
    expect(faultOfPage(page)).toBeNull();
    expect(page.match(/<img|<script>|<svg onload|<b onclick/)).toBeNull();
  });
  await fc.assert(property, { numRuns: count, seed, endOnFailure: true });
}
