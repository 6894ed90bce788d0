import type { BeyondFindings } from "./beyond-method.ts";
import type { CheckFindings } from "./checks.ts";
import type { HeatFindings } from "./heat-and-roofs.ts";
import type { PlaneFindings } from "./plane.ts";
import type { RainFindings } from "./rain.ts";
import type { SurfaceFindings } from "./surface.ts";
import type { VapourLayerFindings } from "./vapour-layer.ts";
import type { WaterFindings } from "./water.ts";

/** The data behind each finding, by its code: ids, indices from 0 and figures in SI, no sentences. */
export interface FindingFigures
  extends BeyondFindings,
    CheckFindings,
    HeatFindings,
    PlaneFindings,
    RainFindings,
    SurfaceFindings,
    VapourLayerFindings,
    WaterFindings {}

/** The kinds of finding. */
export type FindingCode = keyof FindingFigures;
