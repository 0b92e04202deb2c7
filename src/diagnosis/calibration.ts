/**
 * What is known of the unknown that all readings share (meter and room temperature): a standard normal, sharpened by every
 * `calibrate` event, the meter on a known part.
 */
import type { Timeline } from "../bench/timeline.ts";
import { logSumExp } from "../numeric/log-space.ts";
import { logNormalDensity } from "../numeric/normal.ts";
import { COMMON_POINTS, COMMON_WEIGHTS } from "./evidence.ts";

/** Common deviation of one junction reading, as a share of it, and what a calibration leaves open (from memory). */
const COMMON_SHARE = 0.05;
const LEFT_OPEN_SHARE = 0.02;

const UNCALIBRATED = normalised(Float64Array.from(COMMON_WEIGHTS, Math.log));

/** ln of the weight of each point of the common unknown; the same array where nothing was calibrated. */
export function commonLogWeights(timeline: Timeline): Float64Array {
  const log = UNCALIBRATED.slice();
  let calibrated = false;
  for (const { event } of timeline.entries) {
    if (event.do !== "calibrate" || event.mode !== "diode" || event.known === 0) continue;
    const deviation = (event.reading - event.known) / event.known;
    calibrated = true;
    COMMON_POINTS.forEach((point, z) => {
      log[z] += logNormalDensity((deviation - COMMON_SHARE * point) / LEFT_OPEN_SHARE);
    });
  }
  return calibrated ? normalised(log) : UNCALIBRATED;
}

function normalised(log: Float64Array): Float64Array {
  const total = logSumExp(log);
  return log.map((weight) => weight - total);
}
