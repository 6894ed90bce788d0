import type { BuildUpResult } from "@warmside/core";
import { CLASSES } from "../../judgement-icons.ts";
import { fixed } from "../../numbers.ts";
import { AnswerPart } from "./answer-part.tsx";
import { JudgementIcon } from "./judgement-icons.tsx";

/** On a telephone the answer stays in sight at the foot of the page, and opens. */
export function Foot({ result }: { result: BuildUpResult }) {
  const { judgement, moisture, heat } = result;
  return (
    <details class={`foot ${CLASSES[judgement.word]}`}>
      <summary>
        <JudgementIcon word={judgement.word} />
        <span>
          <strong>{judgement.word}</strong>
          {moisture === null ? "" : ` · ${moisture.verdict}`}
          {heat === null ? "" : ` · U ${fixed(heat.transmittance, 2)}`}
        </span>
      </summary>
      <AnswerPart result={result} section={moisture?.governing ?? null} />
    </details>
  );
}
