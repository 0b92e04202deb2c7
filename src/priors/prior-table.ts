import type { Board } from "../board/board.ts";
import { arrived } from "./arrival-knock-ons.ts";
import type { Cause, Symptom } from "./cause.ts";
import type { PriorTable } from "./fault-prior.ts";
import { ROOT_FAULTS } from "./kind-rates.ts";
import { knockOnsOf } from "./knock-ons.ts";
import { priorRows } from "./prior-rows.ts";
import { NOTHING_TOLD, type Told } from "./told.ts";

/** Faults that one full-mains power-up adds to a board with nothing else wrong. `from memory`. */
export const POWER_UP_FAULTS = 0.02;

/** Where the chances below come from. */
export const FITTED_BAD_MARK = "from memory";

/** Chance that a fitted part is bad. `from memory`; replaced by what the shop has counted. */
export const FITTED_BAD = { new: 0.01, used: 0.1, fittedWrong: 0.02 } as const;

/**
 * All that is believed of a board before the first reading: every fault mode of every part and of neighbouring nets with its
 * rate, scaled so that a board holds 1.3 root faults on average before knock-ons, and the knock-ons. The same
 * board, cause, symptom and answers give the same table, row for row.
 */
export function priorTable(
  board: Board,
  cause: Cause,
  symptom: Symptom,
  told: Told = NOTHING_TOLD,
): PriorTable {
  const rows = priorRows(board, cause, symptom, told);
  const { left, knockOns } = arrived(board, symptom, rows, knockOnsOf(board, rows));
  const weights = rows.map(({ rate }, index) => rate * left[index]);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const scale = total > 0 ? ROOT_FAULTS / total : 0;
  const faults = rows.map((row, index) => ({ ...row, rate: weights[index] * scale }));
  return {
    faults,
    knockOns,
    breaksAtPower: faults.map((row) => (row.rate * POWER_UP_FAULTS) / ROOT_FAULTS),
    fittedBad: FITTED_BAD,
  };
}
