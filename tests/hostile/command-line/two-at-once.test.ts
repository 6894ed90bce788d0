import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { CommandProblem } from "../../../packages/report/src/cli/command-result.ts";
import { writeWhole } from "../../../packages/report/src/cli/files/write-whole.ts";

/** Two commands that both found nothing there write at the same moment: one is refused, and the other's file stands. */
test("a project file that another command has just written is not overwritten", async () => {
  const folder = mkdtempSync(join(tmpdir(), "warmside-two-"));
  try {
    const path = join(folder, "my-wall.yaml");
    const written = ["one", "other"].map((content) =>
      writeWhole([{ path, shown: "my-wall.yaml", content, isThere: () => new CommandProblem("is-there", "is there") }]),
    );
    const ended = await Promise.allSettled(written);
    expect(ended.filter(({ status }) => status === "fulfilled")).toHaveLength(1);
    expect(ended.find(({ status }) => status === "rejected")).toHaveProperty("reason.code", "is-there");
    expect(readFileSync(path, "utf8")).toBe(ended[0]!.status === "fulfilled" ? "one" : "other");
    expect(readdirSync(folder)).toEqual(["my-wall.yaml"]);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});
