import type { JudgementWord } from "@warmside/core";
import { showBuildUp } from "../state/store.ts";
import { JudgementIcon } from "./judgement-icons.tsx";
import type { Known } from "./page.tsx";

/** The build-ups of the file with their judgements; the one that is shown is always up to date. */
export function BuildUps({
  names,
  at,
  now,
  known,
}: {
  names: readonly string[];
  at: number;
  now: JudgementWord;
  known: Known;
}) {
  if (names.length < 2) return null;
  return (
    <nav class="build-ups" aria-label="Build-ups of this project">
      <ul>
        {names.map((name, index) => {
          const word = index === at ? now : known.beside?.judgements[index];
          return (
            <li key={index}>
              <button type="button" aria-current={index === at ? "true" : undefined} onClick={() => showBuildUp(index)}>
                {word === undefined ? null : <JudgementIcon word={word} />}
                <span>
                  {name}
                  {word === undefined ? null : <span class="unseen">, {word}</span>}
                </span>
              </button>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
