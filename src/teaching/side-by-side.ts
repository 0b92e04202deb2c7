/** Three ways through one board, step by step: an apprentice's, the recorded one, the proposed one. */
import type { WayStep } from "../job/practice-case.ts";
import { type WaySum, waySum } from "./ways.ts";

export interface NamedWay {
  readonly name: string;
  readonly steps: readonly WayStep[];
  readonly sum: WaySum;
}

/** Ways without a step are left out: nobody has worked the case yet. */
export function namedWays(ways: readonly (readonly [string, readonly WayStep[]])[]): readonly NamedWay[] {
  return ways
    .filter(([, steps]) => steps.length > 0)
    .map(([name, steps]) => ({ name, steps, sum: waySum(steps) }));
}

/** `0.4 min, 2.50 EUR`. */
export function costWords({ minutes, money }: { minutes: number; money: number }, currency: string): string {
  const time = `${Math.round(10 * minutes) / 10} min`;
  return money === 0 ? time : `${time}, ${money.toFixed(2)} ${currency}`;
}
