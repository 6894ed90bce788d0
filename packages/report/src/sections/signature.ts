import type { ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { missedTarget } from "../heat-target.ts";
import { type Html, html } from "../html.ts";

/**
 * What may be concluded, in words that claim no more than was worked out, and a place to sign.
 *
 * @param result - the project's result
 * @returns the section
 */
export function signature(result: ProjectResult): Html {
  const words = ["sound", "sound with conditions", "change it", "beyond this method"] as const;
  const counts = words
    .map((word) => ({ word, count: result.buildUps.filter(({ judgement }) => judgement.word === word).length }))
    .filter(({ count }) => count > 0)
    .map(({ word, count }) => `${count} ${word}`);
  const missed = result.buildUps.flatMap((buildUp, index) => {
    const words = missedTarget(buildUp);
    return words === null ? [] : [`${index + 1} ${shorten(buildUp.name, LONGEST_NAME)} ${words}`];
  });
  return html`<section id="signature"><h2>Name, date and signature</h2>
<p>Worked out by the monthly vapour pressure method for ${result.climate.name}, ${result.climate.severity}, and the rooms as stated. Moisture: ${counts.join(", ")}. ${missed.length > 0 ? `Heat: ${missed.join("; ")}. ` : null}No more than this is claimed.</p>
<p class="by-line">Name <span class="line"></span></p><p class="by-line">Date <span class="line short"></span></p><p class="by-line">Signature <span class="line"></span></p></section>`;
}

const LONGEST_NAME = 60;
