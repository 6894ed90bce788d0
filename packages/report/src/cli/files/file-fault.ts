import { CommandProblem } from "../command-result.ts";

/**
 * A refusal of the operating system in words.
 *
 * @param error - what the file system threw
 * @param doing - "read" or "written"
 * @param shown - the file as the reader knows it
 * @returns a problem for the reader; anything that is no refusal comes back as it was
 */
export function fileFault(error: unknown, doing: "read" | "written", shown: string): unknown {
  const code = (error as NodeJS.ErrnoException | null)?.code;
  if (typeof code !== "string" || !/^E[A-Z0-9]+$/.test(code)) return error;
  const cause = CAUSES[code] ?? `the system says ${code}`;
  const whole = doing === "written" ? " Existing files are unchanged." : "";
  return new CommandProblem(`cannot-be-${doing}`, `${shown} cannot be ${doing}: ${cause}.${whole}`, cause);
}

const CAUSES: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  ENOTDIR: "a part of its path is a file, not a folder",
  EISDIR: "it is a folder",
  EACCES: "you have no permission",
  EPERM: "you have no permission",
  ENOSPC: "the disk is full",
  EDQUOT: "disk quota exceeded",
  EFBIG: "no file of its size is allowed here",
  EROFS: "the disk is read-only",
  ENAMETOOLONG: "its name is too long",
  ELOOP: "symbolic links form a loop",
  EMFILE: "too many files are open",
  ENFILE: "too many files are open",
  EBUSY: "another program holds it",
  EAGAIN: "it gives nothing at once, as a device does",
  EIO: "the disk reports an error",
};
