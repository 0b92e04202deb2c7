/** Intervals without a model: resampling for means and their ratios, Wilson's for shares. */
import { seeded } from "./samples.ts";

export interface Interval {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

const RESAMPLES = 2000;

/**
 * 90 % interval of a statistic of `count` boards by the percentile bootstrap (Efron 1979): boards are drawn again with replacement.
 * @param statistic - of a list of board indexes
 */
export function bootstrap(
  count: number,
  statistic: (boards: readonly number[]) => number,
  seed = 1,
): Interval {
  const all = Array.from({ length: count }, (_, i) => i);
  const random = seeded(seed);
  const values: number[] = [];
  for (let k = 0; k < RESAMPLES; k++)
    values.push(statistic(all.map(() => Math.min(count - 1, Math.floor(random() * count)))));
  values.sort((a, b) => a - b);
  const at = (share: number) => values[Math.floor(share * (RESAMPLES - 1))];
  return { value: statistic(all), low: at(0.05), high: at(0.95) };
}

/** 90 % interval of a share (Wilson 1927). */
export function shareInterval(hits: number, count: number): Interval {
  if (count === 0) return { value: Number.NaN, low: 0, high: 1 };
  const z = 1.6449;
  const p = hits / count;
  const centre = (p + (z * z) / (2 * count)) / (1 + (z * z) / count);
  const half = (z / (1 + (z * z) / count)) * Math.sqrt((p * (1 - p)) / count + (z * z) / (4 * count * count));
  return { value: p, low: Math.max(0, centre - half), high: Math.min(1, centre + half) };
}

/** The mean of some of a list. */
export function meanOf(values: readonly number[], which: readonly number[]): number {
  return which.reduce((sum, i) => sum + values[i], 0) / which.length;
}
