/**
 * Faults that come in twos, to be tried together: neither need move a reading alone. A fault with what it knocks on (two shorted
 * switches of a leg short the bus), and two that one cause knocks on (both junctions of a bridge leg).
 */
import { presentAt, type Universe } from "./universe.ts";

/** Knock-ons at least this strong are tried together with what causes them. */
const STRONG_KNOCK_ON = 0.05;
/** Both of one cause are tried where each fails this often by itself: the rarer are legion. */
const LEAST_RATE = 0.005;

/** Pairs of elements of free sites that are there at `logIndex`, each once. */
export function pairsBeside(
  universe: Universe,
  set: readonly number[],
  logIndex: number,
): readonly (readonly [number, number])[] {
  const taken = new Set(set.map((element) => universe.site[element]));
  const free = (element: number) =>
    !taken.has(universe.site[element]) && presentAt(universe, element, logIndex);
  const pairs = new Map<number, readonly [number, number]>();
  const add = (a: number, b: number): void => {
    if (universe.site[a] === universe.site[b]) return;
    const [low, high] = a < b ? [a, b] : [b, a];
    pairs.set(low * universe.fault.length + high, [low, high]);
  };
  for (let cause = 0; cause < universe.fault.length; cause++) {
    const strong = universe.knocksOn[cause].filter(({ to, rate }) => rate >= STRONG_KNOCK_ON && free(to));
    if (free(cause)) for (const { to } of strong) add(cause, to);
    const often = strong.filter(({ to }) => universe.rate[to] >= LEAST_RATE);
    for (const { to: a } of often) for (const { to: b } of often) if (a < b) add(a, b);
  }
  return [...pairs.values()];
}
