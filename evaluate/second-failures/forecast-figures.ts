/** Do second failures come as often as they were foretold? */
import { type Interval, shareInterval } from "../intervals.ts";
import type { PowerUp } from "./power-up.ts";

/** Power-ups by what was foretold of them. */
export interface Bin {
  readonly low: number;
  readonly high: number;
  readonly count: number;
  readonly foretold: number;
  readonly broke: Interval;
}

export interface ForecastFigures {
  readonly count: number;
  /** sum of the forecasts, and within what the number that broke lies in nine of ten such runs */
  readonly foretold: number;
  readonly range: readonly [number, number];
  readonly broke: number;
  /** power-ups at which a fault that was there broke something; at the others of `broke` a part died of itself */
  readonly brought: number;
  readonly inside: boolean;
  readonly deciles: readonly Bin[];
  /** mean over all of (forecast - broke)^2, and of the same with everybody told the share that broke */
  readonly brier: number;
  readonly brierOfShare: number;
}

/** Nine of ten of a normal distribution lie within so many deviations. */
const NINE_OF_TEN = 1.6449;

/** @param ups - at least one; each breaks or not, independent of the rest: the sum is nearly normal (Poisson's binomial) */
export function forecastFigures(ups: readonly PowerUp[]): ForecastFigures {
  const chances = ups.map(({ anyBreaks }) => anyBreaks);
  const hits = ups.map(({ broke }) => Number(broke.length > 0));
  const sum = (values: readonly number[]) => values.reduce((all, one) => all + one, 0);
  const foretold = sum(chances);
  const half = NINE_OF_TEN * Math.sqrt(sum(chances.map((p) => p * (1 - p)))) + 0.5;
  const broke = sum(hits);
  const share = broke / ups.length;
  const order = ups.map((_, i) => i).sort((a, b) => chances[a] - chances[b] || a - b);
  const deciles = Array.from({ length: 10 }, (_, d): Bin | null => {
    const own = order.slice(Math.round((d * ups.length) / 10), Math.round(((d + 1) * ups.length) / 10));
    if (own.length === 0) return null;
    return {
      low: chances[own[0]],
      high: chances[own[own.length - 1]],
      count: own.length,
      foretold: sum(own.map((i) => chances[i])) / own.length,
      broke: shareInterval(sum(own.map((i) => hits[i])), own.length),
    };
  }).filter((bin) => bin !== null);
  return {
    count: ups.length,
    foretold,
    range: [Math.max(0, foretold - half), foretold + half],
    broke,
    brought: sum(ups.map(({ brought }) => Number(brought.length > 0))),
    inside: broke >= foretold - half && broke <= foretold + half,
    deciles,
    brier: sum(chances.map((p, i) => (p - hits[i]) ** 2)) / ups.length,
    brierOfShare: share * (1 - share),
  };
}

/** The figures as a table. */
export function forecastText(name: string, figures: ForecastFigures): string {
  const { count, foretold, range, broke, brought, inside, deciles, brier, brierOfShare } = figures;
  const percent = (value: number) => `${(100 * value).toFixed(1)} %`;
  return [
    `${name}: ${count} power-ups, something broke at ${broke} (${percent(broke / count)}), at ${brought} of them (${percent(brought / count)} of all) by a fault that was there; foretold ${foretold.toFixed(1)}, nine of ten runs ${range[0].toFixed(1)} to ${range[1].toFixed(1)}: ${inside ? "inside" : "outside"}; Brier score ${brier.toFixed(4)}, always guessing the share ${brierOfShare.toFixed(4)}`,
    ...deciles.map(
      ({ low, high, count: n, foretold: p, broke: b }) =>
        `  foretold ${percent(low)} to ${percent(high)}, mean ${percent(p)}: broke ${percent(b.value)} (${percent(b.low)} to ${percent(b.high)}) of ${n}`,
    ),
  ].join("\n");
}
