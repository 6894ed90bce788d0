import type { Wordings } from "./wording.ts";

/** Slips of YAML: indentation, signs, keys. */
export const YAML_WORDINGS: Wordings = {
  "yaml-form": ({ received }) => ({
    says: received === "nothing" ? "this line cannot be read" : `the line cannot be read from \`${received}\` on`,
    expected: "a key, a colon, a space and a value, such as `climate: de-bilt`",
    likelySlip: "A brace or bracket too many, or text that is not in quotation marks",
  }),
  "yaml-tab": () => ({
    says: "this line is indented with a tab",
    expected: "spaces: two for each level",
    likelySlip: "The editor put in a tab; replace tabs with spaces",
  }),
  "yaml-indent": () => ({
    says: "this line does not begin in the column of the lines it belongs to",
    expected: "the keys of one thing to begin in the same column, and what belongs to a key to stand further in",
    likelySlip: "There may be a space too many or too few at the beginning of the line",
  }),
  "yaml-two-keys": ({ received }) => ({
    says:
      received === "nothing"
        ? "a second key begins on this line"
        : `a second key begins on this line, at \`${received}\``,
    expected: "one key on a line, or several in braces and parted by commas",
    likelySlip:
      "Text with a colon in it needs quotation marks, and a line under a key that has a value already stands too far in",
  }),
  "yaml-colon": ({ received }) => ({
    says: received === "nothing" ? "this line has no key" : `\`${received}\` is no key with a value`,
    expected: "a key, a colon, a space and a value, such as `climate: de-bilt`",
    likelySlip: "The space after the colon is missing, or a hyphen before an entry of a list",
  }),
  "yaml-comma": ({ received }) => ({
    says:
      received === "nothing"
        ? "a comma is missing in these braces"
        : `a comma is missing in the braces, in \`${received}\``,
    expected: "a comma between two keys in braces",
  }),
  "yaml-open": ({ received }) => ({
    says:
      received === "nothing"
        ? "a brace or bracket is not closed"
        : `the brace or bracket that opens at \`${received}\` is not closed`,
    expected: "`}` for every `{`, and `]` for every `[`",
  }),
  "yaml-quote": ({ received }) => ({
    says:
      received === "nothing"
        ? "a quotation mark is not closed"
        : `the quotation mark that opens at \`${received}\` is not closed`,
    expected: "a quotation mark on both sides of a text",
    likelySlip: "An apostrophe at the beginning of a text counts as a quotation mark",
  }),
  "yaml-start": ({ received }) => ({
    says: `a value cannot begin as in \`${received}\``,
    expected: "a letter or a digit at the beginning, or text in quotation marks",
  }),
  "yaml-escape": ({ received }) => ({
    says: `the backslash in \`${received}\` means nothing here`,
    expected: "text in single quotation marks where it has a backslash in it",
  }),
  "key-twice": ({ received }) => ({
    says: `the key \`${received}\` stands twice in the same place`,
    expected: "each key once",
    likelySlip: "A copied line was not changed; a new build-up or layer begins with a hyphen",
  }),
  "several-documents": () => ({
    says: "the file holds more than one project",
    expected: "one project in a file",
    likelySlip: "A line of three hyphens begins another one; put it into a file of its own",
  }),
  "yaml-anchor": ({ received }) => ({
    says:
      received === "nothing"
        ? "a repeated part cannot be found"
        : `${received} repeats a part that is not there, or that holds itself`,
    expected: "`&name` before a part, and `*name` later where it comes again",
  }),
  "yaml-tag": ({ received }) => ({
    says:
      received === "nothing"
        ? "a mark that begins with `!` stands here"
        : `the mark \`${received}\` means nothing here`,
    expected: "values without such marks",
    likelySlip: "Text that begins with an exclamation mark needs quotation marks",
  }),
  "yaml-directive": () => ({ says: "a line that begins with % means nothing here", expected: "keys and values only" }),
  "key-not-text": () => ({
    says: "a key here is not a word",
    expected: "a word, a colon and a value",
    likelySlip: "There may be braces within braces, or a question mark at the beginning of a line",
  }),
  "key-forbidden": ({ received }) => ({
    says: `\`${received}\` cannot be a key`,
    expected: "the keys of a project, and names of your own",
  }),
  "nesting-too-deep": () => ({
    says: "lists and keys stand inside one another too deeply",
    expected: "at most about ten levels, as a project has",
    likelySlip: "A bracket is not closed, or this is no project file",
  }),
  "too-many-values": ({ text }) => ({
    says: `the file holds more than ${text("limit")} values`,
    expected: "a project, which has some hundreds; parts repeated through `*name` are counted each time",
  }),
};
