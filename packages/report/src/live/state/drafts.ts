import type { State } from "./state.ts";

/** Work in progress as this browser keeps it: everything needed to go on. */
export interface Draft extends Pick<State, "text" | "saved" | "fileName" | "tables"> {
  /** Which tab wrote it, which page it was, and when [ms]. */
  tab: string;
  page: string;
  time: number;
}

/**
 * Keeps a copy of the work under the tab's own name, so that two tabs never write over one another.
 *
 * @param draft - the work
 * @returns false where the browser keeps nothing, or has no room left
 */
export function keepDraft(draft: Draft): boolean {
  try {
    localStorage.setItem(PREFIX + draft.tab, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}

/** The work of a tab; null where nothing is kept. */
export function draftOf(tab: string): Draft | null {
  return readDraft(PREFIX + tab);
}

/** Removes a copy: its work has been saved to a file or discarded. */
export function dropDraft(tab: string): void {
  try {
    localStorage.removeItem(PREFIX + tab);
  } catch {
    // Without storage there is no copy to remove.
  }
}

/** The work of other tabs of this page, latest first: of one that crashed, or that was closed unsaved. */
export function draftsOfOthers(page: string, tab: string): Draft[] {
  const names = storedNames().filter((name) => name.startsWith(PREFIX) && name !== PREFIX + tab);
  const drafts = names.flatMap((name) => readDraft(name) ?? []);
  return drafts
    .filter((draft) => draft.page === page && draft.text !== draft.saved)
    .sort((one, two) => two.time - one.time);
}

function storedNames(): string[] {
  try {
    return Object.keys(localStorage);
  } catch {
    return [];
  }
}

function readDraft(name: string): Draft | null {
  try {
    const draft: unknown = JSON.parse(localStorage.getItem(name) ?? "null");
    return isDraft(draft) ? draft : null;
  } catch {
    return null;
  }
}

function isDraft(data: unknown): data is Draft {
  const draft = data as Draft | null;
  return (
    typeof draft === "object" &&
    draft !== null &&
    [draft.text, draft.saved, draft.fileName, draft.tab, draft.page].every((value) => typeof value === "string") &&
    typeof draft.time === "number" &&
    typeof draft.tables === "object"
  );
}

const PREFIX = "warmside work ";
