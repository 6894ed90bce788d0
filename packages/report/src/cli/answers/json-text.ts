/**
 * Data as JSON for standard output.
 *
 * @param data - plain data
 * @returns JSON that ends with a line end
 * @throws Error when a number in it is not finite: JSON would turn it into `null` and hide it
 */
export function jsonText(data: unknown): string {
  return `${JSON.stringify(data, onlyFinite, 2)}\n`;
}

function onlyFinite(key: string, value: unknown): unknown {
  if (typeof value === "number" && !Number.isFinite(value)) throw new Error(`the result holds ${value} at "${key}"`);
  return value;
}
