import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { contextOf } from "../../packages/report/src/cli/command-context.ts";
import type { Line } from "../../packages/report/src/cli/lines.ts";
import { answer } from "../../packages/report/src/cli/program.ts";
import { textFor } from "../../packages/report/src/cli/terminal.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();

/** Runs `warmside new` with somebody who writes these answers, and gives what was shown. */
async function asked(folder: string, answers: readonly string[], options: readonly string[] = []) {
  const said: string[] = [];
  const shown = (lines: readonly Line[]): string => textFor(lines, { width: 80, colours: false });
  const context = contextOf({ cwd: () => folder, env: {}, stdout: {}, stderr: {} });
  const left = [...answers];
  const ended = await answer(["new", ...options], {
    ...context,
    say: async (lines) => void said.push(shown(lines)),
    questions: (work) =>
      work(async (lines, prompt) => {
        said.push(shown(lines) + prompt);
        return left.shift()!;
      }),
  });
  return { ...ended, said: said.join(""), left };
}

async function assessed(folder: string, file: string) {
  const { code, out, err } = await command.run(["assess", file, "--json"], { cwd: folder });
  expect([code, err]).toEqual([0, ""]);
  return JSON.parse(out);
}

describe("warmside new at a terminal", () => {
  it("asks what, where, heated when, how damp, rain and cooling, and writes what was answered", async () => {
    const folder = command.folder();
    const { exit, said, left } = await asked(folder, ["1", "London", "at weekends", "4", "2", "yes"]);
    expect([exit, left]).toEqual([0, []]);
    expect(said).toMatch(
      /What do you build\?\n {2}1 {2}wall\n[\s\S]*Where[\s\S]*heated\?[\s\S]*damp[\s\S]*rain[\s\S]*cooled/,
    );
    expect(said).toContain("Climate: heathrow, 22 km from London.");
    expect(readFileSync(join(folder, "my-wall.yaml"), "utf8")).toContain("    wetted by rain: sheltered\n");
    const { climate, rooms } = await assessed(folder, "my-wall.yaml");
    expect(climate.name).toBe("heathrow");
    expect(JSON.stringify(rooms)).toContain("class 4");
  });

  it("every combination of answers is a project in order", async () => {
    for (const element of ["1", "2", "3", "4"]) {
      for (const use of [["1", "1", "1"], ["2", "2", "2"], ["3", "5", "2"], ["4"]]) {
        const folder = command.folder();
        const [heated, damp, cooled] = use;
        const rain = element === "1" ? ["3"] : [];
        const answers = [element, "Rome", heated!, ...(damp ? [damp] : []), ...rain, ...(cooled ? [cooled] : [])];
        const { exit, left } = await asked(folder, answers);
        expect([exit, left]).toEqual([0, []]);
        const { oddities } = await assessed(folder, readdirSync(folder)[0]!);
        expect(oddities).toEqual([]);
      }
    }
  });

  it("asks again where an answer is none, and says why", async () => {
    const folder = command.folder();
    const answers = ["9", "roof", "Nowhere-at-all", "Sydney", "de-bilt", "", "", ""];
    const { exit, said, left } = await asked(folder, answers);
    expect([exit, left]).toEqual([0, []]);
    expect(said).toContain("Write a number from 1 to 4.");
    expect(said).toContain('There is no climate "Nowhere-at-all".');
    expect(said).toContain("No climate at hand is near Sydney");
    expect(readFileSync(join(folder, "my-roof.yaml"), "utf8")).toContain("climate: de-bilt\n");
  });

  it("with an option, or where nobody can answer, it writes as it did", async () => {
    const [withOption, silent] = [command.folder(), command.folder()];
    expect((await asked(withOption, [], ["--element", "wall"])).said).toBe("");
    await command.run(["new"], { cwd: silent });
    const texts = [withOption, silent].map((folder) => readFileSync(join(folder, "my-wall.yaml"), "utf8"));
    expect(texts[0]).toBe(texts[1]);
    expect(texts[0]).toContain("humidity: class 3           # 1 store");
    expect(texts[0]).not.toMatch(/^ *wetted by rain/m);
  });

  it("never writes over a project", async () => {
    const folder = command.folder();
    await asked(folder, ["1", "oslo", "", "", "", ""]);
    const again = await asked(folder, ["1", "oslo", "", "", "", ""]);
    expect(again.exit).toBe(1);
    expect(again.messages).toContain("my-wall.yaml already exists");
  });
});
