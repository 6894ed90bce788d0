import type { SourceMap } from "./source-map.ts";

/** A project file as plain data, with the places where its values stand. */
export interface FileData {
  data: unknown;
  source: SourceMap;
}
