import { readFileSync } from "node:fs";
import { join } from "node:path";

const PACKAGES = join(import.meta.dirname, "../../packages");

/** A block of code of a README, and the lines that say what they give. */
export interface Block {
  heading: string;
  code: string;
}

/** A line `EXPRESSION; // VALUE` of a block. */
export interface Stated {
  expression: string;
  value: string;
}

/**
 * The TypeScript blocks of a package's README, in order.
 *
 * @param name - the package's folder
 * @returns the blocks, each under the heading before it
 */
export function blocksOf(name: "core" | "report"): Block[] {
  const text = readFileSync(join(PACKAGES, name, "README.md"), "utf8");
  let heading = "";
  return [...text.matchAll(/^#+ (.*)$|^```ts\n([\s\S]*?)^```$/gm)].flatMap(([, title, code]) => {
    if (title !== undefined) heading = title;
    return code === undefined ? [] : [{ heading, code }];
  });
}

const STATED = /^(?!import|const|let|\/\/| )(.+); \/\/ (.+)$/;

/** What a block states about its lines. */
export function statedIn({ code }: Block): Stated[] {
  return code.split("\n").flatMap((line) => {
    const [, expression, value] = STATED.exec(line) ?? [];
    return expression === undefined ? [] : [{ expression, value: value! }];
  });
}

/**
 * The blocks as one program: the lines that state a value hand over what they give, and at the end all of it is given
 * to a function.
 *
 * @param blocks - blocks that build on each other
 * @param atEnd - name of a function that takes the list of values
 * @returns a TypeScript program
 */
export function asProgram(blocks: readonly Block[], atEnd: string): string {
  const body = blocks
    .flatMap(({ code }) => code.split("\n"))
    .map((line) => line.replace(STATED, (_, expression: string) => `given.push(${expression});`));
  return ["const given: unknown[] = [];", ...body, `${atEnd}(given);`, ""].join("\n");
}
