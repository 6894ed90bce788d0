import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { runInFolder } from "../hostile/command-in-a-folder.ts";

/** The demo's studio wall in 89 mm with a solid corner: under the factor that December requires (plane of ISO 10211). */
const TEXT = readFileSync("shared/alder-row-pottery.yaml", "utf8").replace("thickness: 140 mm", "thickness: 89 mm");
const JUNCTIONS = "\njunctions:\n  - { name: Corner, outer corner: [Studio wall], posts: solid }\n";

test("a junction where mould can grow is told with what would be enough", async () => {
  const { exit, answer } = await runInFolder({ "a.yaml": TEXT + JUNCTIONS }, ["assess", "a.yaml"]);
  expect(exit).toBe(0);
  const told = answer.replace(/\s+/g, " ");
  expect(told).toMatch(
    /Mould can grow at the outer corner "Corner": temperature factor 0\.\d\d, December requires 0\.72\. Enough would be 2 posts/,
  );
});
