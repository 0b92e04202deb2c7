/** One oracle board against the engine's bands, reading by reading. */

import type { BenchState } from "../../src/bench/bench-state.ts";
import type { Reading } from "../../src/bench/event.ts";
import { foldLog } from "../../src/bench/fold.ts";
import type { Board } from "../../src/board/board.ts";
import { commonLogWeights } from "../../src/diagnosis/calibration.ts";
import { COMMON_POINTS } from "../../src/diagnosis/evidence.ts";
import { onScale } from "../../src/diagnosis/reading-model.ts";
import { predictorsAfter } from "../../src/job/predictor-of-job.ts";
import type { ColdCheck } from "../../src/meter/prediction.ts";
import { DEFAULT_METER } from "../../src/meter/settings.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { CAUSES } from "../../src/priors/cause.ts";
import { priorTable } from "../../src/priors/prior-table.ts";
import { drawChecks } from "./check-draw.ts";
import { type Band, bandOf, rowsFor } from "./engine-band.ts";
import { runChecks } from "./meter-run.ts";
import { type OracleBoard, oracleBoard } from "./oracle-board.ts";
import { calibration, shown } from "./oracle-meter.ts";

/** Kinds of check that are judged by themselves. */
export const KINDS = [
  "diode junction",
  "diode low",
  "ohms low",
  "ohms middle",
  "ohms high",
  "farads",
] as const;
export type CheckKind = (typeof KINDS)[number];

/** Where a low reading ends, and a middle one (volts, ohms). */
const EDGES = { diodeLow: 0.1, ohmsLow: 10, ohmsMiddle: 20_000 } as const;

export interface Predicted {
  readonly check: ColdCheck;
  readonly reading: Reading;
  readonly band: Band;
  /** null where the reading is no number */
  readonly kind: CheckKind | null;
  /** deviations from the centre of the band; null where the reading is no number */
  readonly off: number | null;
  /** the same after the meter was calibrated on a known diode */
  readonly calibratedOff: number | null;
  /** is the board as its file says? */
  readonly fileTrue: boolean;
  readonly boardId: string;
  readonly seed: number;
  readonly faults: number;
  /** kinds of the parts between the two places */
  readonly between: readonly string[];
}

export function kindOf(check: ColdCheck, reading: Reading): CheckKind | null {
  if (typeof reading !== "number") return null;
  if (check.mode === "diode") return reading < EDGES.diodeLow ? "diode low" : "diode junction";
  if (check.mode === "farads") return "farads";
  return reading < EDGES.ohmsLow ? "ohms low" : reading < EDGES.ohmsMiddle ? "ohms middle" : "ohms high";
}

function kindsBetween(file: Board, { red, black }: ColdCheck): readonly string[] {
  return [
    ...new Set(
      [...file.parts.values()]
        .filter((part) => [red, black].every((net) => [...part.pins.values()].includes(net)))
        .map((part) => part.kind),
    ),
  ].sort();
}

/** Drop of the diode that is kept for calibrating, volts. */
const KNOWN_DIODE = 0.58;

/** What this board's meter shows on that diode. */
function knownReading({ meter, room }: OracleBoard): number {
  return calibration(meter, "diode", KNOWN_DIODE, room.celsius);
}

/** What a calibration on a known diode tells of the common unknown: its mean and deviation. */
function knownCommon(file: Board, oracle: OracleBoard): { mean: number; deviation: number } {
  const calibrate = {
    do: "calibrate",
    mode: "diode",
    known: KNOWN_DIODE,
    reading: knownReading(oracle),
  } as const;
  const folded = foldLog(file, [], [calibrate]);
  if (!folded.ok) throw new Error(folded.problem);
  const weights = commonLogWeights(folded.value);
  const moment = (of: (z: number) => number): number =>
    COMMON_POINTS.reduce((sum, z, at) => sum + of(z) * Math.exp(weights[at] ?? Number.NEGATIVE_INFINITY), 0);
  const mean = moment((z) => z);
  return { mean, deviation: Math.sqrt(Math.max(0, moment((z) => z * z) - mean * mean)) };
}

function calibrated(scaled: number, band: Band, known: { mean: number; deviation: number }): number {
  const shift = Math.sign(band.prediction.common) * band.shared * known.mean;
  return (scaled - shift) / Math.hypot(band.own, band.shared * known.deviation);
}

/** Draws the board of this seed, asks both sides, and sets each reading beside the engine's band. */
export async function predictBoard(
  file: Board,
  boardId: string,
  seed: number,
  count: number,
  bench: BenchState,
): Promise<{ readonly rows: readonly Predicted[]; readonly missing: number }> {
  const cause = CAUSES[seed % CAUSES.length] ?? "unknown";
  const oracle = oracleBoard(file, cause, seed);
  const checks = drawChecks(file, count, seededRandom(seed, "checks"));
  const on = {
    board: oracle.board,
    file,
    room: oracle.room,
    bench,
    faults: oracle.faults,
    generations: new Map<string, number>(),
    leaks: oracle.leaks,
  };
  const seen = await runChecks(on, oracle.meter, checks);
  const predictor = predictorsAfter(cause)(file, bench, DEFAULT_METER);
  const priors = rowsFor(file, priorTable(file, cause, oracle.symptom).faults, oracle.faults);
  const known = knownCommon(file, oracle);
  const rows: Predicted[] = [];
  for (const [index, check] of checks.entries()) {
    const one = seen[index];
    const band = bandOf(check, priors, predictor);
    if (one === undefined || one === null || band === null) continue;
    const random = seededRandom(seed, `noise ${check.mode} ${check.red} ${check.black}`);
    const reading = shown(oracle.meter, check.mode, one, random);
    const kind = kindOf(check, reading);
    const number = typeof reading === "number" ? reading : null;
    const scaled = number === null ? null : onScale(check.mode, number, DEFAULT_METER) - band.mean;
    const off = scaled === null ? null : scaled / band.deviation;
    const calibratedOff = scaled === null ? null : calibrated(scaled, band, known);
    rows.push({
      ...{ check, reading, band, kind, off, calibratedOff, boardId, seed },
      fileTrue: oracle.differences.length === 0,
      faults: oracle.faults.length,
      between: kindsBetween(file, check),
    });
  }
  return { rows, missing: checks.length - rows.length };
}
