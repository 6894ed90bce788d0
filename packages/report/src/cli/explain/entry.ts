/** One word of the trade, of the method or of warmside, explained. */
export interface Entry {
  /** The word as warmside writes it. */
  word: string;
  /** Other ways to ask for it: symbols, plurals, near words. */
  also: readonly string[];
  /** In what it is counted; null for a word that is no quantity. */
  unit: string | null;
  /** Paragraphs in plain words. */
  says: readonly string[];
  /** A standard with its clause, or "common practice"; null for a word of warmside's own. */
  source: string | null;
  see: readonly string[];
}
