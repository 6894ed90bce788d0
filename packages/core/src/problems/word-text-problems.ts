import { didYouMean, oneOf, onlyOne, type Wordings } from "./wording.ts";

/** Problems of a project file as a text: before any key is looked at. */
export const TEXT_WORDINGS: Wordings = {
  "file-empty": () => ({
    says: "the file is empty",
    expected: "a project: its name, a climate, a room and at least one build-up",
    likelySlip: "It may have been saved before anything was written, or the wrong file was named",
  }),
  "file-too-large": ({ text }) => ({
    says: `the file is larger than ${text("limit")}`,
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
  "file-is-address": ({ subject, text }) => ({
    says: `${subject} is an address, and nothing is ever fetched from one`,
    expected: "the path of a file beside the project file",
    likelySlip: `Save the table from ${text("name")} beside the project file and name that file`,
  }),
  "file-unreadable": ({ subject, text }) => ({
    says: `${subject} names the file ${text("name")}, which cannot be read: ${text("failure")}`,
    expected: "the path of a table, taken from the project file's folder",
  }),
  "climate-unknown": ({ text, list }) => ({
    says: `there is no climate called ${text("name")}`,
    expected: `${list("near").length > 0 ? "a place that comes with warmside" : oneOf(list("known"))}, or the path of a climate table that ends in .csv`,
    likelySlip: /[./\\]/.test(text("name"))
      ? "What does not end in .csv is taken for a name and not for a path"
      : (didYouMean(list("near")) ?? "The list of climates has those nearest by latitude and longitude"),
    write: onlyOne(list("near")),
  }),
  "altitude-of-station": ({ text }) => ({
    says: `altitude is given, but the climate ${text("name")} does not tell the height of its station, so that nothing can be corrected`,
    expected: "a climate table with a line such as `# altitude: 25 m`, or no altitude in the project",
  }),
  "only-with-altitude": () => ({
    says: "lapse rate tells how the air cools from the station's height to the site's, but no altitude is given",
    expected: "the altitude of the site beside it, or no lapse rate",
    write: "altitude: 120 m",
  }),
  "severity-unread": ({ received }) => ({
    says: `severity cannot be ${received}`,
    expected: "mean year, one in ten colder, one in ten warmer, or a difference such as +2 K",
  }),
};
