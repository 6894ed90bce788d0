/** A file that was chosen, as text; null where it holds none. */
export interface ChosenFile {
  name: string;
  text: string | null;
}

/**
 * Lets the reader choose files: a project, with the tables it names beside it.
 *
 * @returns the files; none where nothing was chosen
 */
export function chooseFiles(): Promise<ChosenFile[]> {
  return new Promise((resolve) => {
    const input = document.createElement("input");
    input.type = "file";
    input.multiple = true;
    input.accept = ".yaml,.yml,.json,.txt,.csv";
    input.addEventListener("change", () => resolve(readFiles([...(input.files ?? [])])));
    input.addEventListener("cancel", () => resolve([]));
    input.click();
  });
}

/** Files as texts; null for a file that is not text. */
export async function readFiles(files: readonly File[]): Promise<ChosenFile[]> {
  return await Promise.all(
    files.map(async (file) => ({ name: file.name, text: textOf(new Uint8Array(await file.arrayBuffer())) })),
  );
}

/** Hands a text to the browser's downloads. */
export function download(name: string, text: string, type: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([text], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), LONG_ENOUGH);
}

function textOf(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    return null;
  }
}

/** Until a download has surely begun [ms]. */
const LONG_ENOUGH = 30_000;
