import { test } from "vitest";
import { caseFiles, textOfCase } from "../../practice/cases.ts";
import { describeLive } from "./live-page.ts";
import { expectSameFigures, expectSameReport } from "./same-bytes.ts";

describeLive("every case of the practice corpus, byte for byte", ({ open }) => {
  test("its report and its figures from the page are the command's", async () => {
    const { page } = await open();
    for (const file of caseFiles()) {
      await expectSameReport(page, file.replace(".yaml", ""), textOfCase(file));
      await expectSameFigures(page, file.replace(".yaml", ""), textOfCase(file));
    }
  });
});
