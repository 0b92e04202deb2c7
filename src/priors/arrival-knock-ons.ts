/**
 * What followed a first fault before the board came in speaks through the customer's words as well. A shorted switch that had taken its partner,
 * or the fuse, would have left a dead board: a drive that is said to be alive has lost neither, and so its switch is likelier whole. Bayes'
 * rule on each fault and what it knocks on: the first failure loses the share of its courses that the words rule out, and what
 * may have followed is weighed by the words too.
 */
import type { Board } from "../board/board.ts";
import type { Symptom } from "./cause.ts";
import type { FaultPrior, KnockOn } from "./fault-prior.ts";
import { boardEffect } from "./power-effects.ts";
import { comesInAs } from "./symptom-effects.ts";

/** A knock-on as the circuit has it, whatever the customer says. */
export type PhysicalKnockOn = Omit<KnockOn, "arrivalRate">;

export interface Arrived {
  /** per fault, the share of its courses that the words leave; 1 where nothing that follows would have shown first */
  readonly left: Float64Array;
  readonly knockOns: readonly KnockOn[];
}

/**
 * @param faults - the rows that the knock-ons index; their own rates are weighed by the words already
 * @returns the knock-ons in their order, each with its rate on a board that came in with these words
 */
export function arrived(
  board: Board,
  symptom: Symptom,
  faults: readonly FaultPrior[],
  knockOns: readonly PhysicalKnockOn[],
): Arrived {
  const alone = new Map<number, number>();
  const shown = (fault: number): number => {
    const known = alone.get(fault) ?? comesInAs(boardEffect(board, [faults[fault].fault]), symptom);
    alone.set(fault, known);
    return known;
  };
  const against = knockOns.map(({ parent, child }) => {
    const both = boardEffect(board, [faults[parent].fault, faults[child].fault]);
    // What makes the words likelier is weighed where the whole board has to account for them.
    return Math.min(1, comesInAs(both, symptom) / shown(parent));
  });
  // one junction fails once: what a fault does to it is one course, by whichever level
  const courses = new Map<string, { rate: number; told: number }>();
  const keys = knockOns.map(({ parent, child }) => `${parent} ${faults[child].site}`);
  knockOns.forEach(({ rate }, k) => {
    const sum = courses.get(keys[k]) ?? { rate: 0, told: 0 };
    courses.set(keys[k], { rate: sum.rate + rate, told: sum.told + rate * against[k] });
  });
  const left = new Float64Array(faults.length).fill(1);
  const scale = new Map<string, number>();
  const parents = new Map(knockOns.map(({ parent }, k) => [keys[k], parent]));
  for (const [key, { rate, told }] of courses) {
    const followed = -Math.expm1(-rate);
    const stays = 1 - followed * (1 - told / rate);
    left[parents.get(key) ?? 0] *= stays;
    const given = (followed * told) / rate / stays;
    scale.set(key, told > 0 ? -Math.log1p(-given) / told : 0);
  }
  return {
    left,
    knockOns: knockOns.map((knock, k) => ({
      ...knock,
      arrivalRate: knock.rate * against[k] * (scale.get(keys[k]) ?? 1),
    })),
  };
}
