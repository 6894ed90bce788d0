/** What is varied. */
export interface VariationQuestion {
  /** Index of the build-up, and of its layer. */
  buildUp: number;
  /** Index from 0. */
  layer: number;
  /** [m], from 0 */
  from: number;
  /** [m] */
  to: number;
  /** [m]; null: the least round step that takes at most twenty of them. */
  step: number | null;
}
