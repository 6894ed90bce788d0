import { spawn } from "node:child_process";
import { readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { type ProgressStream, progressInWords, progressOn } from "../../packages/report/src/cli/spread/progress.ts";
import { bundledCommand, type Ended, ROOT, SMALL_PROJECT } from "./bundled-command.ts";

const command = bundledCommand();
let file = "";

beforeAll(() => {
  const folder = command.folder();
  // Where an installed command finds the packages it does not carry.
  symlinkSync(join(ROOT, "packages/report/node_modules"), join(folder, "..", "node_modules"));
  file = join(folder, "shed.yaml");
  writeFileSync(file, SMALL_PROJECT);
});

const spreadOf = (ended: Ended) => JSON.parse(ended.out).buildUps[0].spread;

describe("warmside spread", () => {
  it("the same seed gives the same bytes, on one thread, two and three", () => {
    const runs = ["1", "2", "3"].map((workers) =>
      command.run(["spread", file, "--samples", "1300", "--workers", workers, "--json"]),
    );
    for (const run of runs) expect([run.code, run.err]).toEqual([0, ""]);
    expect(runs[1]!.out).toBe(runs[0]!.out);
    expect(runs[2]!.out).toBe(runs[0]!.out);
    expect(spreadOf(runs[0]!)).toMatchObject({ samples: 1300, asked: 1300, seed: 1 });
  });

  it("another seed gives other figures within the standard error", () => {
    const [one, other] = ["5", "6"].map((seed) =>
      spreadOf(command.run(["spread", file, "--samples", "1000", "--seed", seed, "--json"])),
    );
    expect(one.transmittance).not.toEqual(other.transmittance);
    const probability = (spread: typeof one, word: string): number =>
      spread.judgements.find((entry: { word: string }) => entry.word === word)?.probability ?? 0;
    for (const word of ["sound", "sound with conditions", "change it"]) {
      const [first, second] = [probability(one, word), probability(other, word)];
      const both = (first + second) / 2;
      expect(Math.abs(first - second)).toBeLessThanOrEqual(4 * Math.sqrt((2 * both * (1 - both)) / 1000));
    }
  });

  it("the report tells it: sentence, plot, tables", () => {
    const page = join(command.folder(), "page.html");
    const ended = command.run(["spread", file, "--samples", "400", "--out", page]);
    expect(ended.code).toBe(0);
    expect(ended.out).toMatch(/In (all 400 samples|\d+ of 100)/);
    const text = readFileSync(page, "utf8");
    expect(text).toContain("How sure the answer is");
    expect(text).toContain('id="build-up-1-plot-spread"');
    expect(text).toContain("How often each answer came out of 400 samples");
    expect(text).toContain("vapour in the room over outdoors");
  });

  it.each([
    ["--samples", "0"],
    ["--samples", "1e3"],
    ["--seed", "-1"],
    ["--workers", "0"],
  ])("%s %s is refused with 1", (option, value) => {
    const ended = command.run(["spread", file, `${option}=${value}`]);
    expect(ended.code).toBe(1);
    expect(ended.err).toMatch(/has to be a whole\s+number\s+from/);
    expect(ended.out).toBe("");
  });

  it.each(["1", "2"])(
    "Ctrl-C on %s thread(s): tells what was done, writes nothing, ends with 130",
    async (workers) => {
      const words = ["spread", file, "--samples", "2000000", "--workers", workers];
      const child = spawn(process.execPath, [command.entry(), ...words], { env: command.environment() });
      let out = "";
      let err = "";
      child.stdout.on("data", (text) => {
        out += text;
      });
      child.stderr.on("data", (text) => {
        err += text;
      });
      setTimeout(() => child.kill("SIGINT"), 6_000);
      const code = await new Promise((resolve) => child.once("close", resolve));
      expect(code).toBe(130);
      const [, done] = /Wall: (\d+) of 2000000 samples were done\./.exec(out) ?? [];
      expect(Number(done)).toBeGreaterThan(0);
      expect(out).toMatch(/The judgement is/);
      expect(err).toContain("Interrupted.");
    },
    60_000,
  );
});

describe("progress on a terminal", () => {
  const heard: string[] = [];
  const terminal: ProgressStream = { isTTY: true, write: (text) => heard.push(text) };

  it("tells how far it is and how long it takes still, at most ten times a second, and clears the line", () => {
    let time = 0;
    const progress = progressOn(terminal, 1000, () => time);
    for (let step = 1; step <= 10; step += 1) {
      time = 50 * step;
      progress.advance(50);
    }
    progress.clear();
    expect(heard).toHaveLength(6);
    expect(heard[0]).toContain("50 of 1000 samples (5 %), 1 s left");
    expect(heard.at(-1)).toBe("\r\u001b[2K");
  });

  it("says nothing where there is no terminal", () => {
    const quiet: string[] = [];
    const progress = progressOn({ write: (text) => quiet.push(text) }, 10);
    progress.advance(5);
    progress.clear();
    expect(quiet).toEqual([]);
  });

  it("in minutes when it is long", () => {
    expect(progressInWords(25_000, 100_000, 2)).toBe("25000 of 100000 samples (25 %), 6 s left");
    expect(progressInWords(1, 1000, 1)).toBe("1 of 1000 samples (0 %), 17 min left");
  });
});
