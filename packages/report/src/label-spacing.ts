/**
 * Places for labels that would overlap at their true places: as near to them as a least distance allows.
 *
 * @param wanted - true places in rising order
 * @param distance - least distance between neighbours, same unit, ≥ 0
 * @param from - lowest place allowed
 * @param to - highest place allowed
 * @returns places in the same order
 * @example keptApart([10, 11, 40], 8, 0, 100) // [6.5, 14.5, 40]
 */
export function keptApart(wanted: readonly number[], distance: number, from: number, to: number): number[] {
  let groups = wanted.map((place) => ({ sum: place, count: 1 }));
  const width = (count: number): number => (count - 1) * distance;
  const first = (group: Group): number => {
    const free = group.sum / group.count - width(group.count) / 2;
    return Math.max(from, Math.min(free, to - width(group.count)));
  };
  for (let merged = true; merged; ) {
    merged = false;
    const next: Group[] = [];
    for (const group of groups) {
      const before = next.at(-1);
      if (before && first(before) + width(before.count) + distance > first(group)) {
        next[next.length - 1] = { sum: before.sum + group.sum, count: before.count + group.count };
        merged = true;
      } else {
        next.push(group);
      }
    }
    groups = next;
  }
  return groups.flatMap((group) => Array.from({ length: group.count }, (_, index) => first(group) + index * distance));
}

interface Group {
  sum: number;
  count: number;
}
