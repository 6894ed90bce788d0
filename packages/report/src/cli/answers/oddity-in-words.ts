import type { Oddity } from "@warmside/core";
import { type Line, paragraph } from "../lines.ts";

/**
 * A note on a possible but odd value. It is part of the answer, not a message about the run, so it always goes to
 * standard output.
 *
 * @param note - from the project
 * @returns an indented paragraph, with the code that accepts it where it is not accepted yet
 */
export function oddityInWords({ message, code, accepted }: Oddity): Line {
  return paragraph(accepted ? `Accepted: ${message}` : `Odd: ${message} (accept: ${code})`, 2);
}
