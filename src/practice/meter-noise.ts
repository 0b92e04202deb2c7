import type { ColdMode, Reading } from "../bench/event.ts";
import type { MeterReading } from "../meter/prediction.ts";
import { rangesOf } from "../meter/ranges.ts";
import type { MeterSettings } from "../meter/settings.ts";
import { METER_SPREAD } from "../meter/spread.ts";
import { normalDeviate, type Random } from "./seeded-random.ts";

/** Below this a deviation is no share of the reading: contact (ohms), stray capacitance (farads). */
const LEAST_RAW = {
  ohms: METER_SPREAD.contactOhms,
  continuity: METER_SPREAD.contactOhms,
  farads: METER_SPREAD.strayFarads,
} as const;

/** Digits of a common 6000-count meter. */
function toDigits(value: number, mode: ColdMode): number {
  if (mode === "diode") return Number(value.toFixed(3));
  if (mode === "farads") return Number(value.toPrecision(3));
  return value < 600 ? Number(value.toFixed(1)) : Number(value.toPrecision(4));
}

/**
 * A reading as this practice meter would show it: the prediction, the error it shares with all readings of the job (`meterError`,
 * a standard normal deviate) and its own part of the spread, cut to the meter's digits and limits.
 */
export function noisyReading(
  mode: ColdMode,
  prediction: MeterReading,
  meter: MeterSettings,
  meterError: number,
  random: Random,
): Reading {
  if (!Number.isFinite(prediction.raw)) return mode === "continuity" ? "silent" : "OL";
  const own = Math.sqrt(Math.max(0, prediction.spread ** 2 - prediction.common ** 2));
  const shift = prediction.common * meterError + own * normalDeviate(random);
  const value =
    mode === "diode"
      ? Math.max(0, prediction.centre + shift)
      : prediction.centre * Math.exp(shift / Math.max(prediction.raw, LEAST_RAW[mode]));
  const limit = rangesOf(mode, meter).at(-1)?.limit ?? Number.POSITIVE_INFINITY;
  if (mode === "continuity") return value < meter.beepOhms ? "beep" : "silent";
  if (mode === "diode") {
    return value > limit ? "OL" : toDigits(value, mode);
  }
  if (prediction.shown === "OL") return "OL";
  return mode === "ohms" && value > limit ? "OL" : toDigits(value, mode);
}
