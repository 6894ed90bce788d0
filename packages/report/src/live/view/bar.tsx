import { chooseFiles, download } from "../state/files.ts";
import { openFiles } from "../state/opening.ts";
import { isUnsaved } from "../state/state.ts";
import { keepNow, redo, show, state, undo } from "../state/store.ts";
import { askForFile } from "../work/ask.ts";

/** What can be done with the file. */
export function Bar({ hasAnswer }: { hasAnswer: boolean }) {
  const { fileName, history, text, readable, isKept } = state();
  const unsaved = isUnsaved(state()) ? (isKept ? ", not saved" : ", not saved, and this browser keeps no copy") : "";
  const isReadable = hasAnswer && text === readable;
  return (
    <header class="bar">
      <a class="skip" href="#answer">
        To the answer
      </a>
      <h1>
        warmside{" "}
        <small>
          {fileName}
          {unsaved}
        </small>
      </h1>
      <fieldset class="tools" aria-label="What can be done with the project file">
        <button type="button" onClick={undo} disabled={history.done.length === 0} aria-label="Undo">
          <Arrow d="M7 3L3 7l4 4M3 7h8a5 5 0 0 1 0 10H7" />
          <span class="word">Undo</span>
        </button>
        <button type="button" onClick={redo} disabled={history.undone.length === 0} aria-label="Redo">
          <Arrow d="M13 3l4 4l-4 4M17 7H9a5 5 0 0 0 0 10h4" />
          <span class="word">Redo</span>
        </button>
        <button
          type="button"
          aria-expanded={state().isChoosingStarter}
          onClick={() => show({ isChoosingStarter: !state().isChoosingStarter })}
        >
          New
        </button>
        <button type="button" onClick={() => void chooseFiles().then(openFiles)}>
          Open
        </button>
        <button type="button" onClick={save}>
          Save
        </button>
        <button type="button" class="main" disabled={!isReadable} onClick={() => void makeFile("report")}>
          Report
        </button>
      </fieldset>
    </header>
  );
}

/** A remark that stays until it is closed. */
export function Remark() {
  const { remark } = state();
  if (remark === null) return null;
  return (
    <p class="remark" role="status">
      <span>{remark}</span>
      <button type="button" onClick={() => show({ remark: null })} aria-label="Close this remark">
        Close
      </button>
    </p>
  );
}

/** The report, or the figures as JSON: the same bytes as the command's. */
export async function makeFile(kind: "report" | "figures"): Promise<void> {
  const { text, tables, buildUp, fileName } = state();
  const name = fileName.replace(/\.[a-z]+$/i, "");
  show({ remark: kind === "report" ? "The report is being written …" : "The figures are being written …" });
  try {
    const file = await askForFile({ kind, text, tables, buildUp });
    if (kind === "report") download(`${name}-report.html`, file, "text/html");
    else download(`${name}.json`, file, "application/json");
    show({ remark: `${kind === "report" ? `${name}-report.html` : `${name}.json`} is among your downloads.` });
  } catch (error) {
    show({ remark: `Not written: ${(error as Error).message}.` });
  }
}

function save(): void {
  const { text, fileName } = state();
  download(fileName, text, "application/yaml");
  show({ saved: text, remark: `${fileName} is among your downloads. Open it here to go on another day.` });
  keepNow();
}

function Arrow({ d }: { d: string }) {
  return (
    <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
      <path d={d} />
    </svg>
  );
}
