import type { WorkCount } from "../../problems/work-count.ts";
import type { SourceMap } from "./source-map.ts";

/** A project file as plain data, with the positions of its values. */
export interface FileData {
  data: unknown;
  source: SourceMap;
  /** Steps taken so far to read it. */
  work: WorkCount;
}
