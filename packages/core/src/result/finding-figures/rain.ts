/** What the outside of a wall is to rain. */
export type CladdingKind = "masonry" | "render" | "log" | "boarding";

/** The layer that takes up rain, by its index from 0. */
export interface RainOnLayer {
  layer: number;
  kind: CladdingKind;
}

/** Figures of findings of rain on walls, by code. */
export interface RainFindings {
  "rain-not-said": RainOnLayer;
  "rain-kept-off": RainOnLayer & { said: "no" | "sheltered" };
  "rain-wetted-masonry": RainOnLayer;
  "sun-driven-moisture": { layer: number /** Whether the file says that rain wets it. */; isSure: boolean };
  "outer-leaf-drains": { layer: number };
}
