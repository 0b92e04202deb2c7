/** Sets of elements as ascending lists, and the order in which scored ones are looked at. */

export function insertSorted(list: readonly number[], item: number): number[] {
  const at = list.findIndex((other) => other > item);
  return at < 0 ? [...list, item] : [...list.slice(0, at), item, ...list.slice(at)];
}

interface Scored {
  readonly set: readonly number[];
  readonly score: number;
}

/** Best first; ties break by the set itself, so that nothing depends on the order of finding. */
export function byScore(a: Scored, b: Scored): number {
  if (a.score !== b.score) return b.score - a.score;
  if (a.set.length !== b.set.length) return a.set.length - b.set.length;
  for (let i = 0; i < a.set.length; i++) if (a.set[i] !== b.set[i]) return a.set[i] - b.set[i];
  return 0;
}
