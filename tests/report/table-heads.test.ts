import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { columnOf, symbolColumn, TERMS, wordColumn } from "../../packages/report/src/terms/terms.ts";

const SOURCES = "packages/report/src";
const SYMBOLS = TERMS.flatMap(({ symbol }) => symbol ?? []);

describe("heads of tables that are terms of the list are made from it", () => {
  it("no source writes a symbol of the list as a head by itself", () => {
    const files = readdirSync(SOURCES, { recursive: true, encoding: "utf8" }).filter((file) => /\.tsx?$/.test(file));
    const written = files.flatMap((file) =>
      [...readFileSync(join(SOURCES, file), "utf8").matchAll(/head: "([^"]+)"/g)]
        .filter(([, head]) => SYMBOLS.includes(head!))
        .map(([, head]) => `${file}: ${head}`),
    );
    expect(files.length).toBeGreaterThan(200);
    expect(SYMBOLS.length).toBeGreaterThan(10);
    expect(written).toEqual([]);
  });

  it("by symbol, by word, and by both", () => {
    expect(symbolColumn("conductivity")).toEqual({ head: "λ", unit: "W/(m·K)", kind: "figures" });
    expect(wordColumn("temperature factor", null)).toEqual({ head: "Temperature factor", kind: "figures" });
    expect(columnOf("accumulated moisture").head).toBe("Accumulated moisture Ma");
    expect(() => symbolColumn("target")).toThrow(RangeError);
    expect(() => wordColumn("heat resistance")).toThrow(RangeError);
  });
});
