/** What text is printed on: how wide it is and whether it takes colour. */
export interface Terminal {
  /** Characters on a line, 40 to 80. */
  width: number;
  paint: Paint;
}

export type Colour = "bold" | "dim" | "red" | "yellow" | "green";
export type Paint = (colour: Colour, text: string) => string;

/**
 * The terminal that a stream is.
 *
 * @param stream - a terminal or not, and how many columns it has
 * @param environment - NO_COLOR (any text) and TERM=dumb turn colour off
 * @returns its width and its paint; no colour where it is not a terminal
 */
export function terminalOf(
  stream: { isTTY?: boolean; columns?: number },
  environment: Readonly<Record<string, string | undefined>>,
): Terminal {
  const coloured = stream.isTTY === true && !environment.NO_COLOR && environment.TERM !== "dumb";
  const columns = stream.isTTY === true && stream.columns ? stream.columns : WIDEST;
  return { width: Math.min(WIDEST, Math.max(NARROWEST, columns)), paint: coloured ? inColour : plain };
}

/**
 * Breaks text into lines at its spaces; a word longer than a line stands alone on one.
 *
 * @param text - without line ends
 * @param width - longest line [characters]
 * @param indent - put before every line
 * @returns the lines, joined
 * @example wrap("one two three", 9, "  ") // "  one two\n  three"
 */
export function wrap(text: string, width: number, indent = ""): string {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/[ \n]+/).filter((part) => part !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && indent.length + lengthOf(longer) > width) {
      lines.push(indent + line);
      line = word;
    } else {
      line = longer;
    }
  }
  if (line !== "") lines.push(indent + line);
  return lines.join("\n");
}

/**
 * Text from a file made safe for a terminal: control characters and marks that turn the direction of writing are shown
 * by their code.
 *
 * @param text - any text
 * @returns the same text, which can move no cursor and set no colour
 */
export function harmless(text: string): string {
  return text.replace(ACTING_ON_A_TERMINAL, (character) => {
    const code = character.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    return `[U+${code}]`;
  });
}

const WIDEST = 80;
const NARROWEST = 40;
const ESCAPE = "\u001b[";
const CODES: Readonly<Record<Colour, string>> = { bold: "1", dim: "2", red: "31", yellow: "33", green: "32" };

const ACTING_ON_A_TERMINAL =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what this looks for
  /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u061c\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]|\p{Surrogate}/gu;

const inColour: Paint = (colour, text) => `${ESCAPE}${CODES[colour]}m${text}${ESCAPE}0m`;
const plain: Paint = (_colour, text) => text;

function lengthOf(text: string): number {
  return [...text].length;
}
