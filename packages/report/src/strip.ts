import type { ProjectResult } from "@warmside/core";
import { type Html, html } from "./html.ts";
import type { DocumentStrip } from "./render-report.ts";
import { roundFigures } from "./round-figures.ts";
import { version } from "./version.ts";

/**
 * The strip that names the document: title, reference, revision, date, program and version, fingerprint of the input,
 * who prepared and who checked it. Date and names stand there only where the caller, or the file, gives them.
 *
 * @param result - the project's result
 * @param strip - what the caller says of the document
 * @param fingerprint - of the input, as `fingerprintOf` gives it
 * @returns a list of terms
 */
export function documentStrip(result: ProjectResult, strip: DocumentStrip, fingerprint: string): Html {
  const { query } = result;
  const entries: [string, string | null | undefined][] = [
    ["Project", result.project],
    ["Reference", result.reference],
    ["Revision", strip.revision],
    ["Date", strip.date ?? query?.date],
    ["Submitted to", query?.to],
    ["Drawings", query?.drawings.length ? query.drawings.join("; ") : null],
    ["Prepared by", strip.preparedBy ?? query?.preparedBy],
    ["Checked by", strip.checkedBy],
    ["Program", `warmside ${version()}`],
    ["Input", fingerprint],
  ];
  return html`<dl class="strip">${entries
    .filter(([, value]) => value)
    .map(([label, value]) => html`<div><dt>${label}</dt><dd>${value}</dd></div>`)}</dl>`;
}

/**
 * A fingerprint of what was worked out from: climate, rooms and build-ups with every value used. The same input has the
 * same fingerprint on every machine; a changed value has another.
 *
 * @param result - the project's result
 * @returns twelve hexadecimal digits in threes
 * Source: the first six bytes of SHA-256 over the rounded values.
 */
export async function fingerprintOf(result: ProjectResult): Promise<string> {
  const { project, reference, query, climate, rooms, buildUps } = result;
  const input = {
    ...{ project, reference, query, climate, rooms },
    buildUps: buildUps.map(({ name, element, room, faces, target, area, layers, framings, farSide, heat }) => ({
      ...{ name, element, room, faces, target, area, layers, framings, farSide },
      groundBasis: heat?.groundBasis ?? null,
      corrections: heat?.corrections ?? [],
    })),
  };
  const text = new TextEncoder().encode(JSON.stringify(roundFigures(input)));
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", text)).slice(0, BYTES_SHOWN);
  const digits = Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
  return digits.replace(/(...)(?=.)/g, "$1-");
}

const BYTES_SHOWN = 6;
