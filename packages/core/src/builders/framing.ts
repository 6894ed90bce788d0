import { checkFraming } from "../given/build-up.ts";
import { usualOtherTimber } from "../project/other-timber.ts";
import type { Framing, Material } from "../project/types.ts";
import { requireObject } from "../require.ts";
import { checked } from "./given-or-thrown.ts";
import { type MaterialValues, material } from "./material.ts";

/** Timber that runs through layers: its share of the area, or width and spacing. */
export type FramingValues = {
  /** (default "studs"); the same name through several layers is the same timber */
  name?: string;
  /** (default softwood timber) */
  material?: string | MaterialValues | Material;
} & (
  | {
      /** Part of the area [–], 0 to 0.95. */
      fraction: number;
    }
  | {
      /** [m] */
      width: number;
      /** [m] */
      spacing: number;
      /** Rails, plates and corners as a part of the area [–] (default: by the build-up's element). */
      otherTimber?: number;
    }
);

/**
 * Framing by its share of the area, or by width and spacing.
 *
 * @param values - share, or width and spacing [m]
 * @returns the framing; other timber left out is that of a wall until `buildUp` sets it by the element
 * @throws ProblemsError with every problem, in the words of the project file's reader
 * Source: METHOD.md, Framing (common practice for the share of other timber).
 * @example framing({ width: 0.045, spacing: 0.6 }).share // 0.15
 */
export function framing(values: FramingValues): Framing {
  requireObject(values, "values");
  const { name = "studs", material: of = "softwood timber" } = values;
  const itself = typeof of === "object" && "basis" in of ? of : material(of);
  const common = { name, material: itself, ofOneLayer: false };
  if ("fraction" in values) {
    return checked({ ...common, share: values.fraction, origin: { kind: "fraction" } }, checkFraming, name);
  }
  const { width, spacing, otherTimber = usualOtherTimber("wall") } = values;
  const otherTimberByDefault = values.otherTimber === undefined;
  const origin = { kind: "width and spacing", width, spacing, otherTimber, otherTimberByDefault } as const;
  return checked({ ...common, share: width / spacing + otherTimber, origin }, checkFraming, name);
}
