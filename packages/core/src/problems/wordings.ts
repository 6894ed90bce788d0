import { CLIMATE_WORDINGS } from "./word-climate-problems.ts";
import { LAYER_WORDINGS } from "./word-layer-problems.ts";
import { MATERIAL_WORDINGS } from "./word-material-problems.ts";
import { QUANTITY_WORDINGS } from "./word-quantity-problems.ts";
import { RECORD_WORDINGS } from "./word-record-problems.ts";
import { ROOM_WORDINGS } from "./word-room-problems.ts";
import { SHAPE_WORDINGS } from "./word-shape-problems.ts";
import { TABLE_WORDINGS } from "./word-table-problems.ts";
import { TEXT_WORDINGS } from "./word-text-problems.ts";
import { VARIANT_WORDINGS } from "./word-variant-problems.ts";
import { YAML_WORDINGS } from "./word-yaml-problems.ts";
import type { Wording } from "./wording.ts";

const BY_CODE = {
  ...CLIMATE_WORDINGS,
  ...LAYER_WORDINGS,
  ...MATERIAL_WORDINGS,
  ...QUANTITY_WORDINGS,
  ...RECORD_WORDINGS,
  ...ROOM_WORDINGS,
  ...SHAPE_WORDINGS,
  ...TABLE_WORDINGS,
  ...TEXT_WORDINGS,
  ...VARIANT_WORDINGS,
  ...YAML_WORDINGS,
};

/** The kinds of problem; each has its wording here. */
export type ProblemCode = keyof typeof BY_CODE;

/** Every wording there is, by code. */
export const WORDINGS: Readonly<Record<ProblemCode, Wording>> = BY_CODE;
