import { describe, expect, it } from "vitest";
import { areOne, evenScale } from "../../packages/report/src/plots/even-scale.ts";
import { type Labelled, nearestOnLabel, placeLabels } from "../../packages/report/src/plots/place-labels.ts";

const ROOM = { width: 440, height: 300, mark: 6 };

/** Numbers that look random and are the same each time (multiplicative congruence, modulus 2³¹ − 1). */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

function someMarks(seed: number, count: number, width: number): Labelled[] {
  const next = numbers(seed);
  return Array.from({ length: count }, () => ({
    x: 10 + next() * 420,
    y: 10 + next() * 280,
    width: 10 + next() * width,
    height: 14,
  }));
}

const boxesOf = (marks: readonly Labelled[]) =>
  placeLabels(marks, ROOM).map((place, index) => {
    const { width, height } = marks[index]!;
    if (place === null) return null;
    const { left, middle } = place;
    return { left, right: left + width, top: middle - height / 2, bottom: middle + height / 2 };
  });

describe("words beside marks", () => {
  it.each(Array.from({ length: 40 }, (_, index) => index + 1))(
    "layout %i: no words cover words or marks, none leaves",
    (seed) => {
      const marks = someMarks(seed, 4 + (seed % 12), 160);
      const boxes = boxesOf(marks);
      expect(boxes.filter((box) => box === null)).toEqual([]);
      for (const [index, box] of boxes.entries()) {
        expect(box!.left >= 0 && box!.right <= ROOM.width && box!.top >= 0 && box!.bottom <= ROOM.height).toBe(true);
        for (const other of boxes.slice(index + 1)) {
          const apart =
            box!.right <= other!.left ||
            other!.right <= box!.left ||
            box!.bottom <= other!.top ||
            other!.bottom <= box!.top;
          expect(apart, `labels ${index} and another`).toBe(true);
        }
        for (const { x, y } of marks) {
          const covers = box!.left < x + 6 && box!.right > x - 6 && box!.top < y + 6 && box!.bottom > y - 6;
          expect(covers).toBe(false);
        }
      }
    },
  );

  it("marks that lie on one another get words side by side", () => {
    const one = { x: 200, y: 150, width: 100, height: 14 };
    const boxes = boxesOf([one, one, one, one]);
    expect(new Set(boxes.map((box) => `${box!.left} ${box!.top}`)).size).toBe(4);
  });

  it("stand to the right where there is room, else to the left; the same every time", () => {
    const marks = [
      { x: 100, y: 100, width: 80, height: 14 },
      { x: 420, y: 200, width: 80, height: 14 },
    ];
    const placed = placeLabels(marks, ROOM);
    expect(placed).toEqual([
      { left: 109, middle: 100, isApart: false },
      { left: 331, middle: 200, isApart: false },
    ]);
    expect(placeLabels(marks, ROOM)).toEqual(placed);
  });

  it("are left out where there is no room at all, and fifty numbers find theirs", () => {
    expect(placeLabels([{ x: 50, y: 50, width: 500, height: 14 }], ROOM)).toEqual([null]);
    const fifty = someMarks(7, 50, 5);
    expect(boxesOf(fifty).filter((box) => box === null)).toEqual([]);
  });

  it("a thin line ends at the nearest edge of the words", () => {
    const mark = { x: 50, y: 50, width: 40, height: 14 };
    expect(nearestOnLabel(mark, { left: 40, middle: 20, isApart: true })).toEqual({ x: 50, y: 27 });
    expect(nearestOnLabel(mark, { left: 90, middle: 80, isApart: true })).toEqual({ x: 90, y: 73 });
  });
});

describe("a scale with known pixels", () => {
  it("goes from and to round figures around the values", () => {
    const { domain, ticks, at } = evenScale([0.21, 0.44], 100);
    expect(ticks).toEqual([0.1, 0.2, 0.3, 0.4, 0.5]);
    expect(domain).toEqual([0.1, 0.5]);
    expect([at(0.1), at(0.3), at(0.5)].map((place) => Number(place.toFixed(9)))).toEqual([0, 50, 100]);
    expect(evenScale([0.21, 0.44], 100, { isUpright: true }).at(0.5)).toBeCloseTo(0, 9);
  });

  it("never goes below nothing for values that do not, and shows one value with room around it", () => {
    expect(evenScale([0, 10], 100).domain[0]).toBe(0);
    const { domain } = evenScale([0.2085, 0.2085 + 1e-16], 100);
    expect(domain[0]).toBeLessThan(0.2085);
    expect(domain[1]).toBeGreaterThan(0.2085);
    expect(evenScale([0], 100).ticks.length).toBeGreaterThan(1);
  });

  it("values that differ in their last digits are one", () => {
    expect(areOne([0.1 + 0.2, 0.3])).toBe(true);
    expect(areOne([0.3, 0.31])).toBe(false);
  });
});
