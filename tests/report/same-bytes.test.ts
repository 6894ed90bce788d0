import { renderReport } from "@warmside/report";
import { afterAll, expect, test } from "vitest";
import { demoResult } from "./demo.ts";

const zone = process.env.TZ;
afterAll(() => {
  process.env.TZ = zone;
});

test("the same result gives the same bytes in any time zone and at any time of a process", async () => {
  const first = await renderReport(demoResult());
  for (const other of ["Asia/Kolkata", "Pacific/Kiritimati", "America/St_Johns"]) {
    process.env.TZ = other;
    expect(new Date(2026, 0, 1).getTimezoneOffset()).not.toBe(0);
    expect((await renderReport(demoResult())) === first, other).toBe(true);
  }
});

test("the last digits in which engines differ cannot show", async () => {
  const result = demoResult();
  const nudged = JSON.parse(JSON.stringify(result), (_, value) =>
    typeof value === "number" ? value * (1 + 4e-15) : value,
  );
  const restored = restoreIntegers(nudged, result);
  expect((await renderReport(restored as typeof result)) === (await renderReport(result))).toBe(true);
});

/** Puts whole numbers back: counts and places must stay what they are. */
function restoreIntegers(data: unknown, original: unknown): unknown {
  if (typeof original === "number") return Number.isInteger(original) ? original : data;
  if (Array.isArray(original))
    return original.map((entry, index) => restoreIntegers((data as unknown[])[index], entry));
  if (original !== null && typeof original === "object") {
    return Object.fromEntries(
      Object.entries(original).map(([key, value]) => [
        key,
        restoreIntegers((data as Record<string, unknown>)[key], value),
      ]),
    );
  }
  return data;
}
