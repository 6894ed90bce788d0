/** What is varied. */
export interface SweepQuestion {
  /** Index of the build-up, and of its layer. */
  buildUp: number;
  layer: number;
  /** [m], from 0 */
  from: number;
  to: number;
  /** [m]; null: the least round step that takes at most twenty of them. */
  step: number | null;
}
