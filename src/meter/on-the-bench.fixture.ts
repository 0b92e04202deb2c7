/** A bare bench and short ways to ask a board what a meter shows, for tests. */
import type { BenchState } from "../bench/bench-state.ts";
import type { ColdMode } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFaultList } from "../board/parse-fault.ts";
import type { MeterReading } from "./prediction.ts";
import { makePredictor } from "./predictor.ts";
import { DEFAULT_METER } from "./settings.ts";

export const BARE: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };

/** A board of the given parts; throws where it would not be one. */
export function boardOf(
  parts: Record<string, object>,
  [zero, other]: readonly [string, string],
  more: object = {},
): Board {
  const board = parseBoard({
    format: "faultwright-board/1",
    name: "test piece",
    family: "test",
    supply: { kind: "dc", volts: 12, at: [other, zero] },
    zero,
    nets: { [zero]: {} },
    parts,
    ...more,
  });
  if (!board.ok) throw new Error(board.problem);
  return board.value;
}

export function faultsOf(text: string, board: Board): readonly Fault[] {
  const faults = parseFaultList(text, board);
  if (!faults.ok) throw new Error(faults.problem);
  return faults.value;
}

export interface Asking {
  (mode: ColdMode, red: string, black: string, faults?: string): MeterReading["shown"];
  whole(mode: ColdMode, red: string, black: string, faults?: string, seconds?: number): MeterReading;
}

/** Asks one board on one bench; throws where a solve fails. */
export function asking(board: Board, bench: BenchState = BARE): Asking {
  const predictor = makePredictor(board, bench, DEFAULT_METER);
  const whole = (mode: ColdMode, red: string, black: string, faults = "", seconds?: number): MeterReading => {
    const check = seconds === undefined ? { mode, red, black } : { mode, red, black, seconds };
    const reading = predictor.predict(check, faultsOf(faults, board));
    if (!reading.solved) throw new Error(reading.why);
    return reading;
  };
  return Object.assign(
    (mode: ColdMode, red: string, black: string, faults = "") => whole(mode, red, black, faults).shown,
    {
      whole,
    },
  );
}

/** Is it a number in the band? */
export function within(shown: MeterReading["shown"], low: number, high: number): boolean {
  return typeof shown === "number" && shown >= low && shown <= high;
}
