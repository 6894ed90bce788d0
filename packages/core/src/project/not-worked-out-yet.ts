import type { ProblemPath } from "../problems/types.ts";
import type { ReadingContext } from "./reading-context.ts";
import { WITHOUT_EFFECT } from "./without-effect.ts";

/** Keys, and values of keys, that are read and that no rule uses yet: whoever writes the rule takes its entry out. */
export const NOT_WORKED_OUT_YET: ReadonlySet<string> = new Set();

/**
 * Notes keys that change nothing, for no rule uses them yet.
 *
 * @param context - data, and where notes go
 */
export function noteNotWorkedOutYet(context: Pick<ReadingContext, "file" | "note">): void {
  const visit = (here: unknown, path: ProblemPath): void => {
    if (Array.isArray(here)) for (const [index, item] of here.entries()) visit(item, [...path, index]);
    else if (typeof here === "object" && here !== null) {
      for (const [key, value] of Object.entries(here)) {
        const said = [key, `${key}: ${value}`].find((one) => NOT_WORKED_OUT_YET.has(one));
        if (said === undefined) visit(value, [...path, key]);
        else context.note(WITHOUT_EFFECT, [...path, key], `${said} has no effect yet`);
      }
    }
  };
  visit(context.file.data, []);
}
