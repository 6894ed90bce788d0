/** A mark with the words that belong to it [px from the left, px from the top]. */
export interface Labelled {
  x: number;
  y: number;
  /** Width and height of its words [px]. */
  width: number;
  height: number;
}

/** Where the words of a mark stand: the middle of their left edge; and whether a thin line has to lead there. */
export interface PlacedLabel {
  left: number;
  middle: number;
  isApart: boolean;
}

/** The plotting area, and the room that every mark keeps free around its middle [px]. */
export interface PlotRoom {
  width: number;
  height: number;
  mark: number;
}

/**
 * Places for the words of marks so that no words cover other words or a mark, and none leaves the plot: beside the mark
 * where there is room, else on rings around it, nearest first. The same marks give the same places.
 *
 * @param marks - in the order in which they choose
 * @param room - the plotting area
 * @returns a place for each; null where no room is left
 */
export function placeLabels(marks: readonly Labelled[], room: PlotRoom): (PlacedLabel | null)[] {
  const taken: Box[] = marks.map(({ x, y }) => boxAround(x, y, room.mark));
  return marks.map((mark) => {
    const place = candidates(mark, room).find(
      (candidate) =>
        isInside(boxOf(candidate, mark), room) && taken.every((box) => !overlap(box, boxOf(candidate, mark))),
    );
    if (place !== undefined) taken.push(boxOf(place, mark));
    return place ?? null;
  });
}

/**
 * Where a thin line from a mark meets the words that belong to it.
 *
 * @param mark - the mark
 * @param place - where its words stand
 * @returns the nearest place on the edge of the words [px]
 */
export function nearestOnLabel(mark: Labelled, place: PlacedLabel): { x: number; y: number } {
  const { left, right, top, bottom } = boxOf(place, mark);
  return { x: Math.min(Math.max(mark.x, left), right), y: Math.min(Math.max(mark.y, top), bottom) };
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Words keep this far from their mark, and rings this far from one another [px]. */
const GAP = 3;
const RING = 9;

/** Directions around a mark, right first: as a reader looks [turns]. */
const DIRECTIONS: readonly number[] = [0, 0.5, 0.25, 0.75, 0.125, 0.875, 0.375, 0.625, 0.06, 0.94, 0.44, 0.56];

function* rings(room: PlotRoom): Generator<number> {
  for (let radius = 0; radius < room.width + room.height; radius += RING) yield radius;
}

function candidates(mark: Labelled, room: PlotRoom): PlacedLabel[] {
  return [...rings(room)].flatMap((radius) =>
    DIRECTIONS.map((turn) => {
      const across = Math.cos(2 * Math.PI * turn);
      const down = -Math.sin(2 * Math.PI * turn);
      const centre = {
        x: mark.x + across * (room.mark + GAP + mark.width / 2 + radius),
        y: mark.y + down * (room.mark + GAP + mark.height / 2 + radius),
      };
      return { left: centre.x - mark.width / 2, middle: centre.y, isApart: radius > 0 };
    }),
  );
}

function boxOf({ left, middle }: PlacedLabel, { width, height }: Labelled): Box {
  return { left, right: left + width, top: middle - height / 2, bottom: middle + height / 2 };
}

function boxAround(x: number, y: number, half: number): Box {
  return { left: x - half, right: x + half, top: y - half, bottom: y + half };
}

function isInside({ left, right, top, bottom }: Box, { width, height }: PlotRoom): boolean {
  return left >= 0 && right <= width && top >= 0 && bottom <= height;
}

function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}
