import type { Board } from "../board/board.ts";
import type { Symptom } from "./cause.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import { type PowerEffect, powerEffect } from "./power-effects.ts";

/** What a board must do under power to come in with this symptom (common practice). */
export const SYMPTOM_EFFECTS: Readonly<Record<Symptom, readonly PowerEffect[]>> = {
  dead: [
    "input-open",
    "feed-open",
    "line-short",
    "bus-short",
    "supply-short",
    "supply-dead",
    "rail-short",
    "leg-half",
  ],
  "trips-supply": ["line-short", "bus-short", "supply-short", "leg-half", "input-open"],
  "starts-then-stops": ["weak", "bus-leak", "no-run", "rail-short"],
  "no-output": ["no-run", "leg-half", "rail-short"],
  other: ["bus-leak", "supply-dead", "rail-short", "leg-half", "no-run", "weak"],
};
/** 1 for each fault that brings a board in with this symptom by itself: a shorted clamp to earth kills no drive. */
export function bringsIn(board: Board, symptom: Symptom, faults: readonly FaultPrior[]): Uint8Array {
  const view = viewOf(board);
  const effects = SYMPTOM_EFFECTS[symptom];
  return Uint8Array.from(faults, ({ fault }) => (effects.includes(powerEffect(view, fault)) ? 1 : 0));
}
