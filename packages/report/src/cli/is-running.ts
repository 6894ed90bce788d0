/**
 * Whether a process other than this one is running.
 *
 * @param id - its number
 * @returns false for this process: what it has left from an earlier life of the same number is nobody's
 */
export function isRunning(id: number): boolean {
  if (id === process.pid) return false;
  try {
    process.kill(id, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === "EPERM";
  }
}
