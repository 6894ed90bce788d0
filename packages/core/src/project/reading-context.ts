import type { ProblemPath } from "../problems/types.ts";
import type { ProblemCollector } from "./problem-collector.ts";
import type { Shape } from "./schema/read-shape.ts";
import type { FileData } from "./text/file-data.ts";
import type { Material } from "./types.ts";

/** What was found by a name. If nothing: names probably meant, a question to choose by, and names that share a word. */
export type Found<Thing> =
  | { found: Thing }
  | { found: null; near: readonly string[]; question: string | null; alike: readonly string[] };

/** A file beside the project file, as supplied by the caller. */
export type SuppliedFile = { text: string } | { failure: string };

/** What the resolving functions need besides the data: where problems go, and how materials are found. */
export interface ReadingContext {
  file: FileData;
  /** The file as read by its schema: quantities read, names not yet looked up. */
  shape: Shape;
  collector: ProblemCollector;
  findMaterial(name: string): Found<Material>;
  /** Known names close to an unknown one. None once a file has had too many unknown names. */
  nearNames(name: string, known: Iterable<string>): string[];
  /** Adds a note on an odd but possible value. */
  note(code: string, path: ProblemPath, sentence: string): void;
}
