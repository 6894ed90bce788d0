import { readFileSync } from "node:fs";
import { test } from "vitest";
import { textOfCase } from "../../practice/cases.ts";
import { describeLive } from "./live-page.ts";
import { expectSameFigures, expectSameReport } from "./same-bytes.ts";

/** What the demo has no like of; all of them are held in the long test. */
const SOME = ["42-slab-with-membrane.yaml", "48-damp-room-partitions.yaml"];
const demo = readFileSync(new URL("../../../shared/alder-row-pottery.yaml", import.meta.url), "utf8");

describeLive("the page's files are the command's, byte for byte", ({ open }) => {
  test("the report of the demo and of two cases", async () => {
    const { page } = await open();
    await expectSameReport(page, "demo", demo);
    for (const file of SOME) await expectSameReport(page, file.replace(".yaml", ""), textOfCase(file));
  });

  test("the figures of the demo as JSON, in a browser that gives no worker too", async () => {
    const before = (): void => {
      Object.defineProperty(window, "Worker", {
        value: class {
          constructor() {
            throw new DOMException("no workers here", "SecurityError");
          }
        },
      });
    };
    const { page } = await open({ before });
    await page.waitForSelector(".flag");
    await expectSameFigures(page, "demo", demo);
  });
});
