import { chmodSync, linkSync, mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { SMALL_PROJECT } from "../../report/bundled-command.ts";

/** A command line, and the files it meets, that must be refused with exit 1 and with nothing written or lost. */
export interface HostileCase {
  title: string;
  args: readonly string[];
  /** Part of the message, with line ends as spaces. */
  says: string;
  /** What stands in the folder beside `studio.yaml`. */
  prepare?: (folder: string) => void;
  env?: Record<string, string>;
  /** As a user without special rights: `root` may write anywhere. */
  asNobody?: true;
}

const write =
  (name: string, content: string | Uint8Array) =>
  (folder: string): void =>
    writeFileSync(join(folder, name), content);

const LARGEST = 2_000_000;

/** Command lines that cannot be read. */
export const WRONG_LINES: readonly HostileCase[] = [
  { title: "a command that is not there", args: ["frobnicate"], says: 'There is no command "frobnicate".' },
  { title: "a command with a slip", args: ["asess", "studio.yaml"], says: "Did you mean assess?" },
  {
    title: "a file without a command",
    args: ["studio.yaml"],
    says: 'There is no command "studio.yaml". Write: warmside assess studio.yaml',
  },
  {
    title: "a file without a command, with an option",
    args: ["studio.yaml", "--json"],
    says: "Write: warmside assess studio.yaml",
  },
  {
    title: "a file that is not there, and has a space in its name, without a command",
    args: ["my shop.yml"],
    says: 'Write: warmside assess "my shop.yml"',
  },
  {
    title: "a file without an ending, without a command",
    args: ["shop"],
    says: "Write: warmside assess shop",
    prepare: write("shop", SMALL_PROJECT),
  },
  {
    title: "a file without a command, whose name would act on a terminal",
    args: ["\u001b[2J\u202e.yaml"],
    says: 'There is no command "[U+001B][2J[U+202E].yaml".',
  },
  {
    title: "a longitude that is missing",
    args: ["climate", "near", "51.5"],
    says: 'The longitude is missing beside "51.5".',
  },
  {
    title: "an option that a command below another has not",
    args: ["climate", "list", "--pdf"],
    says: "There is no option --pdf here. See warmside climate list --help.",
  },
  {
    title: "help of a command that is not there",
    args: ["help", "frobnicate"],
    says: 'There is no command "frobnicate".',
  },
  { title: "no file", args: ["assess"], says: "The FILE is missing." },
  { title: "no file to check", args: ["check"], says: "The FILE is missing." },
  {
    title: "two files",
    args: ["assess", "studio.yaml", "other.yaml"],
    says: "Too many arguments.",
  },
  {
    title: "an option that is not there",
    args: ["assess", "studio.yaml", "--frob"],
    says: "There is no option --frob here.",
  },
  { title: "an option with a slip", args: ["assess", "studio.yaml", "--jsn"], says: "Did you mean --json?" },
  {
    title: "an option of another command",
    args: ["check", "studio.yaml", "--pdf"],
    says: "There is no option --pdf here.",
  },
  {
    title: "--out without a path",
    args: ["assess", "studio.yaml", "--out"],
    says: "Something is missing after --out.",
  },
  {
    title: "--out with an empty path",
    args: ["assess", "studio.yaml", "--out", ""],
    says: "The name after --out is empty",
  },
  { title: "an empty name", args: ["assess", ""], says: "The file name is empty." },
  {
    title: "an element that is none",
    args: ["new", "--element", "door"],
    says: '"door" is not one of wall, roof, floor, partition.',
  },
  {
    title: "a shell that is none",
    args: ["completion", "fish"],
    says: '"fish" is not one of bash, zsh.',
  },
  { title: "a place that is none", args: ["new", "--climate", "osla"], says: "Did you mean oslo?" },
  {
    title: "a place that is a path out of the folder",
    args: ["new", "--climate", "../../etc/passwd"],
    says: 'There is no climate "../../etc/passwd".',
  },
  {
    title: "a climate table that is not there",
    args: ["new", "--climate", "no.csv"],
    says: "no.csv cannot be read: there is no such file.",
  },
  { title: "a word that is none", args: ["explain", "frobnication"], says: 'No term or key is called "frobnication".' },
  {
    title: "a word that would act on a terminal",
    args: ["explain", "\u001b[2Jsd\u202e"],
    says: 'No term or key is called "[U+001B][2Jsd[U+202E]".',
  },
  {
    title: "a material that is none",
    args: ["materials", "unobtainium"],
    says: 'No material of the table has "unobtainium".',
  },
];

/** Files that cannot be what is asked for. */
export const WRONG_INPUTS: readonly HostileCase[] = [
  { title: "no such file", args: ["assess", "none.yaml"], says: "none.yaml cannot be read: there is no such file." },
  {
    title: "no such folder",
    args: ["check", "none/studio.yaml"],
    says: "none/studio.yaml cannot be read: there is no such file.",
  },
  {
    title: "a path through a file",
    args: ["check", "studio.yaml/x.yaml"],
    says: "a part of its path is a file, not a folder.",
  },
  { title: "a folder", args: ["assess", "."], says: ". cannot be read: it is a folder. Name a file in it." },
  {
    title: "a device without end",
    args: ["check", "/dev/zero"],
    says: "/dev/zero cannot be read: it is not a plain file.",
  },
  {
    title: "a web address",
    args: ["assess", "https://example.org/studio.yaml"],
    says: "it is a web address, and warmside opens none.",
  },
  {
    title: "a share of another machine",
    args: ["assess", "//host/share/studio.yaml"],
    says: "it is an address in a network, and warmside opens none.",
  },
  {
    title: "a share of another machine, written as one system does",
    args: ["climate", "make", "\\\\host\\share\\records.csv"],
    says: "it is an address in a network, and warmside opens none.",
  },
  {
    title: "a project whose tables stand on a share",
    args: ["check", "shares.yaml"],
    says: "climate names the file \\\\host\\share\\x.csv, which cannot be read: it is an address in a network",
    prepare: write("shares.yaml", SMALL_PROJECT.replace("de-bilt", "\\\\host\\share\\x.csv")),
  },
  {
    title: "a file of the system that says it is empty and is not",
    args: ["check", "/proc/kallsyms"],
    says: "/proc/kallsyms cannot be read: it is larger than the 2 MB that are read.",
  },
  {
    title: "a file of the system that says it is empty and never ends, or only one day",
    args: ["check", "/proc/kmsg"],
    says: "/proc/kmsg cannot be read",
  },
  { title: "a name that is far too long", args: ["check", "x".repeat(5000)], says: "its name is too long." },
  {
    title: "a link round in a circle",
    args: ["check", "circle.yaml"],
    says: "symbolic links form a loop.",
    prepare: (folder) => symlinkSync("circle.yaml", join(folder, "circle.yaml")),
  },
  {
    title: "over 2 MB, refused before it is read",
    args: ["check", "large.yaml"],
    says: "large.yaml cannot be read: it is larger than the 2 MB that are read.",
    prepare: write("large.yaml", "#".repeat(LARGEST + 1)),
  },
  {
    title: "a picture",
    args: ["assess", "plan.png"],
    says: "plan.png cannot be read: it is not a text file.",
    prepare: write("plan.png", new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13])),
  },
  {
    title: "UTF-16",
    args: ["check", "wide.yaml"],
    says: "it is saved as UTF-16. Save it as UTF-8 and try again.",
    prepare: write("wide.yaml", Buffer.from(`\uFEFF${SMALL_PROJECT}`, "utf16le")),
  },
  {
    title: "an old encoding of Western Europe",
    args: ["check", "old.yaml"],
    says: "it is not saved as UTF-8, as line 3 shows.",
    prepare: write("old.yaml", Buffer.from(SMALL_PROJECT, "latin1")),
  },
  { title: "an empty file", args: ["check", "empty.yaml"], says: "empty.yaml", prepare: write("empty.yaml", "") },
  {
    title: "no permission to read",
    args: ["check", "secret.yaml"],
    says: "secret.yaml cannot be read: you have no permission.",
    asNobody: true,
    prepare: (folder) => {
      writeFileSync(join(folder, "secret.yaml"), SMALL_PROJECT);
      chmodSync(join(folder, "secret.yaml"), 0o000);
    },
  },
];

