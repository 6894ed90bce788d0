import { formatNumber, MONTH_NAMES, type RecordMonths } from "@warmside/core";

/**
 * The result of weather records for a terminal: a line for each month, then what was left out or treated specially.
 *
 * @param records - the months
 * @returns a heading and a line for each month, then sentences; none has a line end
 */
export function recordsInWords(records: RecordMonths): { months: string[]; remarks: string[] } {
  const head = "month       °C    RH %   readings";
  const months = records.months.map((month, index) => {
    const temperature = formatNumber(month.temperature, 1).padStart(7);
    const humidity = formatNumber(month.relativeHumidity * 100, 1).padStart(7);
    const missing = Math.max(0, month.expected - month.used);
    const readings =
      missing === 0 ? `${month.used}` : `${month.used}, ${missing} missing (${share(missing, month.expected)})`;
    return `${MONTH_NAMES[index]!.padEnd(9)}${temperature}${humidity}   ${readings}`;
  });
  return { months: [head, ...months], remarks: remarks(records) };
}

function remarks(records: RecordMonths): string[] {
  const { repeated, contradicting, countedAsSaturated, typicalYear, months } = records;
  const held = MONTH_NAMES.filter((_, month) => months[month]!.heldAtSaturation);
  const sentences: [boolean, string][] = [
    [true, `Read: ${records.columnsRead}.`],
    [typicalYear, "One typical year, not a mean of years."],
    [repeated > 0, `${many(repeated, "row repeats", "rows repeat")} a time already read with the same values.`],
    [
      contradicting > 0,
      `${many(contradicting, "row contradicts", "rows contradict")} an earlier row of the same time; the first counts.`,
    ],
    [
      countedAsSaturated > 0,
      `${many(countedAsSaturated, "reading a little over saturation was", "readings a little over saturation were")} counted as saturated.`,
    ],
    [held.length > 0, `Relative humidity was held at 100 % in ${held.join(", ")}.`],
  ];
  return sentences.filter(([told]) => told).map(([, sentence]) => sentence);
}

function many(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`;
}

function share(part: number, whole: number): string {
  return `${formatNumber((100 * part) / whole, 1)} %`;
}
