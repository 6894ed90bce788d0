import { didYouMean, inSpeech, type Wordings } from "./wording.ts";

/** Problems of a project file as a text: before any key is looked at. */
export const TEXT_WORDINGS: Wordings = {
  "file-empty": () => ({
    says: "the file is empty",
    expected: "a project: its name, a climate, a room and at least one build-up",
    likelySlip: "It may have been saved before anything was written, or the wrong file was named",
  }),
  "file-too-large": ({ text }) => ({
    says: `the file has ${text("size")}, and a project file may have ${text("limit")}`,
    expected: "a project file, which has a few kilobytes",
    likelySlip: "Another file was probably named",
  }),
  "file-not-text": () => ({
    says: "the file is not text",
    expected: "a project file saved as plain text",
    likelySlip: "A picture, a spreadsheet or a document of a word processor was probably named",
  }),
  "file-encoding": () => ({
    says: "a letter here cannot be read: the file is not saved in UTF-8",
    expected: "text in UTF-8, so that °, ² and é can be told apart",
    likelySlip: "The editor saved it in an older encoding; save it again as UTF-8",
  }),
  "yaml-form": ({ received }) => ({
    says: received === "nothing" ? "this line cannot be read" : `the line cannot be read from \`${received}\` on`,
    expected: "a key, a colon, a space and a value, such as `climate: de-bilt`",
    likelySlip:
      "A colon without a space after it, a bracket or a quotation mark that is not closed, or a line that is not under its key",
  }),
  "yaml-tab": () => ({
    says: "this line is indented with a tab",
    expected: "spaces: two for each level",
    likelySlip: "The editor put in a tab; replace tabs with spaces",
  }),
  "yaml-indent": () => ({
    says: "this line does not stand under the key it belongs to",
    expected: "lines of one list or one thing to begin in the same column",
    likelySlip: "A space too many or too few at the beginning of the line",
  }),
  "yaml-bracket": () => ({
    says: "a list or a key on its own line stands inside braces or brackets",
    expected: "what stands in braces to stay in braces, parted by commas",
    likelySlip: "A brace or bracket above is not closed",
  }),
  "yaml-missing-sign": ({ received }) => ({
    says: received === "nothing" ? "a sign is missing here" : `a sign is missing before \`${received}\``,
    expected:
      "a comma between two keys in braces, a space after a colon, and every brace, bracket and quotation mark closed",
  }),
  "duplicate-key": ({ received }) => ({
    says:
      received === "nothing"
        ? "a key stands twice in the same place"
        : `the key that begins with \`${received}\` stands twice in the same place`,
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
    likelySlip: "Braces within braces, or a question mark at the beginning of a line",
  }),
  "key-forbidden": ({ text }) => ({
    says: `\`${text("key")}\` cannot be a key`,
    expected: "the keys of a project, and names of your own",
  }),
  "nesting-too-deep": () => ({
    says: "lists and keys stand inside one another too deeply",
    expected: "at most about ten levels, as a project has",
    likelySlip: "Brackets that are not closed, or not a project file",
  }),
  "too-many-values": ({ text }) => ({
    says: `the file holds more than ${text("limit")} values, those repeated through \`*name\` counted each time`,
    expected: "a project, which has some hundreds",
  }),
  "file-is-address": ({ subject, text }) => ({
    says: `${subject} is an address, and nothing is ever fetched from one`,
    expected: "the path of a file beside the project file",
    likelySlip: `Save the table from ${text("name")} beside the project file and name that file`,
  }),
  "file-unreadable": ({ subject, text }) => ({
    says: `${subject} names the file ${text("name")}, which cannot be read: ${text("failure")}`,
    expected: "the path of a table, taken from the project file's folder",
  }),
  "climate-unknown": ({ subject, text, list }) => ({
    says: `${subject === "climate" ? "climate" : "a climate"} names ${text("name")}, and no place of that name comes with warmside`,
    expected: `one of ${inSpeech(list("known"), "or")}, or the path of a climate table that ends in .csv`,
    likelySlip: didYouMean(list("near")),
    write: list("near")[0] ?? null,
  }),
  "altitude-of-station": ({ text }) => ({
    says: `altitude is given, but the climate ${text("name")} does not tell the height of its station, so that nothing can be corrected`,
    expected: "a climate table with a line such as `# altitude: 25 m`, or no altitude in the project",
  }),
  "severity-unread": ({ received }) => ({
    says: `severity cannot be ${received}`,
    expected: "mean year, one in ten colder, one in ten warmer, or a difference such as +2 K",
  }),
  "not-yet": ({ text }) => ({
    says: `${text("what")} cannot be worked out yet`,
    expected: `a build-up without ${text("what")}`,
    likelySlip: "Write each variant as a build-up of its own for now",
  }),
};
