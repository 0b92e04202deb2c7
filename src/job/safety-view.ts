/** What is known of the board's charge, in words. */
import type { Timeline } from "../bench/timeline.ts";
import type { Part } from "../board/board.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { voltsAt } from "../planning/discharge-step.ts";
import { type DischargeState, dischargeState, type StoreState, type Unproven } from "../safety/discharge.ts";
import { resistorInTheWay } from "../safety/resistor-on.ts";
import type { Job } from "./job.ts";
import type { SafetyView, StoreView } from "./safety-view-shape.ts";
import { actionWords, partWords } from "./words.ts";

const BECAUSE: Readonly<Record<Unproven, string>> = {
  arrived: "not read yet",
  power: "not read since power",
  turned: "not read since something turned",
  volts: "not read since the board showed volts while off",
  fitted: "not read since it was put on",
  shared: "not read since another was put on",
};

export function safetyView({ board, log }: Job, timeline: Timeline): SafetyView {
  const { now } = timeline;
  const state = dischargeState(board, timeline, storesOfCharge(board));
  const waits = resistorInTheWay(timeline);
  return {
    stores: state.stores.map((one) => storeView(one, log)),
    open: state.open,
    words: gateWords(state, now.powered),
    overruled: state.overruled?.why ?? null,
    powerWaits: waits === null ? null : `${waits[0]?.toUpperCase() ?? ""}${waits.slice(1)}.`,
    resistors: now.clips.map(({ at, ohms }) => {
      const off = { do: "unclip", at, ohms } as const;
      return { words: actionWords(board, off), off };
    }),
    turns: [...board.parts.values()]
      .filter((part) => turns(part) && !now.off.has(part.ref))
      .map(({ ref }) => ({ part: ref, words: partWords(board, ref) })),
  };
}

function turns({ kind, role }: Part): boolean {
  return kind === "motor" || (role ?? "").includes("fan");
}

function storeView({ store, state, volts, readAt, because, off }: StoreState, log: Job["log"]): StoreView {
  const event = readAt === null ? undefined : log[readAt];
  const at = event !== undefined && typeof event.at === "string" ? event.at : null;
  return {
    part: store.part,
    what: off ? `${store.kind}, off the board` : store.kind,
    state,
    volts: readAt === null ? null : volts === null ? "over range" : voltsWords(volts),
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
  if (powered) return "Powered: every store counts as charged, and no hand goes in.";
  const proven = `${count("empty")} of ${stores.length} proven empty`;
  if (open && overruled !== null) return `Proof overruled (${overruled.why}); ${proven}.`;
  if (open)
    return stores.length === 0 ? "No store of charge on this board." : `All ${stores.length} proven empty.`;
  const charged = count("charged");
  return `${proven}${charged > 0 ? `, ${charged} charged` : ""}: no hand, no cold check.`;
}
