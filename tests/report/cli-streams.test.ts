import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { line, paragraph } from "../../packages/report/src/cli/lines.ts";
import { type Terminal, terminalOf, textFor } from "../../packages/report/src/cli/terminal.ts";
import { DEMO, SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();

function folderWith(text: string, name = "studio.yaml"): string {
  const folder = command.folder();
  writeFileSync(join(folder, name), text);
  return folder;
}

describe("Short answers on standard output", () => {
  it("tell each build-up of the demo in no more than 80 columns, and the path of the report", async () => {
    const folder = folderWith(readFileSync(DEMO, "utf8"));
    const { out } = await command.run(["assess", "studio.yaml"], { cwd: folder });
    for (const name of ["Studio wall", "Workshop wall", "Warm flat roof"]) {
      expect(out).toMatch(new RegExp(`^${name}: (sound|sound with conditions|change it|beyond this method)$`, "m"));
    }
    expect(out).toMatch(/^ {2}U-value 0\.\d\d W\/\(m²·K\)/m);
    expect(out).toMatch(/\nReport: studio-report\.html\n$/);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(80);
  });

  it("tell after them every odd value that is not accepted, with the code that accepts it, as check does", async () => {
    const odd = SMALL_PROJECT.replace("heating: 20 °C", "temperature: 40 °C");
    const folder = folderWith(odd);
    const note = /^ {2}Odd: [^\n]*temperature 40 °C is unusual[\s\S]*?\(accept: odd-temperature\)\n/m;
    expect((await command.run(["check", "studio.yaml"], { cwd: folder })).out).toMatch(note);
    for (const line of [
      ["assess"],
      ["place"],
      ["vary", "--layer", "mineral wool slab", "--thickness", "90 mm..140 mm"],
    ]) {
      const { out, err } = await command.run([line[0]!, "studio.yaml", ...line.slice(1)], { cwd: folder });
      expect(out).toMatch(note);
      expect(out.search(note)).toBeGreaterThan(out.indexOf("Verdict: "));
      expect(out.search(note)).toBeLessThan(out.indexOf("\nReport: "));
      expect(err).toBe("");
    }
    const accepted = folderWith(`accept: [ odd-temperature ]\n${odd}`);
    expect((await command.run(["assess", "studio.yaml"], { cwd: accepted })).out).not.toContain("odd-temperature");
    const { out, err } = await command.run(["assess", "studio.yaml", "--json"], { cwd: folder });
    expect(JSON.parse(out)).toMatchObject({ oddities: [{ code: "odd-temperature" }] });
    expect(err).toBe("");
  });

  it("tell what to ask for where a build-up is beyond the method, and send nobody to remedies that were not looked for", async () => {
    const folder = folderWith(SMALL_PROJECT.replace("class 3", "90 %"));
    const { out } = await command.run(["assess", "studio.yaml"], { cwd: folder });
    expect(out).toMatch(
      /^Wall: beyond this method\n {2}In the coldest month [\s\S]*?\.\n {2}Ask for [\s\S]*?\.\n {2}U-value /m,
    );
    expect(out).not.toContain("emedies");
  });

  it("show the characters of a name that would act on a terminal by their code", async () => {
    const folder = folderWith(SMALL_PROJECT.replace("name: Wall", 'name: "Wall \\u202e\\u200bred"'));
    const { out, err } = await command.run(["assess", "studio.yaml"], { cwd: folder });
    // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
    expect(out + err).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u200b\u202e]/);
    expect(out + err).toContain("[U+202E]");
  });
});

describe("Names that would act on a terminal", () => {
  const hostile = '"x\\nline two: sound \\u001b[2J\\u009b\\u007f"';
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
  const acting = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f]/;

  it.each([
    ["project", SMALL_PROJECT.replace("Kiln shed", hostile)],
    ["reference", `reference: ${hostile}\n${SMALL_PROJECT}`],
    ["build-up", SMALL_PROJECT.replace("name: Wall", `name: ${hostile}`)],
    ["variant", `${SMALL_PROJECT}    variants: [ { name: ${hostile}, changes: [ { remove: breather membrane } ] } ]\n`],
    ["climate", SMALL_PROJECT.replace("de-bilt", hostile)],
    ["key", `${hostile}: 3\n${SMALL_PROJECT}`],
  ])("of a %s begin no line and send no control character, in words and as JSON", async (_, text) => {
    const folder = folderWith(text);
    for (const options of [[], ["--json"]]) {
      const { out, err } = await command.run(["compare", "studio.yaml", ...options], { cwd: folder });
      expect(out + err).not.toMatch(acting);
      expect(out + err).not.toMatch(/^\s*line two: sound/m);
      expect(out + err).not.toBe("");
    }
  });

  it("of a file, in an answer, a problem and the path of the report", async () => {
    const name = "x\nline two: sound \u001b[2J.yaml";
    for (const text of [SMALL_PROJECT, SMALL_PROJECT.replace("140 mm", "140")]) {
      const folder = folderWith(text, name);
      for (const verb of ["check", "assess", name]) {
        const { out, err } = await command.run([verb, name].slice(verb === name ? 1 : 0), { cwd: folder });
        expect(out + err).not.toMatch(acting);
        expect(out + err).not.toMatch(/^\s*line two: sound/m);
        expect(out + err).toContain("[U+000A]line two");
      }
    }
  });
});

