import type { Project, ProjectResult } from "@warmside/core";
import type { ReportOptions } from "../../render-report.ts";
import type { Folders } from "../command-context.ts";
import type { CommandResult } from "../command-result.ts";
import type { Line, Printed } from "../lines.ts";
import type { FileInOrder } from "./read-project-file.ts";
import type { Study } from "./study.ts";

/** How far a long piece of work is. */
export interface Step {
  /** What is counted. */
  unit: "build-up" | "grid" | "sample";
  done: number;
  of: number;
}

/**
 * The long part of a command, step by step. On a thread of its own it leaves the command free to hear signals at any time.
 * All that goes in and comes out is plain data.
 */
export interface Calculation {
  /** Reads the project file for the other steps; returns the command's whole result if the file is refused. */
  read(shown: string, folders: Folders, asJson: boolean): Promise<FileInOrder | { refused: CommandResult }>;
  /** Assesses the project and gives the answer, in words or as JSON. */
  workOut(study: Study, asJson: boolean): Promise<Printed>;
  /** The report of what was worked out. */
  render(options: ReportOptions): Promise<string>;
  /** What a study can say before it is done; empty if it cannot say anything yet. */
  soFar(): Promise<readonly Line[]>;
}

/**
 * The calculation in this thread.
 *
 * @param tell - called as work goes on
 * @returns its steps
 */
export function calculationHere(tell: (step: Step) => void): Calculation {
  let project: Project | null = null;
  let result: ProjectResult | null = null;
  let partly = (): readonly Line[] => [];
  return {
    read: async (shown, folders, asJson) => {
      const { fileInOrder, readProjectFile } = await import("./read-project-file.ts");
      const file = readProjectFile(shown, folders);
      if (file.reading.ok) {
        project = file.reading.value;
        return fileInOrder(file, project);
      }
      const { refusedProject } = await import("../refused-project.ts");
      return { refused: refusedProject(file.reading.problems, shown, asJson) };
    },
    workOut: async (study, asJson) => {
      const { workOutStudy } = await import("./study.ts");
      const listener = {
        tell,
        before: (soFar: () => readonly Line[]): void => {
          partly = soFar;
        },
      };
      result = await workOutStudy(there(project), study, listener);
      if (asJson) return (await import("../answers/result-as-json.ts")).resultAsJson(result);
      const { shortAnswers } = await import("../answers/short-answer.ts");
      return shortAnswers(result, study.name === "compare");
    },
    render: async (options) => {
      const { renderReport } = await import("../../render-report.ts");
      return await renderReport(there(result), options);
    },
    soFar: async () => partly(),
  };
}

/** What an earlier step has produced. */
function there<Kept>(kept: Kept | null): Kept {
  if (kept === null) throw new Error("a step of the calculation was requested before the one it depends on");
  return kept;
}
