import type { BuildUpResult } from "@warmside/core";
import { fixed } from "../../numbers.ts";
import { CLASSES } from "../../signs.ts";
import { AnswerPart } from "./answer-part.tsx";
import { Sign } from "./signs.tsx";

/** On a telephone the answer stays in sight at the foot of the page, and opens. */
export function Foot({ result }: { result: BuildUpResult }) {
  const { judgement, moisture, heat } = result;
  return (
    <details class={`foot ${CLASSES[judgement.word]}`}>
      <summary>
        <Sign word={judgement.word} />
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
