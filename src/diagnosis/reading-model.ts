/**
 * How a reading scatters around what the circuit predicts. Every threshold of the likelihood stands in this file.
 *
 * A reading is the prediction plus the tolerance of the parts (from the predictor), plus the digits and contact of the
 * meter; or it is a slip (wrong pad, varnish, swapped leads, not settled), which may show anything.
 */

import type { ColdMode, Reading } from "../bench/event.ts";
import { OTHER_METERS } from "../meter/other-meters.ts";
import type { MeterReading } from "../meter/prediction.ts";
import type { MeterSettings } from "../meter/settings.ts";
import { METER_SPREAD } from "../meter/spread.ts";
import { logAdd, logSumExp } from "../numeric/log-space.ts";
import { logNormalDensity, normalTail } from "../numeric/normal.ts";
import { COMMON_POINTS, COMMON_STEP } from "./evidence.ts";

export const READING_MODEL = {
  /**
   * share of the common deviation that is one and the same in every reading; the rest (the source bends with the range, parts
   * warm by place) is each reading's own (from memory)
   */
  commonShared: 0.8,
  /** share of readings that are slips (from memory; oracle boards of the evaluation use 1-2 %) */
  slipShare: 0.015,
  /** what a slip shows: open, nothing between the probes, or anywhere on the scale (from memory) */
  slipOpen: 0.4,
  slipZero: 0.2,
  slipAnywhere: 0.4,
  /** diode mode: digits and contact, volts, and share of the reading (published hand-held meters: 1.5 % + 2 to 5 digits of a millivolt, two
   * deviations) */
  diodeVolts: 0.002,
  diodeShare: 0.012,
  /** share of meters that already say OL from this many volts in diode mode, whatever the job file says of its meter (published
   * hand-held meters: 1.5, 2 or 3 V; shares from memory) */
  lowLimitShare: 0.25,
  lowLimitVolts: 1.5,
  /** ohms: leads and contact (published: 0.1 to 0.5 ohm), and share of the reading (0.8 % + 2 digits, two deviations) */
  contactOhms: METER_SPREAD.contactOhms,
  ohmsShare: 0.008,
  /** farads: share of the reading, the meter's and the part's loss at another frequency (from memory) */
  faradsShare: 0.06,
  /** farads of junctions, gates and leads beside anything that is measured: far below it a capacitance says nothing (from memory) */
  strayFarads: METER_SPREAD.strayFarads,
  /** extra scatter for what no model covers, in ln(ohms) (from memory; more left readings of plain resistors four times in
   * five within half their band) */
  ohmsModelLn: 0.02,
  /** coarse answers in diode mode, volts: zero below, a junction between, high above (common practice) */
  diodeZeroVolts: 0.1,
  diodeHighVolts: 1.0,
  /** coarse answers in ohms, continuity: zero below, high above (from memory) */
  ohmsZero: 10,
  ohmsHigh: 20_000,
  /** coarse answers in farads (from memory) */
  faradsZero: 1e-9,
  faradsHigh: 1e-3,
  /** full scale of the ohms and farads display */
  ohmsLimit: 60e6,
  faradsLimit: 0.06,
} as const;

const M = READING_MODEL;

/** A scale on which scatter is about normal: volts as they are, ohms and farads by logarithm. */
interface Scale {
  readonly at: (quantity: number) => number;
  /** deviation by the tolerance of the parts, and by the meter's digits and contact */
  readonly parts: (prediction: MeterReading) => number;
  readonly digits: (prediction: MeterReading) => number;
  readonly common: (prediction: MeterReading) => number;
  readonly zero: number;
  readonly high: number;
  readonly limit: number;
  readonly lowest: number;
}

/**
 * ln P(readings | prediction) at each point of the common unknown; slips included. Several readings of one check share the
 * tolerance of the parts: repeating a check only averages the digits and makes a slip plain.
 * @param faultSpread - deviation by the unknown resistance of the faults, on the scale of `onScale`
 */
