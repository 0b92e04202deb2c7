/** How long this bench takes for each kind of action, against the minutes of the job format. */
import { updateNormal } from "./conjugate.ts";
import type { PaceTaken } from "./lesson.ts";
import { PSEUDO_COUNTS } from "./pseudo-counts.ts";

export interface LearntPace {
  /** times the format's minutes */
  readonly factor: number;
  /** actions timed that were work, as far as can be told */
  readonly count: number;
  /** gaps that were more likely a pause, or typed in a bunch */
  readonly leftOut: number;
}

/** How a gap between two entries comes about. All from memory. */
export const GAPS = {
  /** share of gaps in which something else was done: the telephone, the kettle, another job */
  pauses: 0.15,
  /** standard deviation of ln(minutes) of work of one kind */
  workSpreadLn: 0.7,
  /** a pause is anything from this many times the usual minutes upwards, each tenfold as likely as the next */
  pauseFromTimes: 1,
  pauseToTimes: 3000,
  /** two entries nearer together than this were typed in a bunch */
  bunchedSeconds: 2,
} as const;
const ROUNDS = 30;

/**
 * Work spreads about its mean in the logarithm; a pause is as likely a minute as an hour. Each gap counts as work with the probability that
 * it was, and the mean of the work's logarithms, with pseudo-counts on the format's minutes, is the pace (a mixture, fitted by
 * expectation and maximisation from the gaps' median).
 */
export function pacesOf(taken: readonly PaceTaken[]): Map<string, LearntPace> {
  const gaps = new Map<string, number[]>();
  for (const { action, logRatios } of taken) gaps.set(action, [...(gaps.get(action) ?? []), ...logRatios]);
  return new Map(
    [...gaps]
      .filter(([, ratios]) => ratios.length > 0)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([action, ratios]) => [action, paceOf(ratios)]),
  );
}

function paceOf(logRatios: readonly number[]): LearntPace {
  const sorted = [...logRatios].sort((a, b) => a - b);
  let mean = sorted[Math.floor((sorted.length - 1) / 2)] ?? 0;
  let count = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const work = sorted.map((ratio) => workShare(ratio, mean));
    count = work.reduce((sum, share) => sum + share, 0);
    const seen = work.reduce((sum, share, at) => sum + share * sorted[at], 0) / Math.max(count, 1e-9);
    ({ mean } = updateNormal({ mean: 0, weight: PSEUDO_COUNTS.pace.worth }, seen, count));
  }
  return { factor: Math.exp(mean), count, leftOut: sorted.length - count };
}

function workShare(logRatio: number, mean: number): number {
  const { pauses, workSpreadLn, pauseFromTimes, pauseToTimes } = GAPS;
  const z = (logRatio - mean) / workSpreadLn;
  const work = ((1 - pauses) * Math.exp(-0.5 * z * z)) / (workSpreadLn * Math.sqrt(2 * Math.PI));
  const within = logRatio >= Math.log(pauseFromTimes) && logRatio <= Math.log(pauseToTimes);
  const pause = within ? pauses / Math.log(pauseToTimes / pauseFromTimes) : logRatio > 0 ? 1 : 1e-6;
  return work / (work + pause);
}