/** Places where nothing may be written. */
export const WRONG_OUTPUTS: readonly HostileCase[] = [
  {
    title: "over the project file",
    args: ["assess", "studio.yaml", "--out", "studio.yaml"],
    says: "studio.yaml is one of the input files.",
  },
  {
    title: "over the project file by another way",
    args: ["assess", "studio.yaml", "--out", "./././studio.yaml"],
    says: "is one of the input files.",
  },
  {
    title: "over the project file through a link",
    args: ["assess", "studio.yaml", "--out", "link.html"],
    says: "link.html is one of the input files.",
    prepare: (folder) => symlinkSync("studio.yaml", join(folder, "link.html")),
  },
  {
    title: "over the project file under a second name",
    args: ["assess", "studio.yaml", "--out", "second.html"],
    says: "second.html is one of the input files.",
    prepare: (folder) => linkSync(join(folder, "studio.yaml"), join(folder, "second.html")),
  },
  { title: "a folder", args: ["assess", "studio.yaml", "--out", "."], says: ". is a folder. Add the name of a file." },
  {
    title: "a name that ends as a folder",
    args: ["assess", "studio.yaml", "--out", "reports/"],
    says: "reports/ names a folder.",
  },
  {
    title: "a folder that is not there",
    args: ["assess", "studio.yaml", "--out", "none/report.html"],
    says: "there is no folder",
  },
  {
    title: "a folder that is a file",
    args: ["assess", "studio.yaml", "--out", "studio.yaml/report.html"],
    says: "a part of its path is a file, not a folder.",
  },
  { title: "a device", args: ["assess", "studio.yaml", "--out", "/dev/null"], says: "/dev/null is not a plain file." },
  {
    title: "a name that is far too long",
    args: ["assess", "studio.yaml", "--out", `${"x".repeat(300)}.html`],
    says: "its name is too long.",
  },
  {
    title: "a page named .pdf",
    args: ["assess", "studio.yaml", "--out", "report.pdf"],
    says: "Add --pdf, or end the name in .html.",
  },
  {
    title: "a file of the user's own where the report would go",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html is there already and was not made by warmside.",
    prepare: write("studio-report.html", "<!doctype html><title>my own notes</title>"),
  },
  {
    title: "a report that was changed by hand",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html is there already and was changed since warmside wrote it, or written by an earlier version.",
    prepare: write("studio-report.html", '<meta name="generator" content="warmside"> a note by the officer'),
  },
  {
    title: "a report made read-only",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html is read-only.",
    prepare: (folder) => {
      writeFileSync(join(folder, "studio-report.html"), "approved");
      chmodSync(join(folder, "studio-report.html"), 0o444);
    },
  },
  {
    title: "a read-only file named by --out",
    args: ["assess", "studio.yaml", "--out", "approved.html"],
    says: "approved.html is read-only.",
    prepare: (folder) => {
      writeFileSync(join(folder, "approved.html"), "approved");
      chmodSync(join(folder, "approved.html"), 0o444);
    },
  },
  {
    title: "a link that leads nowhere",
    args: ["assess", "studio.yaml", "--out", "link.html"],
    says: "is a link to kept/report.html, which is not there.",
    prepare: (folder) => symlinkSync("kept/report.html", join(folder, "link.html")),
  },
  {
    title: "a link round in a circle, where the report would go",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html cannot be written: symbolic links form a loop.",
    prepare: (folder) => symlinkSync("studio-report.html", join(folder, "studio-report.html")),
  },
  {
    title: "an address",
    args: ["assess", "studio.yaml", "--out", "//host/share/report.html"],
    says: "//host/share/report.html is an address in a network, and warmside opens none.",
  },
  {
    title: "a report that may be that of studio.yml",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html already exists and may be the report of studio.yml",
    prepare: (folder) => {
      writeFileSync(join(folder, "studio.yml"), SMALL_PROJECT);
      writeFileSync(join(folder, "studio-report.html"), "of either");
    },
  },
  {
    title: "a study whose report may be that of studio-place.yaml",
    args: ["place", "studio.yaml"],
    says: "studio-place-report.html already exists and may be the report of studio-place.yaml",
    prepare: (folder) => {
      writeFileSync(join(folder, "studio-place.yaml"), SMALL_PROJECT);
      writeFileSync(join(folder, "studio-place-report.html"), "of either");
    },
  },
  {
    title: "an assessment whose report may be the study of studio.yaml",
    args: ["assess", "studio-place.yaml"],
    says: "studio-place-report.html already exists and may be the report of studio.yaml",
    prepare: (folder) => {
      writeFileSync(join(folder, "studio-place.yaml"), SMALL_PROJECT);
      writeFileSync(join(folder, "studio-place-report.html"), "of either");
    },
  },
  {
    title: "a folder where the report would go",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html is a folder.",
    prepare: (folder) => mkdirSync(join(folder, "studio-report.html")),
  },
  {
    title: "no permission to write beside the file",
    args: ["assess", "studio.yaml"],
    says: "studio-report.html cannot be written: you have no permission.",
    asNobody: true,
    prepare: (folder) => chmodSync(folder, 0o555),
  },
  {
    title: "a disk that may not be written",
    args: ["assess", "studio.yaml", "--out", "/proc/report.html"],
    says: "/proc/report.html cannot be written",
  },
  {
    title: "a PDF without a browser",
    args: ["assess", "studio.yaml", "--pdf"],
    says: "CHROMIUM names /no/such/browser, which is not a program.",
    env: { CHROMIUM: "/no/such/browser" },
  },
  {
    title: "a PDF by a browser that cannot run",
    args: ["assess", "studio.yaml", "--pdf"],
    says: "The browser made no PDF.",
    env: { CHROMIUM: "/bin/false" },
  },
  {
    title: "a starter over a file",
    args: ["new", "--out", "studio.yaml"],
    says: "studio.yaml already exists, and warmside never overwrites a project.",
  },
  {
    title: "a starter into a folder that is not there",
    args: ["new", "--out", "none/wall.yaml"],
    says: "none/wall.yaml cannot be written: there is no such file or folder.",
  },
];
