import type { Project, ProjectResult } from "@warmside/core";
import { CommandProblem } from "../command-result.ts";
import type { Line } from "../lines.ts";
import type { SpreadChoice } from "../spread/studies.ts";
import type { VariationChoice } from "../vary/variation-of.ts";
import type { Step } from "./calculation.ts";

/** What a command calculates: the assessment, alone or with one of the studies. */
export type Study =
  | { name: "assess" | "place" | "compare" }
  | { name: "vary"; choice: VariationChoice }
  | { name: "spread"; choice: SpreadChoice };

/** Receives the progress of a study. */
export interface Listener {
  tell(step: Step): void;
  /** From now on the study can say something before it is done. */
  before(soFar: () => readonly Line[]): void;
}

/**
 * Works a project out.
 *
 * @param project - as read
 * @param study - the assessment or a study
 * @param listener - hears how far it is
 * @returns the result
 * @throws CommandProblem when the study cannot be made of this project
 */
export async function workOutStudy(project: Project, study: Study, listener: Listener): Promise<ProjectResult> {
  const { assessProject, studyPlacement } = await import("@warmside/core");
  const told = (unit: Step["unit"]) => (done: number, of: number) => listener.tell({ unit, done, of });
  const assess = (): ProjectResult => assessProject(project, told("build-up"));
  if (study.name === "spread") {
    const { withSpread } = await import("../spread/with-spread.ts");
    return await withSpread(assess, project, study.choice, listener);
  }
  const assessed = assess();
  switch (study.name) {
    case "assess":
      return assessed;
    case "compare":
      return withVariants(assessed);
    case "place":
      return { ...assessed, placement: studyPlacement(project, undefined, told("grid")) };
    case "vary": {
      const { variationOf } = await import("../vary/variation-of.ts");
      return { ...assessed, variation: await variationOf(project, study.choice) };
    }
  }
}

function withVariants(assessed: ProjectResult): ProjectResult {
  if (assessed.comparison !== undefined) return assessed;
  throw new CommandProblem(
    "no-variants",
    "No build-up of the project has variants, so there is nothing to compare. Write `variants:` into a build-up; " +
      "`warmside compare --help` shows one.",
  );
}
