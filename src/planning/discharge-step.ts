/** What to do about a store of charge that reads charged: clip a resistor across it, wait, read again. */
import type { Clip } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { netOfPlace } from "../bench/place.ts";
import type { Board } from "../board/board.ts";
import { bleedSeconds } from "../board/stored-charge.ts";
import type { StoreOfCharge } from "../board/stores-of-charge.ts";
import { faradsBetween } from "../safety/capacitance-between.ts";
import { EMPTY_BELOW_VOLTS, type StoreState } from "../safety/discharge.ts";
import { dischargeResistor } from "../safety/discharge-resistor.ts";
import { lampsOf } from "../safety/limiter.ts";
import { recoveredVolts } from "../safety/recovery.ts";
import { amount } from "./expectations.ts";
import { andList } from "./faults-in-words.ts";
import type { PlanningInput } from "./planning-input.ts";
import type { Action, Expectation, Proposal } from "./proposal.ts";

type Step = Pick<Proposal, "action" | "row" | "why" | "expect">;

export function voltsAt({ part, pins }: StoreOfCharge): Action {
  return { do: "measure", mode: "dcv", red: `${part}.${pins[0]}`, black: `${part}.${pins[1]}` };
}

/** What a voltage reading at a store of charge may show; how often is from memory. */
export const EMPTY_OR_NOT: readonly Expectation[] = [
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

/** Volts taken where the meter was over its range and the part tells nothing: a 400 V electrolytic on mains, common practice. */
const OVER_RANGE_VOLTS = 400;

function voltsOf({ volts, store }: StoreState): number {
  return Math.abs(volts ?? store.volts ?? OVER_RANGE_VOLTS);
}

/** @param charged - the stores that read charged; at least one */
export function dischargeStep(input: PlanningInput, charged: readonly StoreState[]): Step {
  const { board, timeline } = input;
  const worst = charged.reduce((most, next) => (voltsOf(next) > voltsOf(most) ? next : most));
  const clipped = timeline.entries.findLast(({ event }) => event.do === "clip")?.logIndex ?? -1;
  const across = (clip: Clip, { store }: StoreState) => samePair(board, clip.at, pinsOf(store));
  const { clips } = timeline.now;
  const clip = clips.find((one) => charged.some((state) => across(one, state)));
  // a reading from before the resistor went on says nothing any more: what hangs together empties together
  const stale = charged.filter(({ readAt }) => (readAt ?? -1) < clipped);
  if (clip !== undefined) return readAgain(input, clip, charged, across);
  if (stale.length > 0 && clips.length > 0)
    return {
      action: voltsAt(stale[0].store),
      row: stale.slice(1).map(({ store }) => voltsAt(store)),
      why: `The resistor may have emptied ${andList(stale.map(({ store }) => store.part))} as well: read again at each one's own pins.`,
      expect: EMPTY_OR_NOT,
    };
  const [spare] = clips;
  if (spare !== undefined)
    return {
      action: { do: "unclip", at: spare.at, ohms: spare.ohms },
      row: [],
      why: `It has done its work there; ${worst.store.part} still holds ${voltsOf(worst).toFixed(0)} V and is next.`,
      expect: [],
    };
  return clipStep(input, worst);
}

function readAgain(
  { board, timeline }: PlanningInput,
  clip: Clip,
  charged: readonly StoreState[],
  across: (clip: Clip, state: StoreState) => boolean,
): Step {
  const [first, ...others] = charged.filter((state) => across(clip, state));
  const farads = faradsBetween(board, timeline.now, clip.at);
  const volts = Math.max(...[first, ...others].map(voltsOf));
  const seconds = volts > EMPTY_BELOW_VOLTS ? bleedSeconds(volts, EMPTY_BELOW_VOLTS, clip.ohms, farads) : 0;
  const clippedAt = timeline.entries.findLast(({ event }) => event.do === "clip")?.logIndex ?? -1;
  const stubborn = (first.readAt ?? -1) > clippedAt;
  const parts = [first, ...others].map(({ store }) => store.part);
  return {
    action: voltsAt(first.store),
    row: others.map(({ store }) => voltsAt(store)),
    why: `The resistor needs about ${Math.ceil(seconds)} s to bring ${andList(parts)} below 10 V. Leave it on and read again at the pins of ${others.length > 0 ? "each" : parts[0]}.${stubborn ? " If it does not fall, something still feeds it: is the plug out, does a motor or fan turn, do the clips bite?" : ""}`,
    expect: EMPTY_OR_NOT,
  };
}

function clipStep({ board, timeline, equipment }: PlanningInput, state: StoreState): Step {
  const { store } = state;
  const volts = voltsOf(state);
  const at = pinsOf(store);
  const found = dischargeResistor(faradsBetween(board, timeline.now, at), volts, equipment);
  const holds = state.volts === null ? "reads over the meter's range" : `holds ${volts.toFixed(0)} V`;
  const peak = found.peakWatts < 1 ? "" : `, ${found.peakWatts.toFixed(0)} W at first`;
  return {
    action: { do: "clip", at, ohms: found.ohms },
    row: [],
    why: `${store.part} ${holds} (${joulesWords(found.joules)}). Clip ${amount(found.ohms, "ohm")}, ${found.watts} W${found.own ? "" : " or more, wire-wound"}, across its own pins: about ${Math.ceil(found.seconds)} s to fall below 10 V${peak}.${found.own ? "" : lampWords(equipment, volts)} Then measure again.${backWords(volts, store)}`,
    expect: [],
  };
}

function backWords(volts: number, { kind }: StoreOfCharge): string {
  const back = recoveredVolts(volts, kind);
  return back === 0
    ? ""
    : ` By itself it may come back to ${back.toFixed(0)} V over hours: read it again after any pause.`;
}

/** A filament lamp does it too, if it bears the volts (two in series above the mains' peak): one repairer's tool, from memory. */
const LAMP_VOLTS = 325;

function lampWords(equipment: readonly string[], volts: number): string {
  const largest = lampsOf(equipment).at(-1);
  if (largest === undefined) return "";
  const lamps = volts > LAMP_VOLTS ? "two such lamps in series do" : `the ${largest} W lamp across it does`;
  return ` Without one ${lamps} it in a flash; a dark lamp is no proof.`;
}

function pinsOf({ part, pins }: StoreOfCharge): readonly [Place, Place] {
  return [`${part}.${pins[0]}`, `${part}.${pins[1]}`];
}

function joulesWords(joules: number): string {
  if (joules < 0.1) return "under 0.1 J";
  return `${joules.toFixed(joules < 1 ? 1 : 0)} J`;
}

function samePair(board: Board, a: readonly string[], b: readonly string[]): boolean {
  const nets = (pair: readonly string[]) =>
    pair
      .map((place) => netOfPlace(board, place))
      .sort()
      .join(" ");
  return nets(a) === nets(b);
}
