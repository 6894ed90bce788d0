import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { contextOf } from "../../packages/report/src/cli/command-context.ts";
import { answer } from "../../packages/report/src/cli/program.ts";

/** How a command ended in a folder of its own, and what stands there afterwards. */
export interface EndedInFolder {
  exit: number;
  answer: string;
  messages: string;
  /** Every file with its bytes, as Latin-1 text. */
  before: Record<string, string>;
  after: Record<string, string>;
}

/** Runs a command in a fresh folder that holds the given files, and clears the folder away. */
export async function runInFolder(
  files: Readonly<Record<string, string | Uint8Array>>,
  words: readonly string[],
): Promise<EndedInFolder> {
  const folder = mkdtempSync(join(tmpdir(), "warmside-hostile-"));
  try {
    for (const [name, content] of Object.entries(files)) writeFileSync(join(folder, name), content);
    const before = filesIn(folder);
    const outcome = await answer(words, contextOf({ cwd: () => folder, env: {}, stdout: {}, stderr: {} }));
    return { ...outcome, before, after: filesIn(folder) };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function filesIn(folder: string): Record<string, string> {
  const names = readdirSync(folder).filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(names.sort().map((name) => [name, readFileSync(join(folder, name), "latin1")]));
}
