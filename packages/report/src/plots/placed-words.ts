import { PALETTE } from "../palette.ts";

/** Size of words placed by `place-labels.ts`, and the height kept free for them [px]. */
export const LABEL_SIZE = 12;
export const LABEL_HEIGHT = 14;

/** Words and the middle of their left edge [px]. */
export interface PlacedWords {
  left: number;
  middle: number;
  words: string;
}

/**
 * Layers of a plot that write words where they were placed, on a band of paper that parts them from lines below.
 *
 * @param values - the words
 * @returns two layers
 */
export function wordsLayers(values: readonly PlacedWords[]): object[] {
  const point = { type: "quantitative", scale: null, axis: null };
  const layer = (mark: object): object => ({
    data: { values },
    mark: { type: "text", align: "left", baseline: "middle", fontSize: LABEL_SIZE, ...mark },
    encoding: { x: { field: "left", ...point }, y: { field: "middle", ...point }, text: { field: "words" } },
  });
  return [layer({ stroke: PALETTE.paper.light, strokeWidth: 4, color: PALETTE.paper.light }), layer({})];
}