export function readingLogLikelihood(
  mode: ColdMode,
  readings: readonly Reading[],
  prediction: MeterReading,
  meter: MeterSettings,
  faultSpread = 0,
): Float64Array {
  const scale = scaleOf(mode, meter);
  const mean = scale.at(prediction.centre);
  const common = scale.common(prediction);
  const vector = new Float64Array(COMMON_POINTS.length);
  const log = (reading: Reading, shifted: number, deviation: number): number =>
    logAdd(
      goodLog(mode, reading, shifted, deviation, scale, meter, prediction) + Math.log1p(-M.slipShare),
      slipLogLikelihood(mode, reading, meter),
    );
  if (readings.length === 1) {
    const deviation = Math.hypot(scale.parts(prediction), scale.digits(prediction), faultSpread);
    for (let z = 0; z < vector.length; z++)
      vector[z] = log(readings[0], mean + common * COMMON_POINTS[z], deviation);
    return vector;
  }
  const digits = scale.digits(prediction);
  const parts = Math.hypot(scale.parts(prediction), faultSpread);
  for (let z = 0; z < vector.length; z++) {
    const terms = SHARED_GRID.map((step) => {
      let sum = logNormalDensity(step) + Math.log(SHARED_STEP);
      for (const reading of readings)
        sum += log(reading, mean + common * COMMON_POINTS[z] + parts * step, digits);
      return sum;
    });
    vector[z] = logSumExp(terms);
  }
  return vector;
}

/** Grid over the deviation that repeats of one check share, in standard deviations. */
const SHARED_STEP = 0.2;
const SHARED_GRID: readonly number[] = Array.from({ length: 33 }, (_, k) => (k - 16) * SHARED_STEP);

/** A quantity on the scale on which its scatter is about normal: volts as they are, ohms and farads by logarithm. */
export function onScale(mode: ColdMode, quantity: number, meter: MeterSettings): number {
  return scaleOf(mode, meter).at(quantity);
}

/** ln of what a slip alone gives, its share included. */
export function slipLogLikelihood(mode: ColdMode, reading: Reading, meter: MeterSettings): number {
  const scale = scaleOf(mode, meter);
  const width = scale.limit - scale.lowest;
  const interval = readingInterval(mode, reading, scale, meter);
  if (interval === null) {
    const x = scale.at(reading as number);
    const nearZero = x <= scale.zero ? M.slipZero / (scale.zero - scale.lowest) : 0;
    return Math.log(M.slipShare * (nearZero + M.slipAnywhere / width));
  }
  const [low, high] = interval;
  const open = high === Number.POSITIVE_INFINITY ? M.slipOpen : 0;
  const zero = low === Number.NEGATIVE_INFINITY ? M.slipZero : 0;
  const inside = Math.max(0, Math.min(high, scale.limit) - Math.max(low, scale.lowest)) / width;
  return Math.log(M.slipShare * Math.max(1e-6, open + zero + M.slipAnywhere * inside));
}

/** The highest log likelihood this reading could have under any prediction. */
export function bestLogLikelihood(mode: ColdMode, reading: Reading, meter: MeterSettings): number {
  const scale = scaleOf(mode, meter);
  if (readingInterval(mode, reading, scale, meter) !== null) return 0;
  const exact: MeterReading = {
    solved: true,
    raw: reading as number,
    shown: reading as number,
    centre: reading as number,
    spread: 0,
    common: 0,
    alike: 0,
    restsOn: [],
  };
  return logNormalDensity(0) - Math.log(scale.digits(exact));
}

function goodLog(
  mode: ColdMode,
  reading: Reading,
  mean: number,
  deviation: number,
  scale: Scale,
  meter: MeterSettings,
  prediction: MeterReading,
): number {
  const interval = readingInterval(mode, reading, scale, meter);
  if (mode === "farads") {
    const hidden = prediction.hiddenChance ?? (prediction.shown === "OL" ? 1 : 0);
    const seen = Math.log1p(-hidden) + seenLog(reading, interval, mean, deviation, scale);
    return reading === "OL" ? logAdd(Math.log(hidden), seen) : seen;
  }
  if (interval === null) return seenLog(reading, interval, mean, deviation, scale);
  const [low] = interval;
  if (mode === "diode" && reading === "OL" && low > M.lowLimitVolts)
    return Math.log(
      (1 - M.lowLimitShare) * normalTail((low - mean) / deviation) +
        M.lowLimitShare * normalTail((M.lowLimitVolts - mean) / deviation),
    );
  return seenLog(reading, interval, mean, deviation, scale);
}

