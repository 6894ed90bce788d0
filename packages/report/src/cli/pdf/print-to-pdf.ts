import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { CommandProblem } from "../command-result.ts";
import type { OwnMark } from "../files/output-place.ts";
import { whenInterrupted } from "../interruption.ts";

/** A comment after the end of the document, by which a PDF of ours is known again. */
export const PDF_MARK: OwnMark = { where: "end", text: "\n% made by warmside\n" };

/**
 * Prints a page to PDF with a browser, out of a folder of its own that is cleared away.
 *
 * @param page - the whole HTML text
 * @param browser - path of the browser's program
 * @returns the PDF with our mark at its end
 * @throws CommandProblem when the browser makes none
 */
export async function printToPdf(page: string, browser: string): Promise<Uint8Array> {
  const folder = mkdtempSync(join(tmpdir(), "warmside-print-"));
  const clear = (): void => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
  const forget = whenInterrupted(clear);
  try {
    const source = join(folder, "report.html");
    const target = join(folder, "report.pdf");
    writeFileSync(source, page);
    const messages = await runBrowser(browser, [...flags(folder, target), pathToFileURL(source).href]);
    return withMark(readPdf(target, messages));
  } finally {
    forget();
    clear();
  }
}

/** A page with many plots prints in a second or two [ms]. */
const LONGEST_WAIT = 60_000;

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

/** What the browser said on standard error, for the message when it made nothing. */
function runBrowser(browser: string, args: string[]): Promise<string> {
  return new Promise((resolve, reject) => {
    const child = spawn(browser, args, { stdio: ["ignore", "ignore", "pipe"], timeout: LONGEST_WAIT });
    const forget = whenInterrupted(() => child.kill("SIGKILL"));
    let messages = "";
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      messages = (messages + text).slice(-LONGEST_MESSAGE);
    });
    child.on("error", (error) => {
      forget();
      reject(new CommandProblem("no-pdf", `${browser} could not be started: ${error.message}. Nothing was written.`));
    });
    child.on("close", () => {
      forget();
      resolve(messages);
    });
  });
}

const LONGEST_MESSAGE = 2000;

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
  return Buffer.concat([pdf, Buffer.from(PDF_MARK.text)]);
}
