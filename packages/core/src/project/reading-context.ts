import type { ProblemPath } from "../problems/types.ts";
import type { ProblemCollector } from "./problem-collector.ts";
import type { Shape } from "./schema/read-shape.ts";
import type { FileData } from "./text/file-data.ts";
import type { Material } from "./types.ts";

/** What a name leads to; else the names that are likely meant, and those that share a word with it. */
export type Found<Thing> =
  | { found: Thing }
  | { found: null; near: readonly string[]; question: string | null; alike: readonly string[] };

/** A file beside the project file, as whoever reads disks supplies it. */
export type SuppliedFile = { text: string } | { failure: string };

/** What the resolving functions need beside the data: where problems go, and how materials are found. */
export interface ReadingContext {
  file: FileData;
  /** The file laid on its schema: quantities read, names not yet looked up. */
  shape: Shape;
  collector: ProblemCollector;
  findMaterial(name: string): Found<Material>;
  /** Names that may be meant by one that is not known; none after the first so many of a file. */
  nearNames(name: string, known: Iterable<string>): string[];
  /** Notes of odd but possible values. */
  note(code: string, path: ProblemPath, sentence: string): void;
}