/** Of a number its density, of a coarse answer the chance of its stretch. */
function seenLog(
  reading: Reading,
  interval: readonly [number, number] | null,
  mean: number,
  deviation: number,
  scale: Scale,
): number {
  if (interval === null)
    return logNormalDensity((scale.at(reading as number) - mean) / deviation) - Math.log(deviation);
  const [low, high] = interval;
  const above = low === Number.NEGATIVE_INFINITY ? 1 : normalTail((low - mean) / deviation);
  const beyond = high === Number.POSITIVE_INFINITY ? 0 : normalTail((high - mean) / deviation);
  return Math.log(Math.max(0, above - beyond));
}

/** The stretch of the scale that a coarse answer covers; null for a number. */
function readingInterval(
  mode: ColdMode,
  reading: Reading,
  scale: Scale,
  meter: MeterSettings,
): [number, number] | null {
  const bottom = Number.NEGATIVE_INFINITY;
  const top = Number.POSITIVE_INFINITY;
  if (typeof reading === "number") return null;
  switch (reading) {
    case "OL":
      return [scale.limit, top];
    case "beep":
      return [bottom, scale.at(meter.beepOhms)];
    case "silent":
      return [scale.at(meter.beepOhms), top];
    case "zero":
      return [bottom, scale.zero];
    case "junction":
      return [scale.zero, scale.high];
    case "high":
      return [scale.high, top];
  }
  throw new Error(`a ${mode} reading cannot be ${String(reading)}`);
}

function scaleOf(mode: ColdMode, meter: MeterSettings): Scale {
  if (mode === "diode") return diodeScale(meter);
  if (mode === "farads") return FARADS_SCALE;
  return OHMS_SCALE;
}

function diodeScale(meter: MeterSettings): Scale {
  return {
    at: (volts) => volts,
    parts: ownSpread,
    digits: (p) => Math.hypot(M.diodeVolts, M.diodeShare * p.raw),
    common: (p) => M.commonShared * p.common,
    zero: M.diodeZeroVolts,
    high: M.diodeHighVolts,
    limit: Math.min(meter.diodeMaxVolts, 0.95 * meter.diodeOpenVolts),
    lowest: -M.diodeZeroVolts,
  };
}

/** ln(ohms + contact): a dead short and the leads' own resistance are one reading. */
const lnOhms = (ohms: number): number => Math.log(Math.max(0, ohms) + M.contactOhms);

/** What a deviation in ohms is divided by to be one of `lnOhms`: the leads stand in the reading and in its scale. */
const steepOhms = ({ raw }: MeterReading): number => Math.max(0, raw) + OTHER_METERS.leadOhms + M.contactOhms;

const OHMS_SCALE: Scale = {
  at: lnOhms,
  parts: (p) => Math.hypot(ownSpread(p) / steepOhms(p), M.ohmsModelLn),
  digits: (p) => Math.hypot((0.5 * M.contactOhms) / steepOhms(p), M.ohmsShare),
  common: (p) => (M.commonShared * p.common) / steepOhms(p),
  zero: lnOhms(M.ohmsZero),
  high: lnOhms(M.ohmsHigh),
  limit: lnOhms(M.ohmsLimit),
  lowest: lnOhms(0),
};

const lnFarads = (farads: number): number => Math.log(Math.max(0, farads) + M.strayFarads);

const FARADS_SCALE: Scale = {
  at: lnFarads,
  parts: (p) => ownSpread(p) / (Math.max(0, p.raw) + M.strayFarads),
  digits: () => M.faradsShare,
  common: () => 0,
  zero: lnFarads(M.faradsZero),
  high: lnFarads(M.faradsHigh),
  limit: lnFarads(M.faradsLimit),
  lowest: lnFarads(0),
};

/**
 * The deviation of this reading alone, without the part shared with other readings; the width of a cell of the grid over that
 * part is its own (a cell of even chance has a deviation of its width over the root of 12).
 */
function ownSpread(prediction: MeterReading): number {
  const shared = M.commonShared * prediction.common;
  return Math.sqrt(Math.max(0, prediction.spread ** 2 - shared ** 2) + (COMMON_STEP * shared) ** 2 / 12);
}
