import type { ProjectResult } from "@warmside/core";
import { shorten } from "../escape.ts";
import { missedTarget } from "../heat-target.ts";
import { type Html, html } from "../html.ts";

/** The parts that follow the build-ups, by name and heading. */
export const CLOSING_PARTS = [
  ["method", "Method and edition"],
  ["left-out", "What is left out"],
  ["cautions", "Cautions"],
  ["sources", "Sources of the values"],
  ["checklist", "Site checklist"],
  ["signature", "Name, date and signature"],
] as const;

/**
 * The list of contents, each entry a link.
 *
 * @param result - the project's result
 * @returns the navigation of the page
 */
export function contents(result: ProjectResult): Html {
  const buildUps = result.buildUps.map(
    (buildUp, index) =>
      html`<li><a href="#build-up-${index + 1}">${index + 1} ${shorten(buildUp.name, 60)}</a> <span class="aside">${buildUp.judgement.word}${missedTarget(buildUp) === null ? null : "; heat misses its target"}</span></li>`,
  );
  return html`<nav class="contents" aria-labelledby="contents-heading"><h2 id="contents-heading">Contents</h2><ul>
<li><a href="#answer">The answer</a></li>
<li><a href="#worked-out-for">What it was worked out for</a></li>
${buildUps}
${CLOSING_PARTS.map(([key, heading]) => html`<li><a href="#${key}">${heading}</a></li>`)}
</ul></nav>`;
}
