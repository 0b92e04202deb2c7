/** Small cases for the comparison with enumeration: forty faults of a shipped board, up to three of them present, eight readings. */
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Timeline } from "../src/bench/timeline.ts";
import type { Board } from "../src/board/board.ts";
import { faultName } from "../src/board/fault.ts";
import type { Predictor } from "../src/meter/prediction.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { noisyReading } from "../src/practice/meter-noise.ts";
import { drawOne, normalDeviate, type Random, seededRandom } from "../src/practice/seeded-random.ts";
import type { PriorTable } from "../src/priors/fault-prior.ts";
import { sweepChecks } from "./sweep-checks.ts";

export const FAULTS = 40;
const READINGS = 8;
const MOST_PRESENT = 3;
const NO_BENCH = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

export interface ExactCase {
  readonly board: Board;
  readonly table: PriorTable;
  readonly predictor: Predictor;
  readonly timeline: Timeline;
  /** what is wrong, by name */
  readonly hidden: readonly string[];
}

/** Eight noisy readings, drawn from the twelve of the sweep, of a board with one to three of forty faults. */
export function drawCase(board: Board, whole: PriorTable, seed: number, faults = FAULTS): ExactCase {
  const random = seededRandom(seed, "exact");
  const table = someOf(whole, faults, random);
  const hidden = hide(table, random).map((row) => table.faults[row].fault);
  const predictor = makePredictor(board, NO_BENCH, DEFAULT_METER);
  const meterError = normalDeviate(random);
  const log = someChecks(board, random).flatMap(({ mode, red, black }): JobEvent[] => {
    const predicted = predictor.predict({ mode, red, black }, hidden);
    if (!predicted.solved) return [];
    const reading = noisyReading(mode, predicted, DEFAULT_METER, meterError, random);
    return [{ do: "measure", mode, red, black, reading }];
  });
  const timeline = foldLog(board, [], log);
  if (!timeline.ok) throw new Error(timeline.problem);
  return { board, table, predictor, timeline: timeline.value, hidden: hidden.map(faultName) };
}

function someChecks(board: Board, random: Random) {
  const checks = [...sweepChecks(board)];
  while (checks.length > READINGS) checks.splice(Math.floor(random() * checks.length), 1);
  return checks;
}

/** Rows of a table by their rates, none twice; `excludes` names what else goes with a row drawn. */
function drawRows(
  table: PriorTable,
  count: number,
  random: Random,
  excludes: (drawn: number, other: number) => boolean,
): number[] {
  const weights = table.faults.map(({ rate }) => rate);
  const all = weights.map((_, row) => row);
  const rows: number[] = [];
  while (rows.length < count) {
    const row = drawOne(all, weights, random);
    if (row === null) break;
    rows.push(row);
    for (const other of all) if (other === row || excludes(row, other)) weights[other] = 0;
  }
  return rows;
}

/** So many rows of the table, and the knock-ons among them. */
function someOf(table: PriorTable, count: number, random: Random): PriorTable {
  const rows = drawRows(table, count, random, () => false).sort((a, b) => a - b);
  const place = new Map(rows.map((row, at) => [row, at]));
  const knockOns = table.knockOns.flatMap((knock) => {
    const [parent, child] = [place.get(knock.parent), place.get(knock.child)];
    return parent === undefined || child === undefined ? [] : [{ ...knock, parent, child }];
  });
  const pick = <T>(list: readonly T[]) => rows.map((row) => list[row]);
  return { ...table, faults: pick(table.faults), breaksAtPower: pick(table.breaksAtPower), knockOns };
}

function hide(table: PriorTable, random: Random): readonly number[] {
  const count = 1 + Math.floor(MOST_PRESENT * random());
  const site = (row: number) => table.faults[row].site;
  return drawRows(table, count, random, (drawn, other) => site(drawn) === site(other));
}
