/** What is known of the board's charge, in words. */

import { overruleReason } from "../bench/overrule-reasons.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Part } from "../board/board.ts";
import { STORE_WORDS, storesOfCharge } from "../board/stores-of-charge.ts";
import { said } from "../messages/said.ts";
import { voltsAt } from "../planning/discharge-step.ts";
import { type DischargeState, dischargeState, type StoreState, type Unproven } from "../safety/discharge.ts";
import { motorInTheWay } from "../safety/motor-check.ts";
import { resistorInTheWay } from "../safety/resistor-on.ts";
import type { Job } from "./job.ts";
import type { SafetyView, StoreView } from "./safety-view-shape.ts";
import { actionWords, partWords } from "./words.ts";

const BECAUSE: Readonly<Record<Unproven, string>> = {
  arrived: said`not read yet`,
  power: said`not read since power`,
  turned: said`not read since something turned`,
  volts: said`not read since the board showed volts while off`,
  fitted: said`not read since it was put on`,
  shared: said`not read since another was put on`,
};

export function safetyView({ board, log }: Job, timeline: Timeline): SafetyView {
  const { now } = timeline;
  const state = dischargeState(board, timeline, storesOfCharge(board));
  return {
    stores: state.stores.map((one) => storeView(one, log)),
    open: state.open,
    words: gateWords(state, now.powered),
    overruled: state.overruled === null ? null : overruleReason(state.overruled.why),
    powerWaits: sentence(resistorInTheWay(timeline)),
    motorWaits: sentence(motorInTheWay(board, timeline)),
    resistors: now.clips.map(({ at, ohms }) => {
      const off = { do: "unclip", at, ohms } as const;
      return { words: actionWords(board, off), off };
    }),
    turns: [...board.parts.values()]
      .filter((part) => turns(part) && !now.off.has(part.ref))
      .map(({ ref }) => ({ part: ref, words: partWords(board, ref) })),
  };
}

function sentence(words: string | null): string | null {
  return words === null ? null : said`${words}.`;
}

function turns({ kind, role }: Part): boolean {
  return kind === "motor" || (role ?? "").includes("fan");
}

function storeView({ store, state, volts, readAt, because, off }: StoreState, log: Job["log"]): StoreView {
  const event = readAt === null ? undefined : log[readAt];
  const at = event !== undefined && typeof event.at === "string" ? event.at : null;
  return {
    part: store.part,
    what: off ? said`${STORE_WORDS[store.kind]}, off the board` : STORE_WORDS[store.kind],
    state,
    volts: readAt === null ? null : volts === null ? said`over range` : voltsWords(volts),
    read: readAt === null ? null : { line: readAt + 1, at },
    because: state === "unknown" ? BECAUSE[because] : null,
    proof: { ...voltsAt(store) },
  };
}

function voltsWords(volts: number): string {
  return `${Number(volts.toFixed(Math.abs(volts) < 10 ? 1 : 0))} V`;
}

function gateWords({ stores, open, overruled }: DischargeState, powered: boolean): string {
  const count = (wanted: StoreState["state"]) => stores.filter(({ state }) => state === wanted).length;
  const all = stores.length;
  if (powered) return said`Powered: every store counts as charged, and no hand goes in.`;
  if (open && overruled === null)
    return all === 0 ? said`No store of charge on this board.` : said`All ${all} proven empty.`;
  const proven = count("empty");
  if (open)
    return said`Proof overruled (${overruleReason(overruled?.why ?? "")}); ${proven} of ${all} proven empty.`;
  const charged = count("charged");
  return charged > 0
    ? said`${proven} of ${all} proven empty, ${charged} charged: no hand, no cold check.`
    : said`${proven} of ${all} proven empty: no hand, no cold check.`;
}
