import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { bundledCommand, ROOT } from "./bundled-command.ts";

const command = bundledCommand();
const readme = readFileSync(join(ROOT, "README.md"), "utf8");
const [project = "", rooms = ""] = [...readme.matchAll(/^```yaml\n([\s\S]*?)^```$/gm)].map(([, block]) => block!);

function assessed(text: string): { buildUps: { room: string; faces: string }[]; oddities: unknown[] } {
  const folder = command.folder();
  writeFileSync(join(folder, "studio.yaml"), text);
  return JSON.parse(command.run(["assess", "studio.yaml", "--json"], { cwd: folder }).out);
}

describe("The examples of the README", () => {
  it("are a project file without a problem or an odd value", () => {
    expect(assessed(project)).toMatchObject({ project: "Garden workshop", buildUps: [{}], oddities: [] });
  });

  it("and rooms that can be put into it, with a partition between them", () => {
    const layers = project.slice(project.indexOf("    layers:\n") + "    layers:\n".length);
    const framings = project.slice(project.indexOf("    framings:"), project.indexOf("    layers:\n"));
    const head = project.slice(0, project.indexOf("build-ups:\n"));
    const result = assessed(`${head}${rooms}${layers}${framings}`);
    expect(result).toMatchObject({ buildUps: [{ room: "damp room", faces: "store" }], oddities: [] });
  });
});
