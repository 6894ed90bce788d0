import type { BuildUpResult } from "@warmside/core";
import { grams } from "../../numbers.ts";
import { ASSUMPTIONS, SEVERITY_WORDS, sentence } from "../../words.ts";
import { plain, SeverityIcon } from "./judgement-icons.tsx";

/** The same build-up under other assumptions. */
export function Sensitivity({ result: { sensitivity } }: { result: BuildUpResult }) {
  if (sensitivity.length === 0) return null;
  return (
    <section class="part not-printed" aria-labelledby="sensitivity-head">
      <h2 id="sensitivity-head">Sensitivity</h2>
      <table class="sensitivity">
        <thead class="unseen">
          <tr>
            <th scope="col">Assumption</th>
            <th scope="col">Result</th>
          </tr>
        </thead>
        <tbody>
          {sensitivity.map(({ name, withinMonthVerdict, peak }) => (
            <tr key={name}>
              <th scope="row">{sentence(ASSUMPTIONS[name])}</th>
              <td>
                {withinMonthVerdict}
                {peak.month === null ? "" : `, ${grams(peak.amount)} g/m²`}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** What was found, the weightiest first; the rest opens. */
export function Findings({ result: { findings } }: { result: BuildUpResult }) {
  const list = (some: typeof findings) => (
    <ul class="rows">
      {some.map((finding) => (
        <li key={finding.id}>
          <SeverityIcon severity={finding.severity} />
          <div>
            <p>
              <span class="unseen">{SEVERITY_WORDS[finding.severity]}: </span>
              {plain(finding.message)}
            </p>
            {finding.advice === null ? null : <p class="quiet">{plain(finding.advice)}</p>}
          </div>
        </li>
      ))}
    </ul>
  );
  if (findings.length === 0) return null;
  return (
    <section class="part not-printed" aria-labelledby="found-head">
      <h2 id="found-head">What was found</h2>
      {list(findings.slice(0, SHOWN))}
      {findings.length <= SHOWN ? null : (
        <details>
          <summary>{findings.length - SHOWN} more</summary>
          {list(findings.slice(SHOWN))}
        </details>
      )}
    </section>
  );
}

const SHOWN = 3;
