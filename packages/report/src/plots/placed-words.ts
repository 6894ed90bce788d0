import { PALETTE } from "../palette.ts";
import { textWidth } from "./text-width.ts";

/** Size of words placed by `place-labels.ts`, and the height kept free for them [px]. */
export const LABEL_SIZE = 12;
export const LABEL_HEIGHT = 14;

/** Paper left and right of the words [px]. */
const PATCH_MARGIN = 2;

/** Words and the middle of their left edge [px]. */
export interface PlacedWords {
  left: number;
  middle: number;
  words: string;
}

/**
 * Layers of a plot that write words where they were placed, on a patch of paper that no line below crosses.
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
  const patches = values.map(({ left, middle, words }) => ({
    left: left - PATCH_MARGIN,
    right: left + textWidth(words, LABEL_SIZE, false) + PATCH_MARGIN,
    top: middle - LABEL_HEIGHT / 2,
    bottom: middle + LABEL_HEIGHT / 2,
  }));
  const patch = {
    data: { values: patches },
    mark: { type: "rect", color: PALETTE.paper.light, opacity: 1 },
    encoding: {
      x: { field: "left", ...point },
      x2: { field: "right" },
      y: { field: "top", ...point },
      y2: { field: "bottom" },
    },
  };
  return [patch, layer({})];
}
