import {
  assessBuildUp,
  assessProject,
  type BuildUpResult,
  type JudgementWord,
  type Project,
  type Remedy,
  readProjectOrThrow,
  type SheetPlaces,
  sheetPlaces,
  surroundingsOf,
  withFactorsOfJunctions,
} from "@warmside/core";
import { resultAsJson } from "../../cli/answers/result-as-json.ts";
import { renderReport } from "../../render-report.ts";
import { suppliesOf } from "../state/answer.ts";
import type { State } from "../state/state.ts";

/** What is asked to be worked out beside the page. */
export interface Question extends Pick<State, "tables"> {
  id: number;
  kind: "beside" | "report" | "figures";
  text: string;
  buildUp: number;
}

/** What takes longer than a frame: the sheet in every gap, remedies, and the judgements of all build-ups. */
export interface Beside {
  places: SheetPlaces | null;
  /** Names of the layers that the places are of. */
  names: string[];
  remedies: Remedy[];
  search: string | null;
  judgements: JudgementWord[];
}

/** An answer with the question it belongs to; a fault in words where it could not be had. */
export type Reply = Pick<Question, "id" | "kind"> & ({ beside: Beside } | { file: string } | { fault: string });

/**
 * Works out what was asked, with the same functions as the command.
 *
 * @param question - the text, and what of it
 * @returns the reply
 */
export async function answerTo(question: Question): Promise<Reply> {
  const { id, kind, text, tables, buildUp } = question;
  try {
    const project = readProjectOrThrow(text, suppliesOf(tables));
    if (kind === "beside")
      return { id, kind, beside: besideOf(project, Math.min(buildUp, project.buildUps.length - 1)) };
    const result = assessProject(project);
    return { id, kind, file: kind === "report" ? await renderReport(result) : resultAsJson(result).asIs };
  } catch (error) {
    return { id, kind, fault: error instanceof Error ? error.message : String(error) };
  }
}

function besideOf(project: Project, at: number): Beside {
  const surroundings = surroundingsOf(project);
  const shown = assessedAlone(project, at);
  return {
    places: sheetPlaces(withFactorsOfJunctions(project, project.buildUps[at]!), surroundings),
    names: shown.layers.map(({ name }) => name),
    remedies: shown.remedies,
    search: shown.remedySearch,
    judgements: project.buildUps.map((buildUp, index) => {
      if (index === at) return shown.judgement.word;
      return assessBuildUp(withFactorsOfJunctions(project, buildUp), surroundings).judgement.word;
    }),
  };
}

/** One build-up with its remedies and the factors of its junctions, without its variants. */
function assessedAlone(project: Project, at: number): BuildUpResult {
  const alone = withFactorsOfJunctions(project, { ...project.buildUps[at]!, variants: [] });
  return assessProject({ ...project, junctions: [], buildUps: [alone] }).buildUps[0]!;
}
