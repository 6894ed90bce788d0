import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const source = (path: string): string => fileURLToPath(new URL(`./packages/${path}`, import.meta.url));

const long = process.env.WARMSIDE_LONG ? [] : ["tests/**/*.long.test.ts"];
const alone = ["tests/replaced/replaced.alone.test.ts"];

/**
 * Tests run on the sources; time zone and language are pinned, and every report must not depend on either. The files of
 * a worker share the modules they load, which saves half of the time; tests that put a module of their own in the
 * place of one (`vi.mock`) stand in `tests/replaced/`, one file that loads everything for itself.
 */
export default defineConfig({
  resolve: {
    alias: [
      { find: "@warmside/core/calculation", replacement: source("core/src/calculation.ts") },
      { find: "@warmside/core/formulas", replacement: source("core/src/formulas.ts") },
      { find: "@warmside/core/field", replacement: source("core/src/field.ts") },
      { find: "@warmside/core", replacement: source("core/src/index.ts") },
      { find: "@warmside/report", replacement: source("report/src/index.ts") },
    ],
  },
  test: {
    env: { TZ: "UTC", LANG: "C.UTF-8", NO_COLOR: "1" },
    // No clock decides a test: time is the benchmarks'. Only what hangs is ended.
    testTimeout: 3_600_000,
    hookTimeout: 3_600_000,
    expect: { poll: { timeout: 3_600_000 } },
    maxWorkers: 2,
    // A worker keeps what its files have loaded: its heap stays below a gigabyte. Most code of a test runs a few times only:
    // compiled plainly at once, and with room for what is soon thrown away, it takes a fifth less time.
    execArgv: [
      "--max-old-space-size=700",
      "--min-semi-space-size=32",
      "--max-semi-space-size=64",
      "--always-sparkplug",
    ],
    projects: [
      {
        extends: true,
        test: {
          name: "together",
          include: ["tests/**/*.test.ts"],
          exclude: ["**/node_modules/**", ...long, ...alone],
          isolate: false,
        },
      },
      { extends: true, test: { name: "alone", include: alone } },
    ],
  },
});
