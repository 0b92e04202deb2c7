import type { ScoredSet } from "./scored-set.ts";
import { insertSorted } from "./set-order.ts";

/** Exchanges of two members at once that may come to within so many nats of the best set, and the most that are scored. Bounds on work. */
const REACH = 4.5;
const MOST = 48;

/** What may stand in the place of a member, with the nats that are lost by it. */
interface Swap {
  readonly from: number;
  readonly to: number;
  readonly lost: number;
}

/**
 * The best set with two members exchanged at once, where either alone may be: what explains one reading has nothing to say of another, so
 * the ways to explain them multiply, and a search that follows one of them would tell the rest to be unlikely. Most hopeful first.
 * @param found - the scored set of these elements (ascending), null where the search has not come to it
 */
export function crossedSwaps(
  best: ScoredSet,
  elementCount: number,
  found: (set: readonly number[]) => ScoredSet | null,
): readonly (readonly number[])[] {
  const swaps = best.set.map((member) => swapsOf(best, member, elementCount, found));
  const pairs: { readonly set: readonly number[]; readonly lost: number }[] = [];
  swaps.forEach((ones, at) => {
    for (const others of swaps.slice(at + 1))
      for (const one of ones)
        for (const other of others) {
          const lost = one.lost + other.lost;
          if (lost < -REACH || one.to === other.to) continue;
          const kept = best.set.filter((member) => member !== one.from && member !== other.from);
          pairs.push({ set: insertSorted(insertSorted(kept, one.to), other.to), lost });
        }
  });
  return pairs
    .sort((a, b) => b.lost - a.lost)
    .slice(0, MOST)
    .map(({ set }) => set);
}

function swapsOf(
  best: ScoredSet,
  member: number,
  elementCount: number,
  found: (set: readonly number[]) => ScoredSet | null,
): readonly Swap[] {
  const left = best.set.filter((element) => element !== member);
  const swaps: Swap[] = [];
  for (let to = 0; to < elementCount; to++) {
    if (best.set.includes(to)) continue;
    const lost = (found(insertSorted(left, to))?.score ?? Number.NEGATIVE_INFINITY) - best.score;
    if (lost >= -REACH) swaps.push({ from: member, to, lost });
  }
  return swaps;
}
