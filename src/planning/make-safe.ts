import type { JobEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import { type StoreOfCharge, storesOfCharge } from "../board/stores-of-charge.ts";
import { type DischargeState, dischargeState } from "../safety/discharge.ts";
import { dischargeResistor } from "../safety/discharge-resistor.ts";
import { amount } from "./expectations.ts";
import { andList } from "./faults-in-words.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action, Expectation } from "./proposal.ts";

/** A step that safety or order demands, with its reason; no sum decides it. */
export interface DueStep {
  readonly action: Action;
  readonly row: readonly Action[];
  readonly why: string;
  readonly expect: readonly Expectation[];
}

/**
 * What has to happen before any cold check: power off, every store of charge proven below 10 V at its own pins, a discharge
 * resistor clipped where one is not, and taken off again once the stores are empty. Null when the cold checks are open.
 */
export function makeSafe({ board, timeline }: PlanningInput): DueStep | null {
  const { now } = timeline;
  if (now.powered)
    return {
      action: { do: "unpower" },
      row: [],
      why: "Nothing is touched on a live board. Write down what was seen, then switch off and pull the plug.",
      expect: [],
    };
  const state = dischargeState(board, timeline, storesOfCharge(board));
  if (state.charged.length > 0) return dischargeStep(board, timeline.now.clips, state);
  if (state.unproven.length > 0 && !provingOverruled(timeline))
    return proveStep(state.unproven, timeline.entries.length === 0);
  const clip = now.clips[0];
  if (clip === undefined) return null;
  return {
    action: { do: "unclip", at: clip.at, ohms: clip.ohms },
    row: [],
    why: "Every store of charge is empty. The resistor comes off: it would show in every cold reading across it, and it must be off before power.",
    expect: [],
  };
}

/**
 * Has the technician, since power was last on, said that he goes on without the proof, and gone on with what needs a dead board?
 * A store that was read as charged stays in the way all the same.
 */
function provingOverruled({ entries }: Timeline): boolean {
  const since = entries.slice(entries.findLastIndex(({ event }) => event.do === "power") + 1);
  return since.some(({ event }, at) => event.do === "overrule" && needsDeadBoard(since[at + 1]?.event));
}

function needsDeadBoard(event: JobEvent | undefined): boolean {
  if (event === undefined) return false;
  if (event.do === "measure") return isColdMode(event.mode);
  return ["lift", "refit", "remove", "restore", "replace", "resolder", "clean"].includes(event.do);
}

function voltsAt({ part, pins }: StoreOfCharge): Action {
  return { do: "measure", mode: "dcv", red: `${part}.${pins[0]}`, black: `${part}.${pins[1]}` };
}

/** What a voltage reading at a store of charge may show; how often is from memory. */
const EMPTY_OR_NOT: readonly Expectation[] = [
  { if: "below 10 V", low: -10, high: 10, unit: "V", probability: 0.9, means: "empty: go on" },
  {
    if: "10 V or more",
    low: 10,
    high: null,
    unit: "V",
    probability: 0.1,
    means: "still charged: discharge it through a resistor, then measure again",
  },
];

function proveStep(unproven: readonly StoreOfCharge[], first: boolean): DueStep {
  const [head, ...rest] = unproven.map(voltsAt);
  return {
    action: head,
    row: rest,
    why: first
      ? "Nothing says yet that this board is dead: volts across every store of charge, at its own pins, before anything else is touched."
      : "Since power was last on these have not been proven empty: below 10 V at each one's own pins opens the cold checks.",
    expect: EMPTY_OR_NOT,
  };
}

function dischargeStep(
  board: PlanningInput["board"],
  clips: PlanningInput["timeline"]["now"]["clips"],
  { charged }: DischargeState,
): DueStep {
  const worst = charged.reduce((most, next) => (Math.abs(next.volts) > Math.abs(most.volts) ? next : most));
  const [plus, minus] = worst.store.pins.map((pin) => `${worst.store.part}.${pin}`);
  const across = (store: StoreOfCharge, at: readonly string[]) =>
    samePair(
      board,
      at,
      store.pins.map((pin) => `${store.part}.${pin}`),
    );
  const clip = clips.find(({ at }) => across(worst.store, at));
  const farads = parallelFarads(board, worst.store);
  const resistor = dischargeResistor(farads, worst.volts);
  const seconds = Math.ceil(resistor.seconds);
  if (clip !== undefined) {
    // what stands across the same two nets empties through the same resistor, and is proven with it
    const together = charged.map(({ store }) => store).filter((store) => across(store, clip.at));
    return {
      action: voltsAt(worst.store),
      row: together.filter((store) => store !== worst.store).map(voltsAt),
      why: `The resistor needs about ${seconds} s to bring ${andList(together.map(({ part }) => part))} below 10 V. Leave it on and read again at the pins of ${together.length > 1 ? "each" : worst.store.part}.`,
      expect: EMPTY_OR_NOT,
    };
  }
  return {
    action: { do: "clip", at: [plus, minus], ohms: resistor.ohms },
    row: [],
    why: `${worst.store.part} holds ${Math.abs(worst.volts).toFixed(0)} V (${joulesWords(resistor.joules)}). Clip ${amount(resistor.ohms, "ohm")}, 10 W, across its own pins: about ${seconds} s to fall below 10 V${resistor.peakWatts < 1 ? "" : `, ${resistor.peakWatts.toFixed(0)} W at first`}. Then measure again.`,
    expect: [],
  };
}

function joulesWords(joules: number): string {
  if (joules < 0.1) return "under 0.1 J";
  return `${joules.toFixed(joules < 1 ? 1 : 0)} J`;
}

function netOf(board: PlanningInput["board"], place: string): string {
  const dot = place.indexOf(".");
  return dot < 0 ? place : (board.parts.get(place.slice(0, dot))?.pins.get(place.slice(dot + 1)) ?? place);
}

function samePair(board: PlanningInput["board"], a: readonly string[], b: readonly string[]): boolean {
  const nets = (pair: readonly string[]) =>
    pair
      .map((place) => netOf(board, place))
      .sort()
      .join(" ");
  return nets(a) === nets(b);
}

/** All capacitance between the store's two nets: what is soldered in parallel empties through the same resistor. */
function parallelFarads(board: PlanningInput["board"], store: StoreOfCharge): number {
  const own = board.parts.get(store.part);
  if (own === undefined) return store.farads ?? 0;
  const nets = store.pins.map((pin) => own.pins.get(pin));
  let farads = 0;
  for (const part of board.parts.values())
    if (part.kind === "capacitor" && [...part.pins.values()].every((net) => nets.includes(net)))
      farads += part.value.farads ?? 0;
  return farads;
}
