/** The layer to vary, and its thicknesses. */
export interface VariationQuestion {
  /** Index of the build-up, from 0. */
  buildUp: number;
  /** Index of its layer, from 0. */
  layer: number;
  /** [m], from 0 */
  from: number;
  /** [m] */
  to: number;
  /** [m]; null for the smallest round step that gives at most twenty steps. */
  step: number | null;
}
