import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { countInWords, type ProgressStream, progressOn } from "../../packages/report/src/cli/progress.ts";
import { type Ended, SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();
let file = "";

beforeAll(() => {
  const folder = command.folder();
  file = join(folder, "shed.yaml");
  writeFileSync(file, SMALL_PROJECT);
});

const spreadOf = (ended: Ended) => JSON.parse(ended.out).buildUps[0].spread;

describe("warmside spread", () => {
  it("another seed gives other figures within the standard error", async () => {
    const withSeed = async (seed: string) =>
      spreadOf(await command.run(["spread", file, "--samples", "1000", "--seed", seed, "--json"]));
    const [one, other] = [await withSeed("5"), await withSeed("6")];
    expect(one.transmittance).not.toEqual(other.transmittance);
    const probability = (spread: typeof one, word: string): number =>
      spread.judgements.find((entry: { word: string }) => entry.word === word)?.probability ?? 0;
    for (const word of ["sound", "sound with conditions", "change it"]) {
      const [first, second] = [probability(one, word), probability(other, word)];
      const both = (first + second) / 2;
      expect(Math.abs(first - second)).toBeLessThanOrEqual(4 * Math.sqrt((2 * both * (1 - both)) / 1000));
    }
  });

  it("the report tells it: sentence, plot, tables", async () => {
    const page = join(command.folder(), "page.html");
    const ended = await command.run(["spread", file, "--samples", "400", "--out", page]);
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(/In (all 400 samples|\d+ of 100)/);
    const text = readFileSync(page, "utf8");
    expect(text).toContain("<h1>How sure the answer is</h1>");
    expect(text).toContain('id="study-1-spread"');
    expect(text).toContain("How often each answer came out of 400 samples");
    expect(text).toContain("vapour excess of the room");
  });

  it.each([
    ["--samples", "0"],
    ["--samples", "1e3"],
    ["--seed", "-1"],
    ["--workers", "0"],
    ["--samples", "200001"],
    ["--workers", "65"],
    ["--seed", "4294967296"],
  ])("%s %s is refused with 1", async (option, value) => {
    const ended = await command.run(["spread", file, `${option}=${value}`]);
    expect(ended.code).toBe(1);
    expect(ended.err).toMatch(/must be a whole\s+number\s+from/);
    expect(ended.out).toBe("");
  });
});

describe("progress on a terminal", () => {
  const heard: string[] = [];
  const inWords = (done: number, of: number, seconds: number): string => countInWords("sample", done, of, seconds);
  const terminal: ProgressStream = { isTTY: true, write: (text) => heard.push(text) };

  it("tells how far it is and how long it takes still, at most ten times a second, and clears the line", () => {
    let time = 0;
    const progress = progressOn(terminal, inWords, () => time);
    for (let step = 1; step <= 10; step += 1) {
      time = 50 * step;
      progress.reached(50 * step, 1000);
    }
    progress.clear();
    expect(heard).toHaveLength(6);
    expect(heard[0]).toContain("sample 50 of 1000, 1 s left");
    expect(heard.at(-1)).toBe("\r\u001b[2K");
  });

  it("says nothing where there is no terminal", () => {
    const quiet: string[] = [];
    const progress = progressOn({ write: (text) => quiet.push(text) }, inWords);
    progress.reached(5, 10);
    progress.clear();
    expect(quiet).toEqual([]);
  });

  it("in minutes when it is long", () => {
    expect(countInWords("build-up", 25, 100, 2)).toBe("build-up 25 of 100, 6 s left");
    expect(inWords(1, 1000, 1)).toBe("sample 1 of 1000, 17 min left");
  });
});
