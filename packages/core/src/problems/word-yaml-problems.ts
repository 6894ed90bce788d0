import type { Wordings } from "./wording.ts";

/** Slips of YAML: indentation, signs, keys. */
export const YAML_WORDINGS = {
  "yaml-form": ({ received }) => ({
    says: received === "nothing" ? "this line cannot be read" : `the line cannot be read from \`${received}\` on`,
    expected: "a key, a colon, a space and a value, for example `climate: de-bilt`",
    likelySlip: "There is a brace or bracket too many, or a text needs quotation marks",
  }),
  "yaml-tab": () => ({
    says: "this line is indented with a tab",
    expected: "spaces: two for each level",
    likelySlip: "The editor inserts tabs: replace them with spaces",
  }),
  "yaml-indent": () => ({
    says: "this line is not indented like the lines it belongs to",
    expected: "the keys of one thing in one column, and what belongs to a key further in",
    likelySlip: "There is probably a space too many or too few",
  }),
  "yaml-two-keys": ({ received, text }) =>
    text("lineFurtherIn") === ""
      ? {
          says: `this line holds a second key${received === "nothing" ? "" : `, at \`${received}\``}`,
          expected: "one key on a line, or several in braces with commas between them",
          likelySlip: "Text with a colon in it needs quotation marks",
        }
      : {
          says: `line ${text("lineFurtherIn")} is indented further than this line, which already has the value \`${received}\``,
          expected: "keys of one thing in the same column",
        },
  "yaml-colon": ({ received }) => ({
    says: received === "nothing" ? "this line has no key" : `\`${received}\` is not a key with a value`,
    expected: "a key, a colon, a space and a value, for example `climate: de-bilt`",
    likelySlip: "The space after the colon is missing, or the hyphen before a list entry",
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
    expected: "quotation marks on both sides of a text",
    likelySlip: "An apostrophe at the beginning of a text counts as a quotation mark",
  }),
  "yaml-more-than": ({ received, text }) => ({
    says: `\`${received}\` cannot stand here without quotation marks: a line that begins with > is read as a long text`,
    expected: "the number that the data sheet gives as the least",
    write: [text("write"), `"> ${text("write")}"`],
  }),
  "yaml-start": ({ received }) => ({
    says: `a value cannot begin like \`${received}\``,
    expected: "a letter or a digit first, or text in quotation marks",
  }),
  "yaml-escape": ({ received }) => ({
    says: `the backslash in \`${received}\` has no meaning here`,
    expected: "single quotation marks around text with a backslash",
  }),
  "key-twice": ({ received }) => ({
    says: `the key \`${received}\` is given twice`,
    expected: "each key once",
    likelySlip: "A copied line was left unchanged, or a new build-up or layer lacks its hyphen",
  }),
  "several-documents": () => ({
    says: "the file holds more than one project",
    expected: "one project per file",
    likelySlip: "A line of three hyphens begins a second project: put it into its own file",
  }),
  "yaml-anchor": ({ received }) => ({
    says:
      received === "nothing"
        ? "a repeated part cannot be found"
        : `${received} refers to a part that does not exist or contains itself`,
    expected: "`&name` before a part, and `*name` where it is repeated",
  }),
  "yaml-tag": ({ received }) => ({
    says:
      received === "nothing"
        ? "a tag that begins with `!` has no meaning here"
        : `the tag \`${received}\` has no meaning here`,
    expected: "values without tags",
    likelySlip: "Text that begins with an exclamation mark needs quotation marks",
  }),
  "yaml-directive": () => ({ says: "a line that begins with % has no meaning here", expected: "keys and values only" }),
  "key-not-text": () => ({
    says: "a key here is not a word",
    expected: "a word, a colon and a value",
    likelySlip: "There are braces within braces, or the line begins with a question mark",
  }),
  "key-forbidden": ({ received }) => ({
    says: `\`${received}\` cannot be a key`,
    expected: "the keys of a project, and names of your own",
  }),
  "nesting-too-deep": () => ({
    says: "lists and keys are nested too deeply",
    expected: "about ten levels at most",
    likelySlip: "A bracket is not closed, or this is not a project file",
  }),
  "too-many-values": ({ text }) => ({
    says: `the file holds more than ${text("limit")} values`,
    expected: "a project of some hundreds of values; each repetition by `*name` counts",
  }),
} satisfies Wordings;
