import { describe, it } from "vitest";
import { commandInProcess } from "../../report/command-in-process.ts";
import { type HostileCase, WRONG_INPUTS, WRONG_LINES, WRONG_OUTPUTS } from "./cases.ts";
import { IS_ROOT, isRefused } from "./refused.ts";

const command = commandInProcess();

/** Those that another user has to meet are met by the command as it is shipped. */
const ofThisUser = (cases: readonly HostileCase[]): HostileCase[] =>
  cases.filter(({ asNobody }) => !(asNobody === true && IS_ROOT));

describe("Command lines that cannot be read: exit 1, a plain message, nothing written", () => {
  it.each(ofThisUser(WRONG_LINES))("$title", (wrong) => isRefused(command, wrong));
});

describe("Files that cannot be what is asked for: exit 1, a plain message, nothing written", () => {
  it.each(ofThisUser(WRONG_INPUTS))("$title", (wrong) => isRefused(command, wrong));
});

describe("Places where nothing may be written: exit 1, a plain message, nothing written or lost", () => {
  it.each(ofThisUser(WRONG_OUTPUTS))("$title", (wrong) => isRefused(command, wrong));
});
