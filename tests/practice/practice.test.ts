import { describe, expect, test } from "vitest";
import { assessProject, type BuildUpResult } from "../../packages/core/src/index.ts";
import { type Answer, caseFiles, readAnswers, readCase } from "./cases.ts";

/**
 * The judgement of a careful adviser, held against public trade guidance. Kind of guidance and reason stand with every
 * answer in answers.yaml; the answers were written down before the code was run.
 */
const answers = readAnswers();
const results = new Map<string, BuildUpResult[]>();

function resultOf({ file, "build-up": name }: Answer): BuildUpResult {
  if (!results.has(file)) results.set(file, assessProject(readCase(file)).buildUps);
  const result = results.get(file)!.find((buildUp) => buildUp.name === name);
  if (result === undefined) throw new Error(`${file} has no build-up called ${name}`);
  return result;
}

describe("practice: what guidance says of a build-up", () => {
  test("at least forty cases, every file and every build-up answered once", () => {
    const answered = answers.map(({ file, "build-up": name }) => `${file}: ${name}`);
    const given = caseFiles().flatMap((file) => readCase(file).buildUps.map(({ name }) => `${file}: ${name}`));
    expect(answered.length).toBeGreaterThanOrEqual(40);
    expect([...answered].sort()).toEqual([...given].sort());
  });

  const titled = answers.map((answer) => ({ answer, file: answer.file, name: answer["build-up"] }));
  test.each(titled)("$file, $name: judged as guidance does", ({ answer }) => {
    const { judgement, findings } = resultOf(answer);
    const codes: string[] = findings.map(({ code }) => code);
    const speaking = judgement.reasons.map((id) => findings.find((finding) => finding.id === id)?.code);
    expect([answer.judgement].flat(), `reasons given: ${speaking.join(", ")}`).toContain(judgement.word);
    for (const reason of answer.reasons) {
      const any = [reason].flat();
      expect(
        any.some((code) => codes.includes(code)),
        `one of ${any.join(", ")} among ${codes.join(", ")}`,
      ).toBe(true);
    }
    for (const code of answer["must not say"] ?? []) expect(codes).not.toContain(code);
  });
});
