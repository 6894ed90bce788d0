import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { CommandProblem } from "../command-result.ts";
import { fingerprintOf } from "../files/changed-by-hand.ts";
import { fileFault } from "../files/file-fault.ts";
import type { OwnMark } from "../files/output-place.ts";
import { whenInterrupted } from "../interruption.ts";
import { isRunning } from "../is-running.ts";
import { runBounded } from "./run-bounded.ts";

/** A comment after the end of the document, by which a PDF made by warmside is recognised. */
export const PDF_MARK: OwnMark = { where: "end", text: "\n% made by warmside", fingerprinted: true };

/** Where and how long a browser prints. */
interface Printing {
  /** Temporary folders are made here. */
  within?: string;
  /** A page with many plots prints in a second or two; after this the browser is ended [ms]. */
  longest?: number;
}

/**
 * Prints a page to PDF with a browser, in a temporary folder that is removed afterwards.
 *
 * @param page - the whole HTML text
 * @param browser - path of the browser's program
 * @param printing - where and how long (default: the system's temporary folder, a minute)
 * @returns the PDF with our mark at its end
 * @throws CommandProblem when the browser makes none in time, or there is no place to print
 */
export async function printToPdf(
  page: string,
  browser: string,
  { within = tmpdir(), longest = 60_000 }: Printing = {},
): Promise<Uint8Array> {
  const folder = temporaryFolder(within);
  const clear = (): void => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  const forget = whenInterrupted(clear);
  try {
    const source = join(folder, "report.html");
    const target = join(folder, "report.pdf");
    writeFileSync(source, page);
    const ran = await runBounded(browser, [...flags(folder, target), pathToFileURL(source).href], longest);
    if (ran.inTime) return withMark(readPdf(target, ran.said));
    throw new CommandProblem(
      "no-pdf",
      `The browser did not finish within ${longest / 1000} s and was stopped. Print the report from the browser instead; nothing was written.`,
    );
  } catch (error) {
    throw fileFault(error, "written", folder);
  } finally {
    forget();
    clear();
  }
}

/** Makes a new folder and removes those left by killed commands. */
function temporaryFolder(within: string): string {
  try {
    for (const name of readdirSync(within)) {
      const [, maker] = /^warmside-print-(\d+)-/.exec(name) ?? [];
      if (maker !== undefined && !isRunning(Number(maker)))
        rmSync(join(within, name), { recursive: true, force: true });
    }
    return mkdtempSync(join(within, `warmside-print-${process.pid}-`));
  } catch (error) {
    throw fileFault(error, "written", `The temporary folder ${within}`);
  }
}

function flags(folder: string, target: string): string[] {
  const mayNotSandbox = process.getuid?.() === 0;
  return [
    "--headless",
    ...(mayNotSandbox ? ["--no-sandbox"] : []),
    "--disable-gpu",
    "--disable-extensions",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--no-first-run",
    "--no-pdf-header-footer",
    `--user-data-dir=${join(folder, "profile")}`,
    `--print-to-pdf=${target}`,
  ];
}

function readPdf(target: string, messages: string): Buffer {
  try {
    const pdf = readFileSync(target);
    if (pdf.subarray(0, PDF_BEGINNING.length).equals(PDF_BEGINNING)) return pdf;
  } catch {
    // No file: told below, with what the browser said.
  }
  const said = messages.trim().split("\n").at(-1);
  const because = said ? ` It said: ${said}` : "";
  throw new CommandProblem(
    "no-pdf",
    `The browser made no PDF. Print the report from the browser instead; nothing was written.${because}`,
  );
}

const PDF_BEGINNING = Buffer.from("%PDF-");

function withMark(pdf: Buffer): Uint8Array {
  return Buffer.concat([pdf, Buffer.from(`${PDF_MARK.text}, fingerprint ${fingerprintOf(pdf)}\n`)]);
}
