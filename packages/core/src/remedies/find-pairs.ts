import { changesOf } from "./kinds.ts";
import { leastSize } from "./size-change.ts";
import type { Goal, Trials } from "./trials.ts";
import type { Change, ChangeStep, Situation } from "./types.ts";

/** Most pairs that are offered; the search then ends. */
const MOST_PAIRS = 3;

/** The pairs that were found, and how many were tried. */
export interface PairSearch {
  found: { step: ChangeStep; effort: number }[];
  tried: number;
}

/**
 * Finds pairs of changes where no single change is enough. Pairs of least effort come first, and both changes of a pair
 * are made as small as the other allows.
 *
 * @param situation - the build-up and what surrounds it
 * @param singles - the single changes, none of which is enough
 * @param goal - the least judgement that a pair must reach
 * @param trials - assesses what is tried
 * @returns up to three pairs
 */
export function findPairs(situation: Situation, singles: readonly Change[], goal: Goal, trials: Trials): PairSearch {
  const search: PairSearch = { found: [], tried: 0 };
  for (const [first, second] of couples(singles)) {
    if (search.found.length === MOST_PAIRS || trials.isSpent()) break;
    search.tried += 1;
    const step = sizePair(situation, first, second, goal, trials);
    if (step !== null) search.found.push({ step, effort: first.effort + second.effort });
  }
  return search;
}

/** All pairs of changes, by total effort. In each the greater change comes first; the lesser is made after it. */
function couples(singles: readonly Change[]): [Change, Change][] {
  const pairs = singles.flatMap((lesser, index) =>
    singles.slice(index + 1).map((greater): [Change, Change] => [greater, lesser]),
  );
  return pairs.sort(([a, b], [c, d]) => a.effort + b.effort - (c.effort + d.effort));
}

/** Sizes a pair: first the second change, with the first at a full size; then the first, as small as that allows. */
function sizePair(situation: Situation, first: Change, second: Change, goal: Goal, trials: Trials): ChangeStep | null {
  const keepsWarmth = first.keepsWarmth || second.keepsWarmth;
  const reaches = (step: ChangeStep | undefined): boolean =>
    step !== undefined && trials.reaches(step, goal, keepsWarmth);
  for (const probe of first.probes) {
    const both = secondAfter(situation, first.steps[probe]!, second.key);
    const enough = both?.probes.find((index) => reaches(both.steps[index]));
    if (both === null || enough === undefined) continue;
    const size = leastSize(enough + 1, (index) => reaches(both.steps[index])) ?? enough;
    const beside = first.steps
      .slice(0, probe + 1)
      .map((step) => lazily(() => secondAfter(situation, step, second.key)?.steps[size]));
    const firstSize = leastSize(probe + 1, (index) => reaches(beside[index]!()));
    return firstSize === null ? both.steps[size]! : beside[firstSize]!()!;
  }
  return null;
}

function lazily<Value>(make: () => Value): () => Value {
  let made: { value: Value } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** The second change as possible after the first; its steps contain both. */
function secondAfter(situation: Situation, step: ChangeStep, key: string): Change | null {
  const after = { ...situation, buildUp: step.buildUp, surroundings: step.surroundings ?? situation.surroundings };
  const change = changesOf(after).find((candidate) => candidate.key === key);
  if (change === undefined) return null;
  const steps = change.steps.map(
    (next): ChangeStep => ({
      does: [...step.does, ...next.does],
      buildUp: next.buildUp,
      surroundings: next.surroundings ?? step.surroundings,
      room: next.room ?? step.room,
      thicknessInside: step.thicknessInside + next.thicknessInside,
      thicknessOutside: step.thicknessOutside + next.thicknessOutside,
    }),
  );
  return { ...change, steps };
}
