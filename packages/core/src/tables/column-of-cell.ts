/**
 * Where a cell begins in its line.
 *
 * @param line - a line of a table with commas between cells, quotation marks allowed
 * @param cell - which cell, from 0
 * @returns the column of its first character that is not a space, from 1
 * @example columnOfCell("May, 13.8,74.2", 1) // 6
 */
export function columnOfCell(line: string, cell: number): number {
  let quoted = false;
  let commas = 0;
  let start = 0;
  for (let index = 0; index < line.length && commas < cell; index += 1) {
    const character = line[index];
    if (character === '"') quoted = !quoted;
    if (character === "," && !quoted) {
      commas += 1;
      start = index + 1;
    }
  }
  const spaces = /^\s*/.exec(line.slice(start))![0].length;
  return start + spaces + 1;
}
