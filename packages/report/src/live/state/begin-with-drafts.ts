import { type Draft, draftOf, draftsOfOthers, dropDraft, keepDraft } from "./drafts.ts";
import { NO_HISTORY, withStep } from "./history.ts";
import { isUnsaved, type State } from "./state.ts";
import { stateOf } from "./store.ts";
import { nameOfTab, openTabs } from "./tab.ts";

/**
 * What this tab begins with: its own work after a reload, the work of a tab that crashed or was closed unsaved, else
 * what came with the page.
 *
 * @param given - what came with the page
 * @returns the first state, and what keeps a copy of each later one
 */
export async function beginWithDrafts(given: State): Promise<{ first: State; keep: (state: State) => boolean }> {
  const { tab, copiedFrom } = await nameOfTab();
  const page = location.pathname;
  const keep = (state: State): boolean => {
    if (!isUnsaved(state) && state.text === given.text) {
      dropDraft(tab);
      return true;
    }
    const { text, saved, fileName, tables } = state;
    return keepDraft({ text, saved, fileName, tables, tab, page, time: Date.now() });
  };
  const own = draftOf(tab) ?? (copiedFrom === null ? null : draftOf(copiedFrom));
  if (own !== null && own.page === page) return { first: goOn(own, given), keep };
  const open = await openTabs();
  const [left] = draftsOfOthers(page, tab).filter((draft) => open !== null && !open.has(draft.tab));
  if (left === undefined) return { first: given, keep };
  const first = {
    ...goOn(left, given),
    remark: `This is the unsaved work of ${when(left.time)}. Undo goes back to the file as it was.`,
  };
  // Kept under this tab's name before the other copy goes: at no moment is there none.
  if (keep(first)) dropDraft(left.tab);
  return { first, keep };
}

/** The draft as one step from what it began with, so that it can be undone. */
function goOn({ text, saved, fileName, tables }: Draft, given: State): State {
  const state = stateOf(text, fileName, tables);
  const start = saved === text ? given.text : saved;
  return { ...state, saved, history: start === text ? NO_HISTORY : withStep(NO_HISTORY, start, text, false) };
}

function when(time: number): string {
  return new Date(time).toLocaleString("en-GB", { day: "numeric", month: "long", hour: "2-digit", minute: "2-digit" });
}
