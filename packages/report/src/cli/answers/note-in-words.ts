import type { Oddity } from "@warmside/core";
import { harmless, type Terminal, wrap } from "../terminal.ts";

/**
 * A note of a value that is possible but odd, for a terminal. It is part of the answer, not a message about the run, and
 * so goes to standard output wherever it is told.
 *
 * @param note - from the project
 * @param terminal - what it is printed on
 * @returns indented lines, with the code that accepts it where it is not accepted yet
 */
export function noteInWords({ message, code, accepted }: Oddity, terminal: Terminal): string {
  const text = accepted ? `Accepted: ${message}` : `Odd: ${message} (accept: ${code})`;
  return wrap(harmless(text), terminal.width, "  ");
}
