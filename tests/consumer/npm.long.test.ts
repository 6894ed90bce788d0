import { join } from "node:path";
import { expect, it } from "vitest";
import { consumerOfPackages, installWithNpm, ROOT, run } from "./consumer-folder.ts";

/** It uses the registry, so it belongs to the long tests. */
const consumer = consumerOfPackages(installWithNpm);

it("npm installs both tarballs, and the command works", () => {
  const command = join(
    consumer.folder(),
    "node_modules/.bin",
    process.platform === "win32" ? "warmside.cmd" : "warmside",
  );
  const said = run(
    command,
    ["assess", join(ROOT, "shared/alder-row-pottery.yaml"), "--out", "report.html"],
    consumer.folder(),
  );
  expect(said).toContain("Alder Row pottery studio");
  const program = 'import { dewPoint } from "@warmside/core"; console.log(dewPoint(1168).toFixed(2))';
  expect(consumer.node("--input-type=module", "-e", program)).toBe("9.26\n");
});
