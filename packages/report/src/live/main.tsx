// Before everything that makes a schema.
import "./work/no-code-from-text.ts";
import { render } from "preact";
import { STARTERS } from "./goods/starters.ts";
import { beginWithDrafts } from "./state/begin-with-drafts.ts";
import { readFiles } from "./state/files.ts";
import { givenProject } from "./state/given-project.ts";
import { openFiles } from "./state/opening.ts";
import { isUnsaved } from "./state/state.ts";
import { begin, keepNow, redo, show, state, stateOf, undo } from "./state/store.ts";
import { takeFocus } from "./view/focus.ts";
import { type Known, Page } from "./view/page.tsx";
import { isOneColumn, watchPrinting, watchWidth } from "./view/width.ts";
import { workHere } from "./work/as-worker.ts";
import { askBeside, helpFrom } from "./work/ask.ts";
import type { Beside } from "./work/work.ts";

/** One script for both: without a document it is the worker that the page made of it. */
if (typeof document === "undefined") workHere();
else void openPage(document.currentScript!.textContent!);

async function openPage(script: string): Promise<void> {
  helpFrom(script);
  const root = document.getElementById("page")!;
  let beside: { of: string; text: string; found: Beside } | null = null;
  const keyOfShown = (): string => `${state().buildUp} ${state().readable}`;
  const known = (): Known => {
    // What was found for another build-up says nothing about this one, but for the judgements of all.
    const places = beside?.of === String(state().buildUp) ? beside.found.places : null;
    return {
      beside: beside === null ? null : { ...beside.found, places },
      isFresh: beside !== null && `${beside.of} ${beside.text}` === keyOfShown(),
    };
  };
  const draw = (): void => {
    render(<Page known={known()} isNarrow={isOneColumn()} />, root);
    takeFocus();
  };
  const changed = (): void => {
    const { readable, tables, buildUp } = state();
    if (readable === null) return;
    askBeside({ text: readable, tables, buildUp }, (found) => {
      beside = { of: String(buildUp), text: readable, found };
      show({});
    });
  };
  const { text, fileName, tables } = givenProject() ?? { ...STARTERS[0]!, tables: {} };
  const { first, keep } = await beginWithDrafts(stateOf(text, fileName, tables));
  begin(first, { draw, changed, keep });
  draw();
  watchWidth(draw);
  changed();
  addEventListener("keydown", onKey);
  addEventListener("beforeunload", (event) => {
    keepNow();
    if (isUnsaved(state())) event.preventDefault();
  });
  addEventListener("pagehide", keepNow);
  watchPrinting(draw);
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    event.preventDefault();
    void readFiles([...(event.dataTransfer?.files ?? [])]).then(openFiles);
  });
}

/** Undo and redo by keys, but for where text is typed: there they are the browser's. */
function onKey(event: KeyboardEvent): void {
  if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target instanceof HTMLTextAreaElement) return;
  const key = event.key.toLowerCase();
  if (key === "z" && !event.shiftKey) undo();
  else if (key === "y" || (key === "z" && event.shiftKey)) redo();
  else return;
  event.preventDefault();
}
