import { styleText } from "node:util";
import wrapAnsi from "wrap-ansi";
import { ACTING_ON_A_TERMINAL } from "./acting-on-a-terminal.ts";
import type { Line, Piece, Printed } from "./lines.ts";

/** What a stream is printed on: how wide it is and whether it takes colour. */
export interface Terminal {
  /** Characters on a line, 40 to 80. */
  width: number;
  colours: boolean;
}

/**
 * The terminal that a stream is.
 *
 * @param stream - a terminal or not, and how many columns it has
 * @param environment - NO_COLOR (any text) and TERM=dumb turn colour off
 * @returns its width, and whether it takes colour; none where it is not a terminal
 */
export function terminalOf(
  stream: { isTTY?: boolean; columns?: number },
  environment: Readonly<Record<string, string | undefined>>,
): Terminal {
  const columns = stream.isTTY === true && stream.columns ? stream.columns : WIDEST;
  return {
    width: Math.min(WIDEST, Math.max(NARROWEST, columns)),
    colours: stream.isTTY === true && !environment.NO_COLOR && environment.TERM !== "dumb",
  };
}

const WIDEST = 80;
const NARROWEST = 40;

/**
 * The characters for a terminal: made only here.
 *
 * @param printed - lines of any text, or text of warmside's own
 * @param terminal - where they go
 * @returns text in which nothing from a file moves the cursor, sets a colour or begins a line
 */
export function textFor(printed: Printed, terminal: Terminal): string {
  return "asIs" in printed ? printed.asIs : printed.map((line) => `${lineFor(line, terminal)}\n`).join("");
}

function lineFor({ pieces, indent, label, wraps }: Line, { width, colours }: Terminal): string {
  const text = pieces.map((piece) => pieceFor(piece, colours)).join("");
  const lines = (wraps ? wrapped(text, width - indent) : text).split("\n");
  return lines.map((part, place) => (place === 0 ? label : "").padEnd(indent) + part).join("\n");
}

/** A number and what follows it, such as its unit, stay on one line. */
function wrapped(text: string, width: number): string {
  return wrapAnsi(text.replace(/(?<=\d) (?=[^\s(])/g, NO_BREAK), width).replaceAll(NO_BREAK, " ");
}

/** A private-use character, one column wide. */
const NO_BREAK = "\uE000";

function pieceFor(piece: Piece, colours: boolean): string {
  if (typeof piece === "string") return harmless(piece);
  const text = harmless(piece.text);
  return colours ? styleText(piece.colour, text, { validateStream: false }) : text;
}

/**
 * Text made safe for a terminal: control characters, line feeds and marks that turn the direction of writing are shown
 * by their code.
 *
 * @param text - any text
 * @returns the same text, which can move no cursor, begin no line and set no colour
 */
export function harmless(text: string): string {
  return text.replace(ACTING_ON_A_TERMINAL, (character) => {
    const code = character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    return `[U+${code}]`;
  });
}
