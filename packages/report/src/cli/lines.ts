/** Colours that a piece of a line may have. */
export type Colour = "bold" | "dim" | "red" | "yellow" | "green";

/** Part of a line, with any text: only the writer turns it into characters for a terminal. */
export type Piece = string | { colour: Colour; text: string };

/** One line of an answer. Whatever its text holds, it stays one: a line feed in a name is shown by its code. */
export interface Line {
  pieces: readonly Piece[];
  /** Columns that stay free before the text. */
  indent: number;
  /** Stands in those columns, before the first line. */
  label: string;
  /** Whether it is broken at its spaces where it is wider than the terminal. */
  wraps: boolean;
}

/** Output for a stream: lines, or warmside's own text that is not changed, such as JSON, help and scripts. */
export type Printed = readonly Line[] | { asIs: string };

/** A line that is never broken: a heading, a row of a table; without pieces a blank one. */
export function line(...pieces: Piece[]): Line {
  return { pieces, indent: 0, label: "", wraps: false };
}

/** A paragraph, broken at its spaces. */
export function paragraph(text: string, indent = 0): Line {
  return { pieces: [text], indent, label: "", wraps: true };
}

/**
 * A label, and its text beside it.
 *
 * @param label - without a colon
 * @param text - may be of several lines, as what is to be written into a file is
 * @returns further lines stand under the first
 */
export function labelled(label: string, text: string): Line[] {
  const lines = text.split("\n").map((part) => paragraph(part, LABEL_WIDTH));
  return lines.map((part, place) => (place === 0 ? { ...part, label: `  ${label}:` } : part));
}

const LABEL_WIDTH = 12;

/**
 * Groups of lines with a blank line between them.
 *
 * @param groups - those without a line are left out
 * @returns the lines
 */
export function groups(...groups: readonly (readonly Line[])[]): Line[] {
  return groups
    .filter((group) => group.length > 0)
    .flatMap((group, place) => (place === 0 ? group : [line(), ...group]));
}
