import type { BoundedHeat } from "../field/heat-within-bounds.ts";
import type { StackRow } from "../field/layer-stack.ts";
import type { HeatField } from "../field/plane-heat.ts";
import type { PlaneYear } from "../field/plane-vapour.ts";
import type { Cell } from "../field/repeating-cell.ts";
import type { Framing, Taping } from "../project/types.ts";
import type { ChannelResult, StripResult } from "../result/types.ts";

/** Water in the worst strip of 50 mm, as in the result, its month from 0 to 11. */
export interface StripWater extends Omit<StripResult, "month"> {
  month: number;
}

/** A depth in the cell: the rows that meet there, or the same row twice inside it. */
export interface DepthInCell {
  inner: StackRow | null;
  outer: StackRow | null;
}

/** A year of vapour in the cell of a build-up. */
export interface PlaneRun {
  /** Gap beside the framing [m] and tape over it, of the layers that the framing interrupts. */
  gap: number;
  taped: Taping;
  cell: Cell;
  field: HeatField;
  year: PlaneYear;
  /** Water at every month's end [kg/m²]: over the whole cell, and in its worst strip. */
  months: readonly { mean: number; strip: number }[];
  /** Null where it stays dry. */
  strip: StripWater | null;
  /** The depth with most of the water; null where it stays dry. */
  place: DepthInCell | null;
}

/** Heat through channels in the plane, with its field. */
export interface ChannelHeat extends ChannelResult {
  /** The field with the surface resistances for U. */
  heat: BoundedHeat;
}

/** The result of the plane for a build-up. */
export interface PlaneCheck {
  framing: Framing;
  /** Tight layers that the framing interrupts, by index; none with channels. */
  interrupted: readonly number[];
  /** Whether the file states gap and tape of their joints; unstated, boards touch the framing, without tape. */
  isSaid: { gap: boolean; taped: boolean };
  /** Whether the report shows it, with a picture, or only the judgement uses it. */
  isTold: boolean;
  asBuilt: PlaneRun;
  /** The same with tape over the framing; null with channels, and where it is taped so. Shown only, never judged. */
  withTape: PlaneRun | null;
  /** The same with a gap of 2 mm; null where the file states the gap, or the joints are taped over the framing. */
  withGap: PlaneRun | null;
  /** Null without channels. */
  channel: ChannelHeat | null;
}
