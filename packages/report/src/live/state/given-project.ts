import type { State } from "./state.ts";

/** A project that stands in the page's own file, as the command wrote it there. */
export type GivenProject = Pick<State, "text" | "fileName" | "tables">;

/**
 * The project that came with the page.
 *
 * @returns its text, name and tables; null where the page came empty
 */
export function givenProject(): GivenProject | null {
  return JSON.parse(document.getElementById("given-project")?.textContent ?? "null") as GivenProject | null;
}
