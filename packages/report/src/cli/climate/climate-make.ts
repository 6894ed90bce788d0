import { basename, extname } from "node:path";
import { climateTable, type RecordMonths, type RecordsPlace } from "@warmside/core";
import { json } from "../answers/json.ts";
import type { CommandContext } from "../command-context.ts";
import { type CommandResult, done } from "../command-result.ts";
import { fingerprintOf } from "../files/changed-by-hand.ts";
import { besideInput, type OutputPlace, type OwnMark, outputPlace } from "../files/output-place.ts";
import { type InputFile, readInput } from "../files/read-input.ts";
import { writeWhole } from "../files/write-whole.ts";
import { type Line, line, paragraph } from "../lines.ts";
import { withProblemsAsJson } from "../problems-as-json.ts";
import { type Progress, progressOn } from "../progress.ts";
import { refusedProject } from "../refused-project.ts";
import { siteOf } from "./climate-near.ts";
import { LARGEST_RECORDS, readRecordsFile } from "./read-records-file.ts";
import { recordOptionsOf, type WrittenRecordOptions } from "./record-options.ts";
import { recordsInWords } from "./records-in-words.ts";

/** Options of `warmside climate make`, as written. */
export interface WrittenMakeOptions extends WrittenRecordOptions {
  out?: string;
  json?: boolean;
  place?: string;
  country?: string;
  latitude?: string;
  longitude?: string;
  altitude?: string;
  origin?: string;
  terms?: string;
  acknowledgement?: string;
}

/** Every table that warmside made has this line near its beginning. */
export const CLIMATE_MARK: OwnMark = {
  where: "beginning",
  text: "# means: temperature of the readings",
  fingerprinted: true,
};

/**
 * `warmside climate make FILE`: weather records to a climate table.
 *
 * @param file - the records, as written
 * @param written - the options; with `json` the months are printed as data, and a table is written only where `out` says
 * @param context - where the user stands
 * @returns the months and where the table went; or every problem, and then nothing is written
 * @throws CommandProblem when an option is none, or the file cannot be read or written
 */
export async function climateMake(
  file: string,
  written: WrittenMakeOptions,
  context: CommandContext,
): Promise<CommandResult> {
  const asJson = written.json === true;
  return await withProblemsAsJson(asJson, async () => {
    const place = placeOf(file, written);
    const options = recordOptionsOf(written, place.altitude);
    const input = readInput(file, context, LARGEST_RECORDS);
    const output = asJson && written.out === undefined ? null : placeOfTable(input, written.out, context);
    const reading = await readRecordsFile(input.text, options, readingProgress(context));
    if (!reading.ok) return refusedProject(reading.problems, file, asJson);
    const { value: records } = reading;
    if (output !== null) await writeWhole([{ ...output, content: withFingerprint(climateTable(records, place)) }]);
    if (asJson || output === null) return done(json({ place, records }));
    return done(inWords(records, output));
  });
}

/** A later change of the table by hand can be seen by it. */
function withFingerprint(table: string): string {
  return `${table}# made by warmside, fingerprint ${fingerprintOf(Buffer.from(table))}\n`;
}

function readingProgress({ progress }: CommandContext): Progress {
  return progressOn(progress, (done, of) => `Reading: ${Math.round((100 * done) / of)} %`);
}

function placeOfTable(input: InputFile, out: string | undefined, context: CommandContext): OutputPlace {
  const wanted = out ?? besideInput(input.path, "-climate.csv");
  return outputPlace(wanted, out !== undefined, CLIMATE_MARK, [input.path], context);
}

function inWords(records: RecordMonths, output: OutputPlace): Line[] {
  const { months, remarks } = recordsInWords(records);
  const use = `Written to ${output.shown}. In a project file: climate: ${basename(output.path)}`;
  return [...months.map((month) => line(month)), ...[...remarks, use].map((remark) => paragraph(remark))];
}

function placeOf(file: string, written: WrittenMakeOptions): RecordsPlace {
  const { latitude, longitude, altitude } = written;
  const site = siteOf({ latitude: latitude ?? "0", longitude: longitude ?? "0", altitude });
  return {
    place: written.place ?? basename(file, extname(file)),
    country: written.country ?? null,
    latitude: latitude === undefined ? null : site.latitude,
    longitude: longitude === undefined ? null : site.longitude,
    altitude: site.altitude,
    origin: written.origin ?? null,
    terms: written.terms ?? null,
    acknowledgement: written.acknowledgement ?? null,
  };
}
