import type { BuildUpResult } from "@warmside/core";
import { fixed, grams } from "../../numbers.ts";
import { tryRemedy } from "../state/gestures.ts";
import { JudgementIcon, plain } from "./judgement-icons.tsx";
import type { Known } from "./page.tsx";

/** Changes that were worked out to put it right, each with its result, and each to be tried. */
export function Remedies({ result, known }: { result: BuildUpResult; known: Known }) {
  if (!known.isFresh && result.judgement.word === "sound") return null;
  if (!known.isFresh || known.beside === null) {
    return (
      <section class="part" aria-labelledby="remedies-head">
        <h2 id="remedies-head">What would put it right</h2>
        <p class="quiet">Working it out …</p>
      </section>
    );
  }
  const { remedies, search } = known.beside;
  if (remedies.length === 0 && search === null) return null;
  return (
    <section class="part" aria-labelledby="remedies-head">
      <h2 id="remedies-head">What would put it right</h2>
      <ol class="rows">
        {remedies.map((remedy, index) => (
          <li key={index}>
            <JudgementIcon word={remedy.judgement} />
            <div>
              <p>{plain(remedy.change)}</p>
              <p class="quiet">
                {remedy.judgement}, {remedy.verdict}
                {remedy.peak.month === null ? "" : `, ${grams(remedy.peak.amount)} g/m²`}, U{" "}
                {fixed(remedy.transmittance, 2)}
              </p>
            </div>
            <button type="button" onClick={() => tryRemedy(remedy)} aria-label={`Try it: ${plain(remedy.change)}`}>
              Try it
            </button>
          </li>
        ))}
      </ol>
      {search === null ? null : <p class="quiet">{plain(search)}</p>}
    </section>
  );
}
