import type { Query } from "../project/types.ts";
import type { ClimateResult, RoomResult } from "./air-result.ts";
import type { BuildUpResult } from "./build-up-result.ts";
import type { ComparisonStudy } from "./comparison-study.ts";
import type { PlacementStudy } from "./placement-study.ts";
import type { JunctionResult } from "./plane-result.ts";
import type { VariationStudy } from "./variation-study.ts";

/** The assessment of a whole project. */
export interface ProjectResult {
  format: 2;
  method: "ISO 13788:2012 clause 6";
  project: string;
  reference: string | null;
  query: Query | null;
  climate: ClimateResult;
  /** The rooms that any build-up uses, with their twelve months in the reported year. */
  rooms: RoomResult[];
  buildUps: BuildUpResult[];
  /** Unusual but possible values; `accepted` when the file acknowledges them. */
  oddities: { code: string; path: string; message: string; accepted: boolean }[];
  /** Junctions of build-ups, calculated in the plane, in the order of the file. */
  junctions: JunctionResult[];
  /** The vapour layer in each sensible position, in several climates; only when the study was requested. */
  placement?: PlacementStudy;
  /** The build-ups compared with their variants; only where the file has variants. */
  comparison?: ComparisonStudy;
  /** One layer in many thicknesses; only when the study was requested. */
  variation?: VariationStudy;
}
