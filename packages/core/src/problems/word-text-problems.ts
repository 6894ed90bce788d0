import { didYouMean, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of a project file as a text, found before its keys are read. */
export const TEXT_WORDINGS = {
  "file-empty": () => ({
    says: "the file is empty",
    expected: "a project: its name, a climate, a room and at least one build-up",
    likelySlip: "It may have been saved too early, or another file is meant",
  }),
  "file-too-large": ({ text }) => ({
    says: `the file is larger than ${text("limit")}`,
    expected: "a project file of a few kilobytes",
    likelySlip: "This is probably another file",
  }),
  "file-not-text": () => ({
    says: "the file is not text",
    expected: "a project file saved as plain text",
    likelySlip: "This is probably a picture, a spreadsheet or a word-processor document",
  }),
  "file-encoding": () => ({
    says: "a character here cannot be read: the file is not saved as UTF-8",
    expected: "text saved as UTF-8",
    likelySlip: "The editor used an older encoding: save the file again as UTF-8",
  }),
  "file-is-address": ({ subject, text }) => ({
    says: `${subject} is a web address, and warmside fetches nothing`,
    expected: "the path of a file beside the project file",
    likelySlip: `Save the table from ${text("name")} beside the project file and name that file`,
  }),
  "file-unreadable": ({ subject, text }) => ({
    says: `${subject} names the file ${text("name")}, which cannot be read: ${text("failure")}`,
    expected: "the path of a table, relative to the folder of the project file",
  }),
  "climate-unknown": ({ text, list }) => ({
    says: `no climate is called ${text("name")}`,
    expected: `${list("near").length > 0 ? "a climate that comes with warmside" : oneOf(list("known"))}, or the path of a climate table (.csv)`,
    likelySlip: /[./\\]/.test(text("name"))
      ? "Without the ending .csv it is read as a name, not as a path"
      : (didYouMean(list("near")) ?? "`warmside climate near LAT LON` lists the nearest climates"),
    write: onlyOne(list("near")),
  }),
  "altitude-of-station": ({ text }) => ({
    says: `altitude is given, but the climate ${text("name")} does not state the altitude of its station`,
    expected: "a climate table with the line `# altitude: 25 m`, or no altitude in the project",
  }),
  "only-with-altitude": () => ({
    says: "lapse rate is given without the altitude of the site",
    expected: "both altitude and lapse rate, or neither",
    write: "altitude: 120 m",
  }),
  "severity-unread": ({ received }) => ({
    says: `severity cannot be ${received}`,
    expected: "mean year, one in ten colder, one in ten warmer, or a difference, for example +2 K",
  }),
} satisfies Wordings;
