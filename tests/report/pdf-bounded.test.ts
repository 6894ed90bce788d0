import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { printToPdf } from "../../packages/report/src/cli/pdf/print-to-pdf.ts";

const base = mkdtempSync(join(tmpdir(), "warmside-pdf-"));
afterAll(() => rmSync(base, { recursive: true, force: true }));

/** A browser made of a few lines of shell, which records its process number and that of its child; and a place to print. */
function browserThat(script: string): { browser: string; within: string; started: () => number[] } {
  const folder = mkdtempSync(join(base, "browser-"));
  const browser = join(folder, "browser");
  const notes = join(folder, "started");
  writeFileSync(browser, `#!/bin/sh\nnote() { echo $1 >> "${notes}"; }\nnote $$\n${script}\n`);
  chmodSync(browser, 0o755);
  const within = join(folder, "temporary");
  mkdirSync(within);
  return { browser, within, started: () => readFileSync(notes, "utf8").trim().split("\n").map(Number) };
}

/** Whether a process is running, and not merely a zombie. */
function isAlive(id: number): boolean {
  if (!existsSync(`/proc/${id}/stat`)) return false;
  return !/^.*\) Z/.test(readFileSync(`/proc/${id}/stat`, "latin1"));
}

const STUBBORN = "trap '' TERM HUP INT";

describe("Printing is bounded, whatever the browser does", () => {
  it("one that never ends, and takes no notice of being asked to, is ended with all it started, and told", async () => {
    const { browser, within, started } = browserThat(
      `${STUBBORN}\n(${STUBBORN}; while :; do sleep 1; done) &\nnote $!\nwhile :; do sleep 1; done`,
    );
    await expect(printToPdf("<p>", browser, { within, longest: 4000 })).rejects.toThrow(
      /did not finish within 4 s and was stopped\..*nothing was written/,
    );
    expect(started()).not.toEqual([]);
    await expect.poll(() => started().filter(isAlive)).toEqual([]);
    expect(readdirSync(within)).toEqual([]);
  });

  it("one that ends and leaves something running that holds its streams is not waited for", async () => {
    const { browser, within, started } = browserThat(
      `(${STUBBORN}; while :; do sleep 1; done) &\nnote $!\necho "no display" >&2\nexit 1`,
    );
    await expect(printToPdf("<p>", browser, { within })).rejects.toThrow("It said: no display");
    await expect.poll(() => started().filter(isAlive)).toEqual([]);
    expect(readdirSync(within)).toEqual([]);
  });

  it("one that cannot be started is told", async () => {
    const { browser, within } = browserThat("");
    chmodSync(browser, 0o644);
    await expect(printToPdf("<p>", browser, { within })).rejects.toThrow("could not be started");
    expect(readdirSync(within)).toEqual([]);
  });

  it("what a killed command has left is taken away, what a running one uses is not", async () => {
    const { browser, within } = browserThat("exit 1");
    mkdirSync(join(within, "warmside-print-999999999-abc"));
    mkdirSync(join(within, `warmside-print-${process.ppid}-abc`));
    await expect(printToPdf("<p>", browser, { within })).rejects.toThrow("made no PDF");
    expect(readdirSync(within)).toEqual([`warmside-print-${process.ppid}-abc`]);
  });
});

describe("A temporary folder that cannot be used", () => {
  it.each(["not there", "a file"])("%s: told with its path, no fault of the program", async (kind) => {
    const { browser, within } = browserThat("exit 0");
    const unusable = join(within, "tmp");
    if (kind === "a file") writeFileSync(unusable, "");
    await expect(printToPdf("<p>", browser, { within: unusable })).rejects.toMatchObject({
      name: "CommandProblem",
      message: expect.stringContaining(`The temporary folder ${unusable} cannot be written`),
    });
  });
});
