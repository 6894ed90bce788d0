import * as core from "@warmside/core";
import * as calculation from "@warmside/core/calculation";
import * as formulas from "@warmside/core/formulas";
import * as report from "@warmside/report";
import ts from "typescript-5";
import { describe, expect, test } from "vitest";
import { asProgram, type Block, blocksOf, type Stated, statedIn } from "./readme-blocks.ts";

const MODULES: Record<string, unknown> = {
  "@warmside/core": core,
  "@warmside/core/calculation": calculation,
  "@warmside/core/formulas": formulas,
  "@warmside/report": report,
};

/** The values of the lines of the blocks, in order, when they are run one after another. */
async function run(blocks: readonly Block[]): Promise<unknown[]> {
  const { outputText } = ts.transpileModule(asProgram(blocks, "finish"), {
    compilerOptions: { module: ts.ModuleKind.ESNext, target: ts.ScriptTarget.ES2023, verbatimModuleSyntax: true },
  });
  const linked = outputText
    .replace(
      /^import \{([^}]*)\} from "([^"]+)";$/gm,
      (_, names: string, from: string) => `const {${names.replaceAll(" as ", ": ")}} = modules["${from}"];`,
    )
    .replace(/^import \* as (\w+) from "([^"]+)";$/gm, 'const $1 = modules["$2"];')
    .replace(/^export \{\};$/m, "");
  return await new Promise((finish, fail) => {
    const body = `return (async () => {${linked}})();`;
    const done = new Function("modules", "finish", body)(MODULES, finish) as Promise<void>;
    done.catch(fail);
  });
}

/** A number to the figures printed, anything else the same data. */
function expectStated(given: unknown, { expression, value }: Stated): void {
  const decimals = /^-?\d+\.(\d+)$/.exec(value)?.[1]?.length;
  if (decimals !== undefined) expect(given, expression).toBeCloseTo(Number(value), decimals);
  else expect(given, expression).toEqual(new Function(`return (${value});`)());
}

describe.each(["core", "report"] as const)("the README of %s", (name) => {
  const blocks = blocksOf(name);
  const stated = blocks.flatMap(statedIn);

  test("has blocks, and most say what they give", () => {
    expect(blocks.length).toBeGreaterThanOrEqual(3);
    expect(stated.length).toBeGreaterThanOrEqual(blocks.length);
  });

  test("runs as it stands, and gives what it says", async () => {
    const given = await run(blocks);
    expect(given).toHaveLength(stated.length);
    for (const [index, each] of stated.entries()) expectStated(given[index], each);
  });
});

describe("the check itself", () => {
  test("sees a wrong value, and a line that throws", async () => {
    const block = { heading: "", code: 'import { dewPoint } from "@warmside/core";\n\ndewPoint(1168); // 9.26\n' };
    const [given] = await run([block]);
    const [line] = statedIn(block);
    expect(() => expectStated(given, line!)).not.toThrow();
    expect(() => expectStated(given, { ...line!, value: "9.36" })).toThrow();
    await expect(run([{ heading: "", code: "null!.a; // 1\n" }])).rejects.toThrow();
  });
});
