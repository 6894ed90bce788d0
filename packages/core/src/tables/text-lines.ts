/** A line of a text with its number, counted from 1. */
export interface TextLine {
  number: number;
  text: string;
}

/**
 * The lines of a text, whatever ends them (LF, CRLF or CR), without a byte order mark.
 *
 * @param text - any text
 * @returns lines with their numbers from 1, empty ones included
 * @example linesOf("a\r\nb").length // 2
 */
export function linesOf(text: string): TextLine[] {
  const lines = text.replace(BYTE_ORDER_MARK, "").split(LINE_END);
  return lines.map((line, index) => ({ number: index + 1, text: line }));
}

/**
 * Whether a text can only come from a file that is not text, or is in another encoding.
 *
 * @param text - any text
 * @returns true when it holds a null character or the mark left by bytes that could not be decoded
 * @example looksBinary("month,temperature_C") // false
 */
export function looksBinary(text: string): boolean {
  return text.includes(NULL_CHARACTER) || text.includes(UNDECODABLE);
}

const BYTE_ORDER_MARK = /^\uFEFF/;
const LINE_END = /\r\n|\n|\r/;
const NULL_CHARACTER = "\u0000";
const UNDECODABLE = "\uFFFD";
