import type { ProjectResult } from "@warmside/core";
import { backticksAsCode } from "../backticks.ts";
import { type Html, html } from "../html.ts";

/**
 * Lists every condition of the judgements once, as a box to tick, with the numbers of its build-ups.
 *
 * @param result - the project's result
 * @returns heading and list
 */
export function conditions({ buildUps }: ProjectResult): Html {
  const uses = conditionsOf(buildUps);
  const list =
    uses.length === 0
      ? html`<p>No conditions to meet.</p>`
      : html`<ul class="boxes">${uses.map(
          ({ condition, numbers }) =>
            html`<li>${box()}${backticksAsCode(condition)}${buildUps.length > 1 ? html` <span class="aside">(${numbers.length === buildUps.length ? "every build-up" : numbers.join(", ")})</span>` : null}</li>`,
        )}</ul>`;
  return html`<section class="conditions" id="conditions"><h2>Conditions</h2>${list}</section>`;
}

/** A box to tick. */
export function box(): Html {
  return html`<span class="box" aria-hidden="true"></span>`;
}

/**
 * Every condition once, with its build-ups.
 *
 * @param buildUps - of the result
 * @returns in the order in which they come up; numbers from 1
 */
export function conditionsOf(buildUps: ProjectResult["buildUps"]): { condition: string; numbers: number[] }[] {
  const uses = new Map<string, number[]>();
  buildUps.forEach(({ judgement }, index) => {
    for (const condition of judgement.conditions) uses.set(condition, [...(uses.get(condition) ?? []), index + 1]);
  });
  return [...uses].map(([condition, numbers]) => ({ condition, numbers }));
}
