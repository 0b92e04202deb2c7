/** One oracle board against the engine's bands, reading by reading. */
import type { BenchState } from "../../src/bench/bench-state.ts";
import type { Reading } from "../../src/bench/event.ts";
import type { Board } from "../../src/board/board.ts";
import { onScale } from "../../src/diagnosis/reading-model.ts";
import type { ColdCheck } from "../../src/meter/prediction.ts";
import { makePredictor } from "../../src/meter/predictor.ts";
import { DEFAULT_METER } from "../../src/meter/settings.ts";
import { seededRandom } from "../../src/practice/seeded-random.ts";
import { CAUSES } from "../../src/priors/cause.ts";
import { priorTable } from "../../src/priors/prior-table.ts";
import { drawChecks } from "./check-draw.ts";
import { type Band, bandOf, rowsFor } from "./engine-band.ts";
import { runChecks } from "./meter-run.ts";
import { oracleBoard } from "./oracle-board.ts";
import { shown } from "./oracle-meter.ts";

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
  const predictor = makePredictor(file, bench, DEFAULT_METER);
  const priors = rowsFor(file, priorTable(file, cause, oracle.symptom).faults, oracle.faults);
  const rows: Predicted[] = [];
  for (const [index, check] of checks.entries()) {
    const one = seen[index];
    const band = bandOf(check, priors, predictor);
    if (one === undefined || one === null || band === null) continue;
    const random = seededRandom(seed, `noise ${check.mode} ${check.red} ${check.black}`);
    const reading = shown(oracle.meter, check.mode, one, random);
    const kind = kindOf(check, reading);
    const off =
      typeof reading === "number"
        ? (onScale(check.mode, reading, DEFAULT_METER) - band.mean) / band.deviation
        : null;
    rows.push({
      ...{ check, reading, band, kind, off, boardId, seed },
      fileTrue: oracle.differences.length === 0,
      faults: oracle.faults.length,
      between: kindsBetween(file, check),
    });
  }
  return { rows, missing: checks.length - rows.length };
}
