/**
 * The oracle's meters: a current source with compliance for diodes, ohms by reference resistor or by current, other ranges and
 * limits than the job's default, leads, offsets and noise. One is drawn a board; the engine is never told which.
 */
import type { ColdMode, Reading } from "../../src/bench/event.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { logUniform, pick, type Range, sortedNormal, uniform } from "./draw.ts";

/** One range in ohms: a source of `volts` behind `ohms`, or a current with `volts` of compliance. */
export interface OhmsRange {
  readonly limit: number;
  readonly volts: number;
  readonly ohms: number | null;
  readonly amps: number | null;
}

export interface OracleMeter {
  readonly diodeAmps: number;
  readonly complianceVolts: number;
  /** the display's end in diode mode */
  readonly diodeLimit: number;
  readonly diodeGain: number;
  readonly ohms: readonly OhmsRange[];
  readonly ohmsGain: number;
  readonly leadOhms: number;
  readonly beepOhms: number;
  readonly faradsHertz: number;
  readonly faradsGain: number;
  /** below this many ohms beside it no capacitance is shown */
  readonly faradsLeastOhms: number;
  readonly faradsLimit: number;
  /** counts of the display, and of noise on the last digit */
  readonly counts: number;
  readonly noiseCounts: number;
}

/** Spreads of common hand-held meters. From memory, but for the ranges that the tests of this file name. */
export const METER_SPREADS = {
  diodeAmps: [0.4e-3, 1.5e-3],
  complianceVolts: [2.5, 3.3],
  diodeLimits: [1.5, 2, 2, 3],
  diodeGainSigma: 0.005,
  ohmsVolts: [0.3, 0.9],
  currentVolts: [0.2, 0.5],
  /** share of meters that measure ohms by a current */
  byCurrent: 0.4,
  ohmsGainSigma: 0.004,
  leadOhms: [0.1, 0.5],
  beepOhms: [30, 70],
  counts: [2000, 4000, 6000, 6000],
  noiseCounts: [0.3, 2],
  faradsHertz: [80, 400],
  faradsGainSigma: 0.012,
  faradsLeastOhms: [400, 2500],
  faradsLimits: [0.002, 0.006, 0.06],
  mark: "from memory",
} as const;

const M = METER_SPREADS;
/** Decades of ohms that a range's reference resistor stands above a kilo-ohm. */
const RANGES = 6;

/** The meter of the board with this seed. */
export function drawMeter(seed: number): OracleMeter {
  const random = seededRandom(seed, "meter");
  const counts = pick(random, M.counts) ?? 6000;
  const compliance = uniform(random, M.complianceVolts);
  const limit = pick(random, M.diodeLimits) ?? 2;
  return {
    diodeAmps: uniform(random, M.diodeAmps),
    complianceVolts: compliance,
    diodeLimit: Math.min(limit, 0.93 * compliance),
    diodeGain: 1 + M.diodeGainSigma * sortedNormal(random),
    ohms: drawOhms(random, counts),
    ohmsGain: 1 + M.ohmsGainSigma * sortedNormal(random),
    leadOhms: logUniform(random, M.leadOhms),
    beepOhms: uniform(random, M.beepOhms),
    faradsHertz: logUniform(random, M.faradsHertz),
    faradsGain: 1 + M.faradsGainSigma * sortedNormal(random),
    faradsLeastOhms: logUniform(random, M.faradsLeastOhms),
    faradsLimit: pick(random, M.faradsLimits) ?? 0.006,
    counts,
    noiseCounts: logUniform(random, M.noiseCounts),
  };
}

function drawOhms(random: () => number, counts: number): readonly OhmsRange[] {
  const byCurrent = random() < M.byCurrent;
  const volts = logUniform(random, byCurrent ? M.currentVolts : M.ohmsVolts);
  return Array.from({ length: RANGES }, (_, decade) => {
    const limit = (counts / 10) * 10 ** decade;
    if (byCurrent) return { limit, volts: 2.5 * volts, ohms: null, amps: volts / limit };
    return { limit, volts, ohms: 1000 * 10 ** decade, amps: null };
  });
}

/** Capacitance of the leads. */
const LEAD_FARADS: Range = [5e-12, 4e-11];

/** Digits and noise of one display. */
function digits(value: number, limit: number, meter: OracleMeter, random: () => number): number {
  const step = limit / meter.counts;
  const noisy = value + step * meter.noiseCounts * (2 * random() - 1);
  return Math.max(0, Number((Math.round(noisy / step) * step).toPrecision(6)));
}

/** Volts, ohms or farads before the display; ohms with the index of the range that fitted, -1 where none did. */
export interface Seen {
  readonly value: number;
  readonly range: number;
}

/** What the display shows. `random` is the noise of this one reading. */
export function shown(meter: OracleMeter, mode: ColdMode, seen: Seen, random: () => number): Reading {
  const { value, range } = seen;
  if (mode === "diode") {
    const volts = value * meter.diodeGain;
    return volts > meter.diodeLimit ? "OL" : digits(volts, meter.counts / 1000, meter, random);
  }
  if (mode === "continuity") return value * meter.ohmsGain < meter.beepOhms ? "beep" : "silent";
  if (mode === "ohms") {
    const row = meter.ohms[range];
    return row === undefined ? "OL" : digits(value * meter.ohmsGain, row.limit, meter, random);
  }
  if (range < 0) return "OL";
  const farads = value * meter.faradsGain + logUniform(random, LEAD_FARADS);
  const limit =
    (meter.counts / 1e12) * 10 ** Math.max(0, Math.ceil(Math.log10((farads * 1e12) / meter.counts)));
  return farads > meter.faradsLimit || farads <= 0 ? "OL" : digits(farads, limit, meter, random);
}

/** Emission of the silicon diode kept for calibrating, and what its drop loses a kelvin. From memory. */
const KNOWN_DIODE = {
  emissionVolts: 0.04,
  voltsPerKelvin: -0.0021,
  knownAmps: 1e-3,
  knownCelsius: 25,
} as const;

/**
 * What this meter shows on a known part: a diode whose drop at 1 mA and 25 degC is `known` volts, or a resistor of `known` ohms.
 */
export function calibration(
  meter: OracleMeter,
  mode: "diode" | "ohms",
  known: number,
  celsius: number,
): number {
  if (mode === "ohms") return Number((known * meter.ohmsGain + meter.leadOhms).toPrecision(4));
  const K = KNOWN_DIODE;
  const volts =
    known +
    K.emissionVolts * Math.log(meter.diodeAmps / K.knownAmps) +
    K.voltsPerKelvin * (celsius - K.knownCelsius);
  return Number((volts * meter.diodeGain).toFixed(3));
}
