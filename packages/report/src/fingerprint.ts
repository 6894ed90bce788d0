/**
 * SHA-256 of a text.
 *
 * @param text - any text
 * @returns 32 bytes
 */
export async function sha256(text: string): Promise<Uint8Array> {
  return new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text)));
}

/**
 * Puts the fingerprint of a page behind it, so that a later change by hand can be seen.
 *
 * @param page - the whole HTML text
 * @returns the same text with a comment after its end; the same page gives the same bytes everywhere
 */
export async function withFingerprint(page: string): Promise<string> {
  const hex = Array.from(await sha256(page), (byte) => byte.toString(16).padStart(2, "0")).join("");
  return `${page}<!-- made by warmside, fingerprint ${hex} -->\n`;
}
