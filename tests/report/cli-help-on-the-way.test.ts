import { spawnSync } from "node:child_process";
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { projectKeys, SHIPPED_MATERIALS } from "@warmside/core";
import { describe, expect, it } from "vitest";
import { searchMaterials, wordsIn } from "../../packages/report/src/cli/materials/search-materials.ts";
import { lookUp } from "../../packages/report/src/terms/look-up.ts";
import { headingOf, TERMS } from "../../packages/report/src/terms/terms.ts";
import { SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();

describe("Help", () => {
  it("of the program says what it is for, with one example", async () => {
    const { out } = await command.run(["--help"]);
    expect(out).toContain("Does water condense inside this timber wall");
    expect(out).toContain("Example:\n  warmside assess studio.yaml\n");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it.each(["assess", "check", "materials", "explain", "new", "schema", "completion"])(
    "of %s has an example",
    async (name) => {
      const { out } = await command.run([name, "--help"]);
      expect(out).toContain(`Example:\n`);
      expect(out).toContain(`warmside ${name}`);
    },
  );

  it("says in its first line where files are looked for", async () => {
    const folder = command.folder();
    for (const words of [[], ["--help"], ["assess", "--help"]]) {
      const { out, err } = await command.run(words, { cwd: folder });
      expect((out + err).split("\n")[0]).toBe(`Files are looked for in ${folder}`);
    }
  });

  it.each(["place", "compare", "vary", "spread"])("of %s says where its report goes", async (name) => {
    expect((await command.run([name, "--help"])).out.replaceAll(/\s+/g, " ")).toContain(`as NAME-${name}-report.html`);
  });

  it("lists no command that does not work", async () => {
    const names = [...(await command.run(["--help"])).out.matchAll(/^ {2}([a-z]+)(?: \[| <| {2})/gm)].map(
      ([, name]) => name!,
    );
    expect(names).toContain("assess");
    for (const name of names) expect((await command.run([name, "--help"])).code).toBe(0);
  });
});

describe("materials", () => {
  it("searches by all words and tells properties with their source", async () => {
    const { code, out } = await command.run(["materials", "Mineral", "wool", "slab"]);
    expect(code).toBe(0);
    expect(out).toMatch(/^mineral wool slab \(insulation, mineral\)\n {2}λ 0\.035 W\/\(m·K\)/);
    expect(out).toContain("  Source: ");
    for (const [name] of out.matchAll(/^\S.* \(/gm)) expect(name).toMatch(/mineral wool.*slab|mineral wool slab/);
  });

  it("tells the sd of a sheet, and the facings of a faced board", async () => {
    expect((await command.run(["materials", "polyethylene sheet 0.15 mm"])).out).toContain("sheet with sd 50 m");
    expect((await command.run(["materials", "foil-faced PIR"])).out.replaceAll(/\s+/g, " ")).toContain(
      "each facing with sd 1500 m",
    );
  });

  it("lists all names without words", async () => {
    const { out } = await command.run(["materials"]);
    expect(out).toContain("insulation\n");
    expect(out).toMatch(/\n\d{3} materials\. /);
  });

  /** Names of the materials that are found. */
  const told = async (...words: string[]): Promise<string[]> => {
    const found = await searchMaterials(wordsIn(words.join(" ")), SHIPPED_MATERIALS);
    return found.map(({ material }) => material.name);
  };

  it("knows what materials are also called, as a project file does", async () => {
    const meant: [string, string][] = [
      ["OSB", "oriented strand board"],
      ["chipboard", "particleboard"],
      ["drywall", "gypsum plasterboard"],
      ["DPM", "polythene damp-proof membrane 0.3 mm"],
      ["DPC", "self-adhesive bitumen damp-proof membrane"],
      ["VCL", "vapour control layer sd 20 m"],
      ["vapor retarder", "vapour control layer sd 20 m"],
      ["stone wool", "mineral wool slab"],
      ["fiberglass", "mineral wool roll"],
      ["cladding", "softwood weatherboarding"],
      ["feather-edge", "softwood weatherboarding"],
      ["tongue and groove", "softwood weatherboarding"],
      ["marine ply", "plywood"],
      ["woodfibre", "wood fibre insulation board"],
      ["GRP", "glass-reinforced polyester laminate"],
      ["house wrap", "breather membrane"],
      ["lino", "linoleum"],
      ["skim", "gypsum plaster"],
      ["tin sheet", "galvanised steel sheet new"],
      ["plastic sheet", "polyethylene sheet 0.15 mm"],
      ["foam board", "foil-faced PIR board"],
      ["foil-backed board", "foil-faced PIR board"],
      ["bitumen felt", "roofing underlay felt bituminous"],
      ["render", "cement and sand render"],
      ["concrete slab", "concrete 2400"],
      ["insulation", "expanded polystyrene"],
    ];
    for (const [word, name] of meant) expect(await told(word), word).toContain(name);
    expect((await command.run(["materials", "OSB"])).out).toContain("(wood-based board, board), also called osb\n");
    expect(await told("18", "mm", "osb")).toEqual([]);
    expect(await told("osb", "board")).toEqual(["oriented strand board"]);
  });

  it("finds whole words and beginnings of words, not what lies inside one", async () => {
    expect(await told("tin")).toEqual(["galvanised steel sheet new", "painted steel sheet"]);
    expect(await told("plaster")).toContain("gypsum plasterboard");
    expect(await told("foil-faced")).toContain("foil-faced PIR board");
    expect(await told("sheeps", "wool")).toEqual(["sheep's wool"]);
    expect(await told("0.032")).toEqual(["mineral wool slab 0.032"]);
  });

  it("shows how a board and a sheet that are not in the table are given on the spot", async () => {
    const { err } = await command.run(["materials", "unobtainium"]);
    const layers = /^ {2}- [\s\S]*/m.exec(err)![0].trimEnd().split("\n");
    const folder = command.folder();
    const indented = layers.map((line) => `    ${line}\n`).join("");
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT + indented);
    expect(await command.run(["check", "studio.yaml"], { cwd: folder })).toMatchObject({ code: 0 });
    const { buildUps } = JSON.parse((await command.run(["assess", "studio.yaml", "--json"], { cwd: folder })).out);
    expect(buildUps[0].layers).toMatchObject([{}, {}, {}, {}, {}, {}, { type: "material" }, { type: "sheet" }]);
    expect(Math.max(...err.split("\n").map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it("offers near names where nothing is found", async () => {
    const { code, out, err } = await command.run(["materials", "plasterbord"]);
    expect(code).toBe(1);
    expect(out).toBe("");
    expect(err).toMatch(/^No material of the table has "plasterbord"\. Did you mean plasterboard\?/);
  });
});

describe("explain", () => {
  it("has every word of the answer", async () => {
    const words = [
      "dry",
      "dries out",
      "stays wet",
      "sound",
      "sound with conditions",
      "change it",
      "beyond this method",
    ];
    for (const word of words)
      expect((await command.run(["explain", ...word.split(" ")])).out).toMatch(new RegExp(`^${word}\n`));
  });

  it("finds a word by its symbol, its unit, or another spelling", () => {
    expect(lookUp("SD value")?.name).toBe("sd");
    expect(lookUp("mu")?.name).toBe("μ");
    expect(lookUp("µ")?.name).toBe("μ");
    expect(lookUp("MN·s/g")?.name).toBe("vapour resistance");
    expect(lookUp("vapour-control layer")?.name).toBe("vapour layer");
  });

  it("has the words of the report and of the project file that a newcomer meets", () => {
    const words = [
      "corrosion",
      "target",
      "rank correlation",
      "Rsi",
      "Rse",
      "assumed",
      "tabulated",
      "partition",
      "faces",
      "cooling",
      "condensation",
      "spread",
      "unfavourable run",
      "wetter room",
      "severity",
    ];
    for (const word of words) expect(lookUp(word), word).not.toBe(null);
    expect(lookUp("dew")?.name).toBe("dew point");
    expect(lookUp("severity")?.says.join(" ")).toContain("note, caution or fault");
  });

  it("has the standards' terms for water, with symbol and unit", async () => {
    const names = [
      "interstitial condensation",
      "condensation rate",
      "evaporation",
      "accumulated moisture",
      "maximum accumulation",
      "residual moisture",
      "repeated year",
      "critical month",
      "construction moisture",
      "equilibrium moisture content",
      "thermal bridge",
      "heat-flow path",
      "sensitivity",
      "1-in-10 cold year",
      "1-in-10 warm year",
      "hand check",
      "design conditions",
      "quantities",
      "vapour control layer",
      "outer side",
      "external boundary",
    ];
    expect(names.filter((name) => lookUp(name) === null)).toEqual([]);
    expect(lookUp("Ma")?.name).toBe("accumulated moisture");
    expect(lookUp("thermal transmittance")?.name).toBe("U-value");
    expect((await command.run(["explain", "accumulated", "moisture"])).out).toMatch(
      /^accumulated moisture, Ma, in: g\/m²\n/,
    );
    expect((await command.run(["explain", "vapour", "layer"])).out).toContain("Technical term: vapour control layer.");
    expect(headingOf("condensation rate")).toBe("Condensation rate gc");
  });

  it("shows a second room as the project file takes it", async () => {
    const text = (await command.run(["explain", "rooms"])).out.replaceAll(/\s+/g, " ");
    const [, rooms] = /`(rooms: \{.+?\} \})`/.exec(text) ?? [];
    const [, room] = /`(room: .+?)`/.exec(text) ?? [];
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), `${SMALL_PROJECT}    ${room}\n${rooms}\n`);
    const { buildUps } = JSON.parse((await command.run(["assess", "studio.yaml", "--json"], { cwd: folder })).out);
    expect(buildUps[0].room).toBe("damp room");
  });

  it("tells a key of the project file: meaning, range, what counts where it is left out, example", async () => {
    const { out } = await command.run(["explain", "wall", "transmittance"]);
    expect(out).toMatch(/^wall transmittance, key of void\n/);
    for (const told of ["0.01 to 10 W/(m2 K)", "left out: 1.5 W/(m2 K)", "example:  wall transmittance: 1.7 W/(m2 K)"])
      expect(out).toContain(told);
  });

  it("tells a word that is a term and a key of several things in all its meanings", async () => {
    const { out } = await command.run(["explain", "emissivity"]);
    expect(out).toContain("key of material");
    expect(out).toContain("key of layer");
    expect((await command.run(["explain", "layer", "thickness"])).out).toMatch(/^thickness, key of layer\n/);
  });

  it("lists every key, thing by thing", async () => {
    const { out } = await command.run(["explain", "keys"]);
    const words = out.replaceAll(/\s+/g, " ");
    for (const { key } of projectKeys()) expect(words).toContain(key);
    expect(words).toContain("warmside explain KEY");
  });

  it("has one meaning for each word, and every pointer leads to an entry", () => {
    const names = TERMS.flatMap(({ name, also }) => [name, ...also]);
    expect(new Set(names).size).toBe(names.length);
    for (const { see } of TERMS) for (const name of see) expect(lookUp(name)?.name).toBe(name);
  });

  it("relates the units of vapour as the calculation does", async () => {
    expect((await command.run(["explain", "gauge"])).out).toContain("1000 gauge is 0.25 mm");
    expect((await command.run(["explain", "vapour", "resistance"])).out).toContain("1 MN s/g is an sd of 0.2 m");
  });

  it.each([
    ["sauna", /Beyond this method[\s\S]*Ask the maker/],
    ["is 2 kW enough", /Add up U times area[\s\S]*heat load/],
    ["U-value only", /does not depend on the place/],
  ])("answers what is often asked and is not worked out: %s", async (asked, says) => {
    expect((await command.run(["explain", ...asked.split(" ")])).out.replaceAll(/\s+/g, " ")).toMatch(says);
  });

  it("offers near words", async () => {
    const { code, err } = await command.run(["explain", "gage"]);
    expect(code).toBe(1);
    expect(err).toContain("Did you mean gauge?");
  });
});

describe("new", () => {
  it.each(["wall", "roof", "floor", "partition"])(
    "a %s is in order in every climate at hand, and never one to change",
    async (element) => {
      const folder = command.folder();
      const { code, out } = await command.run(["new", "--element", element, "--climate", "de-bilt"], { cwd: folder });
      expect(code).toBe(0);
      expect(out).toContain(`warmside assess my-${element}.yaml`);
      const text = readFileSync(join(folder, `my-${element}.yaml`), "utf8");
      expect(text.split("\n").filter((line) => line.includes("#")).length).toBeGreaterThan(8);
      for (const climate of ["oslo", "rome", "sand-point-alaska"]) {
        writeFileSync(join(folder, "there.yaml"), text.replace("climate: de-bilt", `climate: ${climate}`));
        const result = JSON.parse((await command.run(["assess", "there.yaml", "--json"], { cwd: folder })).out);
        expect(result.climate.name).toBe(climate);
        expect(result.buildUps[0].judgement.word).toMatch(/^sound/);
        expect(result.buildUps[0].heat.transmittance).toBeLessThanOrEqual(result.buildUps[0].target);
      }
    },
  );

  it("a partition stands between two rooms, with its vapour layer towards the damper one", async () => {
    const folder = command.folder();
    await command.run(["new", "--element", "partition", "--out", "studio.yaml"], { cwd: folder });
    const { buildUps, oddities } = JSON.parse(
      (await command.run(["assess", "studio.yaml", "--json"], { cwd: folder })).out,
    );
    expect(oddities).toEqual([]);
    expect(buildUps[0]).toMatchObject({ element: "partition", room: "damp room", faces: "indoor" });
    expect(buildUps[0].vapourLayer).toMatchObject({ warmSide: "inside", warmSideName: "damp room", onWarmSide: true });
  });

  it("takes the name of any climate at hand, or a table of the reader's own", async () => {
    const folder = command.folder();
    copyFileSync(join("climate", "oslo.csv"), join(folder, "here.csv"));
    expect((await command.run(["new", "--climate", "here.csv", "--out", "a.yaml"], { cwd: folder })).code).toBe(0);
    expect((await command.run(["check", "a.yaml"], { cwd: folder })).out).toContain("no problems");
    expect(
      (await command.run(["new", "--climate", "Melbourne Florida", "--out", "b.yaml"], { cwd: folder })).code,
    ).toBe(0);
    expect(readFileSync(join(folder, "b.yaml"), "utf8")).toContain("climate: melbourne-florida");
  });

  it("never writes over a project", async () => {
    const folder = command.folder();
    await command.run(["new"], { cwd: folder });
    writeFileSync(join(folder, "my-wall.yaml"), "my work");
    for (const args of [["new"], ["new", "--out", "my-wall.yaml"]])
      expect((await command.run(args, { cwd: folder })).code).toBe(1);
    expect(readFileSync(join(folder, "my-wall.yaml"), "utf8")).toBe("my work");
  });
});

describe("schema", () => {
  it("is the JSON Schema that is in git", async () => {
    const committed = readFileSync(new URL("../../packages/core/project.schema.json", import.meta.url), "utf8");
    expect(JSON.parse((await command.run(["schema"])).out)).toEqual(JSON.parse(committed));
  });
});

describe("completion", () => {
  /** What bash offers after a line. */
  async function offered(line: string): Promise<string[]> {
    const folder = command.folder();
    writeFileSync(join(folder, "completion.bash"), (await command.run(["completion", "bash"])).out);
    const script = `source completion.bash; COMP_WORDS=(${line}); COMP_CWORD=$(( \${#COMP_WORDS[@]} - 1 )); _warmside; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const ended = spawnSync("bash", ["--norc", "-c", script], { cwd: folder, encoding: "utf8" });
    expect(ended.stderr).toBe("");
    return ended.stdout.split("\n").filter((word) => word !== "");
  }

  it.each([
    ["warmside ass", ["assess"]],
    ["warmside assess --j", ["--json"]],
    ["warmside new --element ''", ["wall", "roof", "floor", "partition"]],
    ["warmside completion ''", expect.arrayContaining(["bash", "zsh"])],
    ["warmside climate l", ["list"]],
    ["warmside assess com", ["completion.bash"]],
    ["warmside assess x --out com", ["completion.bash"]],
  ])("bash: %s", async (line, words) => expect(await offered(line)).toEqual(words));

  const hasZsh = spawnSync("zsh", ["--version"]).status === 0;

  it.skipIf(!hasZsh).each([
    ["warmside ''", ["assess", "climate", "new"]],
    ["warmside assess ''", ["--json", "a file"]],
    ["warmside new --element ''", ["wall", "roof", "floor", "partition"]],
    ["warmside assess x --out ''", ["a file"]],
    ["warmside climate ''", ["list", "near", "make"]],
  ])("zsh (skipped where there is none): %s", async (line, words) => {
    const folder = command.folder();
    writeFileSync(join(folder, "_warmside"), (await command.run(["completion", "zsh"])).out);
    const standIns = `compadd() { shift; print -l -- "$@" }; _files() { print "a file" }; compdef() { : }`;
    const script = `${standIns}; source ./_warmside; words=(${line}); CURRENT=$#words; _warmside`;
    const ended = spawnSync("zsh", ["-f", "-c", script], { cwd: folder, encoding: "utf8" });
    expect(ended.stderr).toBe("");
    expect(ended.stdout.split("\n")).toEqual(expect.arrayContaining(words));
  });

  it("zsh: the script names every command and option", async () => {
    const { out } = await command.run(["completion", "zsh"]);
    expect(out).toMatch(/^#compdef warmside\n/);
    for (const name of ["assess", "check", "climate make", "new --element"]) expect(out).toContain(`"${name}")`);
  });
});
