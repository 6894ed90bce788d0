/**
 * Which kind of remote address a path is: a web address, or a network share.
 *
 * @param written - a path as somebody wrote it
 * @returns its kind for `https://…`, `//host/share/…` and `\\\\host\\share\\…`; null for a path of this machine
 */
export function kindOfAddress(written: string): "a web address" | "an address in a network" | null {
  if (/^[a-z][a-z0-9+.-]+:\/\//i.test(written.trim())) return "a web address";
  return /^[\\/]{2}/.test(written.trim()) ? "an address in a network" : null;
}
