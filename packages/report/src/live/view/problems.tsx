import { wordProblem } from "@warmside/core";
import { readingOf } from "../state/answer.ts";
import { state } from "../state/store.ts";
import { plain } from "./judgement-icons.tsx";
import { goToLine, writeIt } from "./write-it.ts";

/** Why the file cannot be read as it stands, by line; the drawing stays that of the last readable text. */
export function Problems() {
  const { text, tables, readable } = state();
  if (text === readable) return null;
  const reading = readingOf({ text, tables });
  if (reading.ok) return null;
  const { problems } = reading;
  return (
    <section class="problems" role="alert" aria-labelledby="problems-head">
      <h2 id="problems-head">
        {problems.length === 1 ? "The project file has a problem" : `The project file has ${problems.length} problems`}
      </h2>
      <ul class="rows">
        {problems.slice(0, SHOWN).map((problem, index) => {
          const { line, message, write } = wordProblem(problem);
          return (
            <li key={index}>
              {line === null ? (
                <span />
              ) : (
                <button type="button" onClick={() => goToLine(line)}>
                  Line {line}
                </button>
              )}
              <div>
                <p>{plain(message)}</p>
                {write.length === 0 ? null : <p class="quiet">Write: {write.join(" or ")}</p>}
              </div>
              <div class="deeds">
                {write.map((words, _, all) => (
                  <button
                    key={words}
                    type="button"
                    onClick={() => writeIt(problem, words)}
                    aria-label={`Write it: ${words}`}
                  >
                    {all.length === 1 ? "Write it" : words}
                  </button>
                ))}
              </div>
            </li>
          );
        })}
      </ul>
      {readable === null ? null : <p class="quiet">What is drawn is the last text that could be read.</p>}
    </section>
  );
}

const SHOWN = 20;
