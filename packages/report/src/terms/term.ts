/** One term of the trade, of the method or of warmside. Headings, table heads and `explain` are made from it. */
export interface Term {
  /** The plain word, as every text writes it. */
  name: string;
  /** What a standard or the trade calls it; null where that is the plain word. */
  technical: string | null;
  /** Symbol in the standards; null for what has none. */
  symbol: string | null;
  /** Unit in which it is shown; null for what is no quantity. */
  unit: string | null;
  /** Other ways to ask for it: plurals, near words, names of keys and of data. */
  also: readonly string[];
  /** Paragraphs of one to three sentences. */
  says: readonly string[];
  /** A standard with its clause, or "common practice"; null for warmside's own terms. */
  source: string | null;
  see: readonly string[];
}

/** A term as its list writes it: what it has not is left out, and one paragraph stands by itself. */
export type ListedTerm = Pick<Term, "name" | "see"> & Partial<Omit<Term, "says">> & { says: string | Term["says"] };

/**
 * A term with all its keys.
 *
 * @param listed - as its list writes it
 * @returns the same, with null for what it has not
 */
export function wholeTerm({ says, ...listed }: ListedTerm): Term {
  const without = { technical: null, symbol: null, unit: null, also: [], source: null };
  return { ...without, ...listed, says: typeof says === "string" ? [says] : says };
}
