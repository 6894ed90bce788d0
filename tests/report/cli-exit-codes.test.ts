import { readdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DEMO, SMALL_PROJECT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();

describe("Exit 0: done, and a bad building is an answer", () => {
  it("assess of the demo", async () => {
    const { code, err } = await command.run(["assess", DEMO, "--out", join(command.folder(), "report.html")]);
    expect(err).toBe("");
    expect(code).toBe(0);
  });

  it("assess of a build-up that must be changed", async () => {
    const folder = command.folder();
    const bad = SMALL_PROJECT.replace("      - { material: polyethylene sheet 0.15 mm }\n", "").replace(
      "material: breather membrane",
      "material: polyethylene sheet 0.15 mm",
    );
    writeFileSync(join(folder, "bad.yaml"), bad);
    const { code, out } = await command.run(["assess", "bad.yaml"], { cwd: folder });
    expect(out).toContain("Wall: change it");
    expect(code).toBe(0);
  });

  it.each([["--help"], ["--version"], ["assess --help"], ["help check"], ["-h"], ["-V"]])("%s", async (line) => {
    const { code, out, err } = await command.run(line.split(" "));
    expect(code).toBe(0);
    expect(out).not.toBe("");
    expect(err).toBe("");
  });
});

describe("Exit 1: something is wrong with what was given", () => {
  it.each([[""], ["frobnicate"], ["assess"], ["assess no-such.yaml"], ["check --pdf x.yaml"], ["explain frobnicate"]])(
    "warmside %s",
    async (line) => {
      const { code, out, err } = await command.run(line.split(" ").filter((word) => word !== ""));
      expect(code).toBe(1);
      expect(out).toBe("");
      expect(err).not.toBe("");
    },
  );

  it("a project file with a problem", async () => {
    const folder = command.folder();
    writeFileSync(join(folder, "studio.yaml"), SMALL_PROJECT.replace("140 mm", "140"));
    for (const verb of ["check", "assess"]) {
      const { code, out, err } = await command.run([verb, "studio.yaml"], { cwd: folder });
      expect(code).toBe(1);
      expect(out).toBe("");
      expect(err).toContain("studio.yaml, line 10");
    }
    expect(readdirSync(folder)).toEqual(["studio.yaml"]);
  });
});
