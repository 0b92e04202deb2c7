/**
 * What the engine would expect of a reading if it knew the true faults: the prior row next to each of them, its prediction, and
 * the spread that its likelihood works with, read back from that likelihood itself.
 */
import type { Board } from "../../src/board/board.ts";
import type { Fault } from "../../src/board/fault.ts";
import { COMMON_POINTS } from "../../src/diagnosis/evidence.ts";
import {
  onScale,
  READING_MODEL,
  readingLogLikelihood,
  slipLogLikelihood,
} from "../../src/diagnosis/reading-model.ts";
import type { ColdCheck, MeterReading, Predictor } from "../../src/meter/prediction.ts";
import { rangesOf } from "../../src/meter/ranges.ts";
import { normalTail } from "../../src/numeric/normal.ts";
import type { FaultPrior } from "../../src/priors/fault-prior.ts";
import { siteKey } from "./oracle-cascades.ts";

/** Nominal ohms of a level that names none (board file format). */
const NOMINAL: Readonly<Record<string, number>> = { short: 0.2, leaky: 1000 };
/** In diode mode the spread of a dead short is not asked for: the engine's own rule. */
const DEAD_SHORT_OHMS = 1;

/** How far a level of the table lies from the true value, in its own deviations. */
function distance(board: Board, prior: FaultPrior, truth: Fault): number {
  const nominal = prior.fault.value ?? nominalOf(board, prior.fault);
  if (truth.value === null || nominal === null || prior.spreadLn === 0) return 0;
  return Math.abs(Math.log(truth.value / nominal)) / prior.spreadLn + Math.log(prior.spreadLn);
}

function nominalOf(board: Board, fault: Fault): number | null {
  if (fault.of === "nets") return NOMINAL.leaky ?? null;
  const part = board.parts.get(fault.part);
  if (fault.mode === "leaky" && (part?.kind === "fuse" || part?.kind === "link")) return 30;
  if (fault.mode !== "drift") return NOMINAL[fault.mode] ?? null;
  const { ohms, farads } = part?.value ?? {};
  if (farads !== undefined) return farads / 2;
  return ohms === undefined ? null : 2 * ohms;
}

/** The row of the prior table that stands for each true fault; those the table has none for are given as they are. */
export function rowsFor(
  board: Board,
  priors: readonly FaultPrior[],
  faults: readonly Fault[],
): readonly FaultPrior[] {
  return faults.map((truth) => {
    const key = siteKey(truth);
    const rows = priors.filter(({ fault }) => siteKey(fault) === key && fault.mode === truth.mode);
    const nearest = rows.sort((a, b) => distance(board, a, truth) - distance(board, b, truth))[0];
    return nearest ?? { fault: truth, reportAs: key, part: key, site: key, rate: 0, spreadLn: 0 };
  });
}

/** The engine's expectation of one reading on its own scale (volts; ln ohms; ln farads). */
export interface Band {
  readonly prediction: MeterReading;
  readonly mean: number;
  /** deviation of this reading alone, and what it shares with all others */
  readonly own: number;
  readonly shared: number;
  readonly deviation: number;
  /** deviation by the unknown resistance of the faults, a part of `own` */
  readonly byFaults: number;
  /** chance of OL, or of a beep in continuity */
  readonly chance: number;
}

function faultDeviation(
  check: ColdCheck,
  rows: readonly FaultPrior[],
  predictor: Predictor,
  prediction: MeterReading,
): number {
  const here = onScale(check.mode, prediction.raw, predictor.meter);
  const faults = rows.map(({ fault }) => fault);
  let square = 0;
  for (const [at, { fault, spreadLn }] of rows.entries()) {
    const nominal = fault.value ?? NOMINAL[fault.mode];
    if (spreadLn === 0 || nominal === undefined || fault.mode === "drift" || fault.mode === "open") continue;
    if (check.mode === "diode" && nominal <= DEAD_SHORT_OHMS) continue;
    const higher = predictor.rawWith(check, faults, at, nominal * Math.exp(spreadLn));
    if (higher !== null) square += (onScale(check.mode, higher, predictor.meter) - here) ** 2;
  }
  return Math.sqrt(square);
}

/** The band for one check, or null where the engine has no prediction. */
export function bandOf(check: ColdCheck, rows: readonly FaultPrior[], predictor: Predictor): Band | null {
  const { meter } = predictor;
  const mattering = new Set(
    predictor.matters(
      check,
      rows.map(({ fault }) => fault),
    ),
  );
  const heard = rows.filter(({ fault }) => mattering.has(fault));
  const prediction = predictor.predict(
    check,
    heard.map(({ fault }) => fault),
  );
  if (!prediction.solved) return null;
  const byFaults = faultDeviation(check, heard, predictor, prediction);
  const mean = onScale(check.mode, prediction.centre, meter);
  // the likelihood asked at its own centre gives its deviation; asked there at another common unknown, what is shared
  const numeric: MeterReading = { ...prediction, shown: prediction.raw };
  const vector = readingLogLikelihood(check.mode, [prediction.centre], numeric, meter, byFaults);
  const slip = slipLogLikelihood(check.mode, prediction.centre, meter);
  const good = (z: number): number => Math.exp(vector[z] ?? Number.NEGATIVE_INFINITY) - Math.exp(slip);
  const middle = COMMON_POINTS.indexOf(0);
  const own = (1 - READING_MODEL.slipShare) / (good(middle) * Math.sqrt(2 * Math.PI));
  const step = COMMON_POINTS[middle + 1] ?? 1;
  const fall = Math.log(good(middle) / Math.max(good(middle + 1), 1e-300));
  const shared = (own * Math.sqrt(Math.max(0, 2 * fall))) / step;
  const deviation = Math.hypot(own, shared);
  const limit = check.mode === "continuity" ? meter.beepOhms : rangesOf(check.mode, meter).at(-1)?.limit;
  const above = limit === undefined ? 0 : normalTail((onScale(check.mode, limit, meter) - mean) / deviation);
  return { prediction, mean, own, shared, deviation, byFaults, chance: chanceOf(check, prediction, above) };
}

function chanceOf(check: ColdCheck, prediction: MeterReading, above: number): number {
  if (check.mode === "continuity") return 1 - above;
  return check.mode === "farads" ? (prediction.hiddenChance ?? 0) : above;
}
