/**
 * Counts the steps of reading one file: characters, values visited, names searched, letters compared. The count is the
 * same on every machine, so a test can prove that reading is linear in the length of the text.
 */
export interface WorkCount {
  steps: number;
}
