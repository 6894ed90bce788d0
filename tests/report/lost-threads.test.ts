import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Project, readProject } from "@warmside/core";
import { afterAll, describe, expect, it } from "vitest";
import { withCalculation } from "../../packages/report/src/cli/calculation/open-calculation.ts";
import { threadLost } from "../../packages/report/src/cli/calculation/thread-lost.ts";
import { openStudy } from "../../packages/report/src/cli/spread/studies.ts";
import { workOutSamples } from "../../packages/report/src/cli/spread/work-out.ts";
import { startWorkers } from "../../packages/report/src/cli/spread/workers.ts";
import { SMALL_PROJECT } from "./bundled-command.ts";

const folder = mkdtempSync(join(tmpdir(), "warmside-threads-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A file for a thread to run. */
function threadOf(name: string, code: string): string {
  const file = join(folder, `${name}.mjs`);
  writeFileSync(file, code);
  return file;
}

const PORT = 'import { parentPort } from "node:worker_threads";\n';

describe("A thread that ends before its work is done is told as such", () => {
  it.each([
    ["it ends", `${PORT}parentPort.on("message", () => process.exit(3));`, "it ended with 3"],
    ["it throws", `${PORT}parentPort.on("message", () => { throw new Error("no more") });`, "it ended with no more"],
    ["it cannot begin", 'throw new Error("no beginning");', "it ended with no beginning"],
  ])("of the calculation: %s", async (name, code, says) => {
    const asked = withCalculation(
      () => undefined,
      (calculation) => calculation.render({}),
      threadOf(name, code),
    );
    await expect(asked).rejects.toMatchObject({ name: "CommandProblem", code: "thread-lost" });
    await expect(asked).rejects.toThrow(`A thread of the calculation was lost: ${says}.`);
  });

  it("of the spread", async () => {
    const reading = readProject(SMALL_PROJECT);
    const project = (reading.ok ? reading.value : null) as Project;
    const workers = await startWorkers(
      project,
      2,
      threadOf("spread", "export const workOutTask = () => process.exit(3);"),
    );
    try {
      const study = openStudy(project, 0, { samples: 1000, seed: 1 });
      await expect(workOutSamples(study, workers, () => undefined)).rejects.toMatchObject({
        name: "CommandProblem",
        code: "thread-lost",
        message: expect.stringContaining("exited with code: 3"),
      });
    } finally {
      await workers.close();
    }
  });

  it("for want of memory", () => {
    const error = Object.assign(new Error("heap"), { code: "ERR_WORKER_OUT_OF_MEMORY" });
    expect(threadLost(error).message).toContain("it ran out of memory. Nothing was written.");
  });
});
