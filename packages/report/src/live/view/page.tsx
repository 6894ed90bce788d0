import { type Answer, answerOf } from "../state/answer.ts";
import { state } from "../state/store.ts";
import type { Beside } from "../work/work.ts";
import { AnswerPart } from "./answer-part.tsx";
import { Bar, Remark } from "./bar.tsx";
import { BuildUps } from "./build-ups.tsx";
import { Findings, Sensitivity } from "./findings.tsx";
import { Foot } from "./foot.tsx";
import { Layers } from "./layers.tsx";
import { Picker } from "./picker.tsx";
import { PlanePart } from "./plane-part.tsx";
import { Problems } from "./problems.tsx";
import { ProjectFile } from "./project-file.tsx";
import { Remedies } from "./remedies.tsx";
import { SectionPart } from "./section-part.tsx";
import { Sentence } from "./sentence.tsx";
import { Starters } from "./starters.tsx";
import { Year } from "./year.tsx";

/** What the page knows beside the answer: the latest that was worked out, and whether it is of what is shown. */
export interface Known {
  beside: Beside | null;
  isFresh: boolean;
}

/** The whole page, of the state. */
export function Page({ known, isNarrow }: { known: Known; isNarrow: boolean }) {
  const answer = answerOf(state());
  return (
    <>
      <Bar hasAnswer={answer !== null} />
      <main id="main" class={known.isFresh ? "" : "is-working"}>
        <Remark />
        <Problems />
        <Starters />
        {answer === null ? null : <BuildUpPage answer={answer} known={known} isNarrow={isNarrow} />}
        <ProjectFile isOpen={answer === null} />
      </main>
      {answer === null || !isNarrow ? null : <Foot result={answer.result} />}
      <Picker />
      <p class="unseen" aria-live="polite">
        {state().spoken}
      </p>
    </>
  );
}

function BuildUpPage({ answer, known, isNarrow }: { answer: Answer; known: Known; isNarrow: boolean }) {
  const { result, at, project } = answer;
  const { moisture } = result;
  const section = moisture === null ? null : (moisture.sections[state().path ?? -1] ?? moisture.governing);
  return (
    <div class="columns">
      <div class="drawn">
        <BuildUps names={project.buildUps.map(({ name }) => name)} at={at} now={result.judgement.word} known={known} />
        <Sentence answer={answer} />
        <SectionPart result={result} section={section} known={known} />
        {section === null ? null : <Year section={section} />}
        <PlanePart result={result} isFresh={known.isFresh} />
        <Layers answer={answer} />
      </div>
      <section class="told" tabIndex={isNarrow ? undefined : 0} aria-label="Answer and what follows from it">
        {isNarrow ? null : <AnswerPart result={result} section={section} />}
        <Remedies result={result} known={known} />
        <Sensitivity result={result} />
        <Findings result={result} />
      </section>
    </div>
  );
}
