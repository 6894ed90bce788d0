/** Kind of the outside of a wall that rain can wet. */
export type CladdingKind = "masonry" | "render" | "log" | "boarding";

/** The layer that takes up rain, by its index from 0. */
export interface RainOnLayer {
  /** Index from 0. */
  layer: number;
  kind: CladdingKind;
}

/** Figures of findings on rain on walls, by code. */
export interface RainFindings {
  "rain-not-said": RainOnLayer;
  "rain-kept-off": RainOnLayer & { said: "no" | "sheltered" };
  "rain-wetted-masonry": RainOnLayer;
  /** Index from 0. */
  "sun-driven-moisture": { layer: number /** Whether the file says that rain wets it. */; isSure: boolean };
  /** Index from 0. */
  "outer-leaf-drains": { layer: number };
}
