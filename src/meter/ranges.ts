/** The meter's sources and limits, as the job file format defines them: at 25 degC, leads of 0 ohm. */
import type { ColdMode } from "../bench/event.ts";
import type { MeterSettings } from "./settings.ts";

/** A source of `openVolts` behind `ohms`; the reading fits up to `limit` (volts in diode mode, else ohms). */
export interface Range {
  readonly reads: "volts" | "ohms";
  readonly openVolts: number;
  readonly ohms: number;
  readonly limit: number;
}

/** [source ohms, highest reading in ohms], tried in this order (board file format). */
const OHMS_RANGES: readonly (readonly [number, number])[] = [
  [900, 600],
  [2e3, 6e3],
  [12e3, 60e3],
  [120e3, 600e3],
  [1.2e6, 6e6],
  [8e6, 60e6],
];
/** Share of its open voltage above which a meter in diode mode shows OL. */
const DIODE_OPEN_SHARE = 0.95;
/** Farads are measured at this frequency; below this many settled ohms the meter shows OL. */
export const FARADS_HERTZ = 100;
export const FARADS_LEAST_OHMS = 1000;

/** Where real meters stop showing a capacitance for the ohms beside it, one here, another there (from memory). */
const FARADS_STOP_OHMS = { first: 300, last: 3000 } as const;

/** The chance that a meter of unknown make shows OL in farads with so many settled ohms beside the capacitance. */
export function faradsHiddenBy(ohms: number): number {
  const { first, last } = FARADS_STOP_OHMS;
  if (ohms <= first) return 1;
  return ohms >= last ? 0 : Math.log(last / ohms) / Math.log(last / first);
}

const known = new WeakMap<MeterSettings, Map<ColdMode, readonly Range[]>>();

/**
 * The ranges of a mode in the order in which the meter tries them; the same objects for the same meter. Farads are judged by
 * the settled ohms first.
 */
export function rangesOf(mode: ColdMode, meter: MeterSettings): readonly Range[] {
  const ofMeter = known.get(meter) ?? new Map<ColdMode, readonly Range[]>();
  known.set(meter, ofMeter);
  const ranges = ofMeter.get(mode) ?? makeRanges(mode, meter);
  ofMeter.set(mode, ranges);
  return ranges;
}

function makeRanges(mode: ColdMode, meter: MeterSettings): readonly Range[] {
  if (mode === "diode") {
    const limit = Math.min(meter.diodeMaxVolts, DIODE_OPEN_SHARE * meter.diodeOpenVolts);
    return [
      {
        reads: "volts",
        openVolts: meter.diodeOpenVolts,
        ohms: meter.diodeOpenVolts / meter.diodeShortAmps,
        limit,
      },
    ];
  }
  const ranges = OHMS_RANGES.map(([ohms, limit]) => ({
    reads: "ohms" as const,
    openVolts: meter.ohmsOpenVolts,
    ohms,
    limit,
  }));
  return mode === "continuity" ? ranges.slice(0, 1) : ranges;
}

/** A reading beyond this is no number a meter could mean. */
const MOST_OHMS = 1e15;

/** Ohms that `volts` at the probes stand for: volts over amps. */
export function ohmsAt(range: Range, volts: number): number {
  const dropped = range.openVolts - volts;
  return dropped <= 0 ? MOST_OHMS : Math.min((volts * range.ohms) / dropped, MOST_OHMS);
}

/** Volts at the probes at which `ohmsAt` is `ohms`. */
export function voltsAt(range: Range, ohms: number): number {
  if (ohms === Number.POSITIVE_INFINITY) return range.openVolts;
  return (range.openVolts * ohms) / (ohms + range.ohms);
}

/** How `ohmsAt` moves with the volts at the probes. */
export function ohmsPerVolt(range: Range, volts: number): number {
  const dropped = Math.max(range.openVolts - volts, 1e-9 * range.openVolts);
  return (range.ohms * range.openVolts) / dropped ** 2;
}

/** The quantity that is compared with `limit` and reported as `raw`. */
export function rawAt(mode: ColdMode, range: Range, volts: number): number {
  return mode === "diode" ? volts : ohmsAt(range, volts);
}
