/**
 * Whether a path is the address of another machine: of the web, or of a share in the network.
 *
 * @param written - a path as somebody wrote it
 * @returns true for `https://…`, `//host/share/…` and `\\\\host\\share\\…`
 */
export function isAddress(written: string): boolean {
  return /^[a-z][a-z0-9+.-]+:\/\/|^[\\/]{2}/i.test(written.trim());
}
