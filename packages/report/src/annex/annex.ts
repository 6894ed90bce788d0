import type { ProjectResult } from "@warmside/core";
import { type Html, html } from "../html.ts";
import { governingView } from "../section-view.ts";
import { MOST_REMEDIES, remedyTable } from "../sheet/remedy-table.ts";
import { variantsTable } from "../studies/comparison-part.ts";
import { criticalMonthPart } from "./critical-month.ts";
import { findingsPart } from "./findings.ts";
import { heatPart } from "./heat.ts";
import { junctionsAnnex } from "./junctions.ts";
import { otherChecksPart } from "./other-checks.ts";
import type { AnnexOf, Part } from "./part.ts";
import { planePart } from "./plane.ts";
import { surfacePart } from "./surface.ts";
import { trappedWaterPart } from "./trapped-water.ts";
import { twelveMonthsPart } from "./twelve-months.ts";
import { waterPart } from "./water.ts";
import { woodPart } from "./wood.ts";

/**
 * The annex with the hand checks, node tables, twelve months, further checks and full findings of every build-up. It is
 * folded away behind one link, and printed if it is open.
 *
 * @param result - the project's result
 * @param isOpen - whether it is printed
 * @returns the section
 */
export async function annex(result: ProjectResult, isOpen: boolean): Promise<Html> {
  const parts = await Promise.all(result.buildUps.map((buildUp, index) => ofBuildUp(result, buildUp, index + 1)));
  return html`<details id="annex" class="annex"${isOpen ? html` open` : null}><summary><h2>Annex: every figure and the hand checks</h2></summary>${parts}${await junctionsAnnex(result)}</details>`;
}

async function ofBuildUp(result: ProjectResult, buildUp: AnnexOf["buildUp"], number: number): Promise<Html> {
  const id = `annex-${number}`;
  const page: AnnexOf = { result, buildUp, number, id, view: governingView(buildUp) };
  const made = await Promise.all([
    heatPart(page),
    surfacePart(page),
    planePart(page),
    criticalMonthPart(page),
    twelveMonthsPart(page),
    waterPart(page),
    woodPart(page),
    trappedWaterPart(page),
    otherChecksPart(page),
    findingsPart(page),
    remediesPart(page),
    variantsPart(page),
  ]);
  const parts = made.filter((part) => part !== null);
  return html`<section class="annex-of page" id="${id}"><h3>Annex ${number}: ${buildUp.name}</h3><p class="screen-only"><a href="#build-up-${number}">Back to sheet ${number}</a></p>${parts.map(
    ({ heading, body }) => html`<section><h4>${heading}</h4>${body}</section>`,
  )}</section>`;
}

function remediesPart({ buildUp }: AnnexOf): Part | null {
  const { remedies } = buildUp;
  if (remedies.length <= MOST_REMEDIES) return null;
  return { heading: "All remedies", body: html`${remedyTable(buildUp, remedies.length)}` };
}

function variantsPart({ result, buildUp }: AnnexOf): Part | null {
  const comparison = result.comparison?.buildUps.find(({ slug }) => slug === buildUp.slug);
  return comparison === undefined ? null : { heading: "Variants", body: variantsTable(comparison, buildUp.target) };
}
