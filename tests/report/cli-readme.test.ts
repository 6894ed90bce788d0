import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT } from "./bundled-command.ts";
import { commandInProcess } from "./command-in-process.ts";

const command = commandInProcess();
const readme = readFileSync(join(ROOT, "README.md"), "utf8");
const [project = "", rooms = ""] = [...readme.matchAll(/^```yaml\n([\s\S]*?)^```$/gm)].map(([, block]) => block!);

async function assessed(text: string): Promise<{ buildUps: { room: string; faces: string }[]; oddities: unknown[] }> {
  const folder = command.folder();
  writeFileSync(join(folder, "studio.yaml"), text);
  return JSON.parse((await command.run(["assess", "studio.yaml", "--json"], { cwd: folder })).out);
}

describe("The examples of the README", () => {
  it("are a project file without a problem or an odd value", async () => {
    expect(await assessed(project)).toMatchObject({ project: "Garden workshop", buildUps: [{}], oddities: [] });
  });

  it("and rooms that can be put into it, with a partition between them", async () => {
    const layers = project.slice(project.indexOf("    layers:\n") + "    layers:\n".length);
    const framings = project.slice(project.indexOf("    framings:"), project.indexOf("    layers:\n"));
    const head = project.slice(0, project.indexOf("build-ups:\n"));
    const result = await assessed(`${head}${rooms}${layers}${framings}`);
    expect(result).toMatchObject({ buildUps: [{ room: "damp room", faces: "store" }], oddities: [] });
  });
});
