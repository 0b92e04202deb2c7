import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { Symptom } from "./cause.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { type PowerEffect, powerEffect } from "./power-effects.ts";

/**
 * Of boards that do this under power, the shares that come in with each of the customer's words; what is left stays in use. That a board
 * which makes no rails is called dead, and one which does not drive its motor only sometimes, is common practice; the shares are judged
 * `from memory`.
 */
export const SYMPTOM_SHARES: Readonly<Record<PowerEffect, Readonly<Partial<Record<Symptom, number>>>>> = {
  "input-open": { dead: 0.95, "trips-supply": 0.03, other: 0.02 },
  "line-short": { dead: 0.5, "trips-supply": 0.5 },
  "earth-short": { "trips-supply": 0.85, dead: 0.08, other: 0.05 },
  "feed-open": { dead: 0.96, "no-output": 0.02, other: 0.02 },
  "bus-short": { dead: 0.6, "trips-supply": 0.4 },
  "supply-short": { dead: 0.7, "trips-supply": 0.3 },
  "bus-leak": { "starts-then-stops": 0.3, other: 0.3, "trips-supply": 0.1, dead: 0.05 },
  "supply-dead": { dead: 0.93, "no-output": 0.02, other: 0.05 },
  "rail-short": { dead: 0.8, "no-output": 0.08, "starts-then-stops": 0.07, other: 0.05 },
  "leg-half": { dead: 0.3, "no-output": 0.35, "trips-supply": 0.3, other: 0.05 },
  "no-run": { "no-output": 0.6, "starts-then-stops": 0.25, dead: 0.1, other: 0.05 },
  weak: { "starts-then-stops": 0.45, other: 0.2, "no-output": 0.15, dead: 0.03 },
  none: {},
};

/** How often boards come in with each of the words, whatever is wrong with them. From memory. */
const COME_IN_AS: Readonly<Record<Symptom, number>> = {
  dead: 0.5,
  "no-output": 0.2,
  "trips-supply": 0.12,
  "starts-then-stops": 0.13,
  other: 0.05,
};
/** Share of customers who say any of the words, whatever the board does. From memory. */
const ILL_DESCRIBED = 0.03;
/** What shows whatever else is wrong: without a bus or without rails nothing starts, and then stops. */
const SHOWS_FIRST: ReadonlySet<PowerEffect> = new Set([
  "input-open",
  "line-short",
  "earth-short",
  "feed-open",
  "bus-short",
  "supply-short",
  "supply-dead",
  "rail-short",
]);

/**
 * By how much the symptom speaks against a fault that would have shown first: what a board with it would come in as, against what boards come in
 * as. 1 for a fault that another may hide. So a drive said to start and to stop again has no short across its bus, however the customer puts it.
 */
export function symptomAgainst(board: Board, symptom: Symptom, fault: Fault): number {
  return effectAgainst(powerEffect(viewOf(board), fault), symptom);
}

function effectAgainst(effect: PowerEffect, symptom: Symptom): number {
  if (!SHOWS_FIRST.has(effect)) return 1;
  return Math.min(1, ((SYMPTOM_SHARES[effect][symptom] ?? 0) + ILL_DESCRIBED) / COME_IN_AS[symptom]);
}

/**
 * How often a board that does this comes in with these words, against another that does something else: where what it does shows first, its
 * own share; else at least as often as boards come in so, for another fault may be what brought it in.
 */
export function comesInAs(effect: PowerEffect, symptom: Symptom): number {
  const own = (SYMPTOM_SHARES[effect][symptom] ?? 0) + ILL_DESCRIBED;
  return SHOWS_FIRST.has(effect) ? own : Math.max(own, COME_IN_AS[symptom]);
}

/** For each fault the probability that it brings a board in with this symptom by itself: a shorted clamp to earth kills no drive. */
export function bringsIn(board: Board, symptom: Symptom, faults: readonly FaultPrior[]): Float64Array {
  const view = viewOf(board);
  return Float64Array.from(faults, ({ fault }) => SYMPTOM_SHARES[powerEffect(view, fault)][symptom] ?? 0);
}
