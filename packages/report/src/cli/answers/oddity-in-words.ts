import type { Oddity } from "@warmside/core";
import { type Line, paragraph } from "../lines.ts";

/**
 * A note of a value that is possible but odd. It is part of the answer, not a message about the run, and so goes to
 * standard output wherever it is told.
 *
 * @param note - from the project
 * @returns an indented paragraph, with the code that accepts it where it is not accepted yet
 */
export function oddityInWords({ message, code, accepted }: Oddity): Line {
  return paragraph(accepted ? `Accepted: ${message}` : `Odd: ${message} (accept: ${code})`, 2);
}
