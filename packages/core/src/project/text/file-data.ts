import type { WorkCount } from "../../problems/work-count.ts";
import type { SourceMap } from "./source-map.ts";

/** A project file as plain data, with the places where its values stand. */
export interface FileData {
  data: unknown;
  source: SourceMap;
  /** Steps that reading it took so far. */
  work: WorkCount;
}