describe("--json", () => {
  it("alone writes no file, and nothing but the result goes to standard output", async () => {
    const folder = folderWith(SMALL_PROJECT);
    const { code, out, err } = await command.run(["assess", "studio.yaml", "--json"], { cwd: folder });
    expect(code).toBe(0);
    expect(err).toBe("");
    expect(JSON.parse(out)).toMatchObject({ format: 2, project: "Kiln shed", buildUps: [{ name: "Wall" }] });
    expect(readdirSync(folder)).toEqual(["studio.yaml"]);
  });

  it("with --out writes the report too, and says so on standard error", async () => {
    const folder = folderWith(SMALL_PROJECT);
    const { out, err } = await command.run(["assess", "studio.yaml", "--json", "--out", "r.html"], { cwd: folder });
    expect(JSON.parse(out)).toMatchObject({ format: 2 });
    expect(err).toBe("Report: r.html\n");
    expect(readdirSync(folder).sort()).toEqual(["r.html", "studio.yaml"]);
  });

  it.each(["check", "assess"])("%s of a file with problems is {problems: […]} and exit 1", async (verb) => {
    const folder = folderWith(SMALL_PROJECT.replace("140 mm", "140").replace("12.5 mm", "12.5"));
    const { code, out, err } = await command.run([verb, "studio.yaml", "--json"], { cwd: folder });
    expect(code).toBe(1);
    expect(err).toBe("");
    const answer = JSON.parse(out) as { problems: { line: number; path: string; message: string }[] };
    expect(Object.keys(answer)).toEqual(["problems"]);
    expect(answer.problems.map(({ line, path }) => ({ line, path }))).toEqual([
      { line: 8, path: "build-ups[0].layers[0].thickness" },
      { line: 10, path: "build-ups[0].layers[2].thickness" },
    ]);
  });

  it("tells a file that cannot be read as a problem too", async () => {
    const { code, out, err } = await command.run(["assess", "none.yaml", "--json"]);
    expect(code).toBe(1);
    expect(JSON.parse(out)).toMatchObject({ problems: [{ code: "no-such-file", line: null }] });
    expect(err).toContain("none.yaml cannot be read: there is no such file.");
  });

  it("check of a file in order is an empty list", async () => {
    const folder = folderWith(SMALL_PROJECT);
    expect(JSON.parse((await command.run(["check", "studio.yaml", "--json"], { cwd: folder })).out)).toMatchObject({
      problems: [],
    });
  });
});

describe("Problems on standard error", () => {
  it("at most 50 are shown, then the count", async () => {
    const layer = "      - { material: mineral wool slab, thickness: 140 }\n";
    const folder = folderWith(SMALL_PROJECT + layer.repeat(55));
    const { code, out, err } = await command.run(["check", "studio.yaml"], { cwd: folder });
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(err.match(/^studio\.yaml, line \d+/gm)).toHaveLength(50);
    expect(err).toMatch(
      /\n55 problems in studio\.yaml, of which the first 50 are shown\. Nothing was\ncalculated\.\n$/,
    );
  });

  it("exactly 50 are all shown", async () => {
    const layer = "      - { material: mineral wool slab, thickness: 140 }\n";
    const { err } = await command.run(["check", "studio.yaml"], { cwd: folderWith(SMALL_PROJECT + layer.repeat(50)) });
    expect(err.match(/^studio\.yaml, line \d+/gm)).toHaveLength(50);
    expect(err).toMatch(/\n50 problems in studio\.yaml\. Nothing was calculated\.\n$/);
  });

  it("one is told with its line, path, and what to write", async () => {
    const { err } = await command.run(["check", "studio.yaml"], {
      cwd: folderWith(SMALL_PROJECT.replace("140 mm", "140")),
    });
    expect(err).toMatch(/^studio\.yaml, line 10, column \d+ \(build-ups\[0\]\.layers\[2\]\.thickness\)\n {2}\S/);
    expect(err).toMatch(/\n {2}found: {4}140\n/);
    expect(err).toMatch(/\n1 problem in studio\.yaml\. Nothing was calculated\.\n$/);
  });

  it('a guess stands behind "perhaps:" without the word again', async () => {
    const slips: [string, string, string][] = [
      ["climate: de-bilt", "climate: de bildt", "de-bilt."],
      ["140 mm", "140 m", "mm is meant, not m."],
    ];
    for (const [right, wrong, guess] of slips) {
      const { err } = await command.run(["check", "studio.yaml"], {
        cwd: folderWith(SMALL_PROJECT.replace(right, wrong)),
      });
      expect(err).toContain(`\n  perhaps:  ${guess.charAt(0)}`);
      expect(err.replaceAll(/\s+/g, " ")).toContain(`perhaps: ${guess}`);
    }
  });
});

