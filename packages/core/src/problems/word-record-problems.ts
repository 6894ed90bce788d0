import { type Facts, inSpeech, type Wordings } from "./wording.ts";

/** Problems of weather records. */
export const RECORD_WORDINGS: Wordings = {
  "records-binary": () => ({
    says: "the weather records are not text",
    expected: "comma-separated values saved as UTF-8",
    likelySlip: "A spreadsheet or a packed file was probably named",
  }),
  "records-empty": () => ({
    says: "the weather records are empty, or have no line of headings",
    expected: "a line of headings and one row for each reading",
  }),
  "records-line-too-long": () => ({
    says: "a line is far too long for a reading",
    expected: "one reading on each line",
    likelySlip: "Line ends were lost, or another file was named",
  }),
  "records-no-readings": ({ text }) => ({
    says: `none of ${text("rows")} rows holds a reading of temperature and humidity`,
    expected: "at least a whole year of readings",
  }),
  "records-one-reading": () => ({
    says: "all readings are of one moment",
    expected: "readings at even steps through at least a year",
  }),
  "records-interval": ({ text }) => ({
    says: `readings are ${text("days")} days apart`,
    expected: "readings at least once a day: means of longer spells hide the vapour pressure",
  }),
  "records-interval-changes": ({ text }) => ({
    says: `${text("month")} has ${text("present")} readings, more than the ${text("expected")} that fit its steps`,
    expected: "readings at even steps, each once",
    likelySlip: "Rows are there twice, or the steps change within the file",
  }),
  "records-incomplete": ({ text, list }) => ({
    says: `months are not whole: ${inSpeech(list("months"), "and")} readings`,
    expected: `at least ${text("leastPercent")} % of the readings of every month`,
  }),
  "records-contradicting": ({ text }) => ({
    says: `${text("contradicting")} of ${text("rows")} rows give two different readings for one moment`,
    expected: "one reading for each moment",
  }),
  "records-wet-bulb-altitude": () => ({
    says: "wet-bulb temperatures need the height of the station, because air pressure counts",
    expected: "the station's height in metres",
    write: "--altitude 25",
  }),
  "records-column-missing": ({ text, list }) => ({
    says: `no column for ${text("role")} was found among ${inSpeech(list("headings"), "and")}`,
    expected: `a heading that says ${text("role")}, or the column's name told`,
    write: `--column "${text("role")}=…"`,
  }),
  "records-column-named-missing": ({ text, list }) => ({
    says: `there is no column ${text("name")} for ${text("role")}`,
    expected: `one of ${inSpeech(list("headings"), "or")}`,
  }),
  "records-column-ambiguous": ({ text, list }) => ({
    says: `${inSpeech(list("choices"), "and")} could each be the ${text("role")}`,
    expected: "one of them, told by name",
    write: `--column "${text("role")}=${list("choices")[0] ?? ""}"`,
  }),
  "records-unit-missing": ({ text }) => ({
    says: `the column ${text("heading")} does not say its unit`,
    expected: "Pa, hPa or kPa in the heading, or told beside it",
    write: "--pressure-unit hPa",
  }),
  "records-row-unreadable": (facts) => ({
    says: `${rows(facts)} cannot be read`,
    expected: "cells parted as in the line of headings",
  }),
  "records-row-cells": (facts) => ({
    says: `${rows(facts)} ${isOne(facts) ? "has" : "have"} ${facts.text("found")} cells, and the headings ${facts.text("expected")}`,
    expected: "as many cells in every row as headings",
    likelySlip: "Decimal commas cut numbers in two, or a line was cut off",
  }),
  "records-date": (facts) => ({
    says: `${facts.text("fault") === "two-digit year" ? "a year of two digits" : `the ${facts.text("fault")}`} in ${rows(facts)} cannot be read`,
    expected: "a date such as 2005-07-31, and a time such as 14:00",
    likelySlip:
      facts.text("fault") === "order of day and month"
        ? "Day and month cannot be told apart: say which comes first with --date-order"
        : null,
  }),
  "records-number": (facts) => ({
    says: `${facts.text("column")} in ${rows(facts)} is not a number`,
    expected: "a number, or an empty cell where a reading is missing",
  }),
  "records-decimal-separator": (facts) => ({
    says: `${facts.text("column")} in ${rows(facts)} mixes decimal points and commas`,
    expected: "one way of writing decimals throughout",
  }),
  "records-temperature-range": (facts) => ({
    says: `${facts.text("column")} in ${rows(facts)} is no temperature of air in ${facts.text("unit")}`,
    expected: "air between −90 and 60 °C",
    likelySlip: "The unit may be another, or a mark for a missing reading was taken for a number",
  }),
  "records-humidity-range": (facts) => ({
    says: `${facts.text("column")} in ${rows(facts)} cannot be: air of that temperature holds less, or more than none`,
    expected: `${facts.text("role")} in ${facts.text("unit")} that goes with the temperature beside it`,
    likelySlip: "The unit may be another, or a mark for a missing reading was taken for a number",
  }),
  "records-humidity-fraction": ({ text }) => ({
    says: `no relative humidity is over ${text("greatest")}`,
    expected: "relative humidity in per cent",
    likelySlip: "It is probably written as a fraction",
    write: "--humidity-unit fraction",
  }),
};

/** The rows that share a slip: the line itself, or the first lines and how many there are. */
function rows(facts: Facts): string {
  if (isOne(facts)) return "the row";
  const count = Number(facts.text("count"));
  const lines = facts.list("lines");
  const others = count - lines.length;
  return `${count} rows (lines ${inSpeech(lines, "and")}${others > 0 ? ` and ${others} more` : ""})`;
}

function isOne({ text }: Facts): boolean {
  return Number(text("count")) <= 1;
}
