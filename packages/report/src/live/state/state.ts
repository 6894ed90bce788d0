import type { History } from "./history.ts";

/** Which pair of lines is drawn over the section. */
export type Lens = "temperature" | "pressure";

/** Where a layer is being chosen for: a new one at a place, or one in the place of another. */
export interface Picking {
  at: number;
  isExchange: boolean;
}

/** What the page shows: a text, where its reader stands in it, and how it came to be. */
export interface State {
  /** The project file as it will be saved. */
  text: string;
  /** The last text that could be read: what is drawn. Null where the file never could be. */
  readable: string | null;
  /** The text as it was last saved or opened. */
  saved: string;
  fileName: string;
  /** Tables that the project names, by the path it names them with. */
  tables: Readonly<Record<string, string>>;
  history: History;
  /** Index of the build-up that is shown. */
  buildUp: number;
  /** Index of the selected layer; null for none. */
  layer: number | null;
  /** 0 to below 12; whole while nothing runs. Null: the month that decides. */
  month: number | null;
  isRunning: boolean;
  lens: Lens;
  /** Index of the heat-flow path; null for the governing one. */
  path: number | null;
  picking: Picking | null;
  isChoosingStarter: boolean;
  /** A remark that stands at the top until it is closed. */
  remark: string | null;
  /** For screen readers: announced once after a pause. */
  spoken: string;
  /** Whether this browser keeps a copy of unsaved work. */
  isKept: boolean;
}

/** Whether there is work that no file has. */
export function isUnsaved({ text, saved }: Pick<State, "text" | "saved">): boolean {
  return text !== saved;
}
