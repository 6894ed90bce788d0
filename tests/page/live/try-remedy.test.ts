import { assessProject, readProject, readProjectOrThrow } from "@warmside/core";
import { expect, test } from "vitest";
import { withRemedy } from "../../../packages/report/src/live/state/try-remedy.ts";
import { howMany } from "../../how-many.ts";
import { caseFiles, textOfCase } from "../../practice/cases.ts";

/** Every third case of the corpus; each where there is time. */
const FILES = caseFiles().filter((_, index) => index % howMany(3, 1) === 0);

test("every remedy of the practice corpus, made in the file, gives what it says", () => {
  let tried = 0;
  for (const file of FILES) {
    const text = textOfCase(file);
    const { buildUps } = assessProject(readProjectOrThrow(text));
    for (const [index, { remedies, layers }] of buildUps.entries()) {
      for (const remedy of remedies.slice(0, 2)) {
        const made = withRemedy(text, remedy, ["build-ups", index], layers.length);
        const words = `${file}, ${remedy.change}`;
        expect(made, words).not.toBeNull();
        const reading = readProject(made!);
        expect(reading.ok ? [] : reading.problems, words).toEqual([]);
        const after = assessProject(readProjectOrThrow(made!)).buildUps[index]!;
        expect(after.judgement.word, words).toBe(remedy.judgement);
        expect(after.heat!.transmittance, words).toBeCloseTo(remedy.transmittance, 3);
        tried += 1;
      }
    }
  }
  expect(tried).toBeGreaterThan(FILES.length / 3);
});