it("a number and its unit stay on one line, wherever it ends", () => {
  const text =
    "The air at its warm face reaches 80 % or more, and 1584 g/m² of water (1 % of it) gathers there in 20 days.";
  for (let width = 40; width <= 80; width += 1) {
    const shown = textFor([paragraph(text, 2)], { width, colours: false });
    expect(shown).not.toMatch(/\d\n/);
    expect(shown.trim().replace(/\s+/g, " ")).toBe(text);
    expect(Math.max(...shown.split("\n").map((one) => one.length))).toBeLessThanOrEqual(width);
  }
});

describe("Colour", () => {
  const terminal = { isTTY: true, columns: 200 };
  const red = (on: Terminal): string => textFor([line({ colour: "red", text: "x" })], on);

  it("is used on a terminal only, and never with NO_COLOR or on a dumb one", () => {
    expect(red(terminalOf(terminal, {}))).toBe("\u001b[31mx\u001b[39m\n");
    expect(red(terminalOf({}, {}))).toBe("x\n");
    expect(red(terminalOf(terminal, { NO_COLOR: "1" }))).toBe("x\n");
    expect(red(terminalOf(terminal, { TERM: "dumb" }))).toBe("x\n");
  });

  it("is in none of the streams of a run without a terminal", async () => {
    const { out, err } = await command.run(["assess", DEMO, "--out", join(command.folder(), "r.html")]);
    expect(out + err).not.toContain("\u001b");
  });
});

describe("Width", () => {
  it("is the terminal's, within 40 and 80 columns", () => {
    expect(terminalOf({ isTTY: true, columns: 200 }, {}).width).toBe(80);
    expect(terminalOf({ isTTY: true, columns: 60 }, {}).width).toBe(60);
    expect(terminalOf({ isTTY: true, columns: 10 }, {}).width).toBe(40);
    expect(terminalOf({}, {}).width).toBe(80);
  });

  it("breaks at spaces and leaves long words whole", () => {
    const on = (width: number): Terminal => ({ width, colours: false });
    expect(textFor([paragraph("one two three", 2)], on(9))).toBe("  one two\n  three\n");
    expect(textFor([paragraph("a verylongword b")], on(5))).toBe("a\nverylongword\nb\n");
  });
});

describe("How far a long calculation is", () => {
  const wall = SMALL_PROJECT.slice(SMALL_PROJECT.indexOf("  - name: Wall"));
  const many = (count: number): string =>
    SMALL_PROJECT.replace(wall, "") +
    Array.from({ length: count }, (_, index) => wall.replace("Wall", `Wall ${index}`)).join("");

  it.each([
    ["is told on a terminal where it is long", 30, true],
    ["is not told where it is short", 3, true],
    ["is not told where standard error is no terminal", 30, false],
  ])("%s", async (_, count, isTTY) => {
    const shown: string[] = [];
    const stderr = { isTTY, write: (text: string) => shown.push(text) };
    const { code } = await command.run(["assess", "studio.yaml", "--json"], { cwd: folderWith(many(count)), stderr });
    expect(code).toBe(0);
    if (!isTTY || count < 20) return expect(shown).toEqual([]);
    expect(shown[0]).toBe(`To calculate: ${count} build-ups.\n`);
    expect(shown[1]!.replace("\r\u001b[2K", "")).toMatch(/^build-up 1 of 30, \d+ s left$/);
    return expect(shown.at(-1)).toBe("\r\u001b[2K");
  });
});
