/**
 * How a reading on a powered board scatters around what the live model says. Every threshold of that likelihood stands here.
 *
 * A reading is the model's value with the model's own deviation (mains, load, tolerance), plus the meter's digits; or it is a slip
 * (a clip that has come off reads nothing, a clip on the wrong pin anything).
 */
import type { LiveMode } from "../bench/event.ts";
import type { LiveReading } from "../live/live-reading.ts";
import { logAdd } from "../numeric/log-space.ts";
import { logNormalDensity } from "../numeric/normal.ts";

interface Scatter {
  /** digits, in the reading's unit, and share of the reading (published hand-held meters: volts 0.8 %, amps 2 %; thermometers 2 K) */
  readonly digits: number;
  readonly share: number;
  /** what a slip is drawn from: this wide, in the reading's unit; and below this it may be a clip that has come off */
  readonly width: number;
  readonly nothing: number;
  /** a place that nothing feeds reads this much by leakage and pick-up (common practice) */
  readonly rest: number;
}

export const LIVE_READING_MODEL: { readonly slipShare: number; readonly slipNothing: number } & Readonly<
  Record<LiveMode, Scatter>
> = {
  /** share of readings that are slips, and of those the share that read nothing at all (from memory) */
  slipShare: 0.02,
  slipNothing: 0.5,
  dcv: { digits: 0.01, share: 0.01, width: 700, nothing: 0.5, rest: 0.3 },
  acv: { digits: 0.2, share: 0.015, width: 500, nothing: 0.5, rest: 2 },
  amps: { digits: 0.005, share: 0.03, width: 10, nothing: 0.01, rest: 0 },
  temperature: { digits: 2, share: 0, width: 150, nothing: 0, rest: 0 },
};

/** ln P(reading) by a slip alone, its share included. */
export function liveSlipLog(mode: LiveMode, reading: number): number {
  const { slipShare, slipNothing } = LIVE_READING_MODEL;
  const { width, nothing } = LIVE_READING_MODEL[mode];
  const off = Math.abs(reading) < nothing ? slipNothing / (2 * nothing) : 0;
  return Math.log(slipShare * (off + (1 - slipNothing) / width));
}

/** ln P(reading | the model's value): slips included. */
export function liveLogLikelihood(mode: LiveMode, reading: number, predicted: LiveReading): number {
  const { digits, share, rest } = LIVE_READING_MODEL[mode];
  const restless = predicted.held === true ? 0 : rest * Math.exp(-Math.abs(predicted.value));
  const deviation = Math.hypot(predicted.spread, digits, share * predicted.value, restless);
  const good = logNormalDensity((reading - predicted.value) / deviation) - Math.log(deviation);
  return logAdd(good + Math.log1p(-LIVE_READING_MODEL.slipShare), liveSlipLog(mode, reading));
}

/** ln P(reading) where the model cannot say: anything of the reading's own size. */
export function unknownLiveLog(mode: LiveMode, reading: number): number {
  return -Math.log(4 * (Math.abs(reading) + LIVE_READING_MODEL[mode].nothing + 1));
}

/** The highest that any prediction could give. */
export function bestLiveLog(mode: LiveMode, reading: number): number {
  const { digits, share } = LIVE_READING_MODEL[mode];
  return logNormalDensity(0) - Math.log(Math.hypot(digits, share * reading));
}

/** Is the second value another reading than the first, as far as anybody would tell? Nearer than this share of the spread it is not. */
const SAME_SHARE = 0.25;
/** A spread this many times wider is another answer: a rail that comes and goes. */
const WIDER = 2;

export function liveDiffer(mode: LiveMode, one: LiveReading | null, other: LiveReading | null): boolean {
  if (one === null || other === null) return one !== other;
  const { digits } = LIVE_READING_MODEL[mode];
  const narrower = Math.hypot(digits, Math.min(one.spread, other.spread));
  const moved = Math.abs(one.value - other.value) > SAME_SHARE * narrower;
  return moved || Math.max(one.spread, other.spread) > WIDER * narrower;
}
