/**
 * Steps done while one file is read: characters, values visited, names looked through, letters compared. They are the
 * same on every machine, so that a test can prove reading linear in the length of the text.
 */
export interface WorkCount {
  steps: number;
}
