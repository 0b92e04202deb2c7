/** What to do about a store of charge that reads charged: clip a resistor across it, wait, read again. */
import type { Clip } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { netOfPlace } from "../bench/place.ts";
import type { Board } from "../board/board.ts";
import { bleedSeconds } from "../board/stored-charge.ts";
import type { StoreOfCharge } from "../board/stores-of-charge.ts";
import { said } from "../messages/said.ts";
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
  { if: said`below 10 V`, low: -10, high: 10, unit: "V", probability: 0.9, means: said`empty: go on` },
  {
    if: said`10 V or more`,
    low: 10,
    high: null,
    unit: "V",
    probability: 0.1,
    means: said`still charged: discharge it through a resistor, then measure again`,
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
      why: said`The resistor may have emptied ${andList(stale.map(({ store }) => store.part))} as well: read again at each one's own pins.`,
      expect: EMPTY_OR_NOT,
    };
  const [spare] = clips;
  if (spare !== undefined)
    return {
      action: { do: "unclip", at: spare.at, ohms: spare.ohms },
      row: [],
      why: said`It has done its work there; ${worst.store.part} still holds ${`${voltsOf(worst).toFixed(0)} V`} and is next.`,
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
  const parts = [first, ...others].map(({ store }) => store.part);
  return {
    action: voltsAt(first.store),
    row: others.map(({ store }) => voltsAt(store)),
    why: whyReadAgain(seconds, parts, (first.readAt ?? -1) > clippedAt),
    expect: EMPTY_OR_NOT,
  };
}

/** @param stubborn - it was read with the resistor on, and had not fallen */
function whyReadAgain(seconds: number, parts: readonly string[], stubborn: boolean): string {
  const takes = `${Math.ceil(seconds)} s`;
  const [only = ""] = parts;
  const sentences = [
    parts.length > 1
      ? said`The resistor needs about ${takes} to bring ${andList(parts)} below 10 V. Leave it on and read again at the pins of each.`
      : said`The resistor needs about ${takes} to bring ${only} below 10 V. Leave it on and read again at the pins of ${only}.`,
  ];
  if (stubborn)
    sentences.push(
      said`If it does not fall, something still feeds it: is the plug out, does a motor or fan turn, do the clips bite?`,
    );
  return sentences.join(" ");
}

function clipStep({ board, timeline, equipment }: PlanningInput, state: StoreState): Step {
  const { store } = state;
  const volts = voltsOf(state);
  const at = pinsOf(store);
  const found = dischargeResistor(faradsBetween(board, timeline.now, at), volts, equipment);
  return {
    action: { do: "clip", at, ohms: found.ohms },
    row: [],
    why: [
      state.volts === null
        ? said`${store.part} reads over the meter's range (${joulesWords(found.joules)}).`
        : said`${store.part} holds ${`${volts.toFixed(0)} V`} (${joulesWords(found.joules)}).`,
      clipSentence(found),
      ...(found.own ? [] : lampWords(equipment, volts)),
      said`Then measure again.`,
      ...backWords(volts, store),
    ].join(" "),
    expect: [],
  };
}

function clipSentence({
  ohms,
  watts,
  own,
  seconds,
  peakWatts,
}: ReturnType<typeof dischargeResistor>): string {
  const [is, bears, falls] = [amount(ohms, "ohm"), `${watts} W`, `${Math.ceil(seconds)} s`];
  const peak = peakWatts < 1 ? null : `${peakWatts.toFixed(0)} W`;
  if (own)
    return peak === null
      ? said`Clip ${is}, ${bears}, across its own pins: about ${falls} to fall below 10 V.`
      : said`Clip ${is}, ${bears}, across its own pins: about ${falls} to fall below 10 V, ${peak} at first.`;
  return peak === null
    ? said`Clip ${is}, ${bears} or more, wire-wound, across its own pins: about ${falls} to fall below 10 V.`
    : said`Clip ${is}, ${bears} or more, wire-wound, across its own pins: about ${falls} to fall below 10 V, ${peak} at first.`;
}

function backWords(volts: number, { kind }: StoreOfCharge): readonly string[] {
  const back = recoveredVolts(volts, kind);
  return back === 0
    ? []
    : [
        said`By itself it may come back to ${`${back.toFixed(0)} V`} over hours: read it again after any pause.`,
      ];
}

/** A filament lamp does it too, if it bears the volts (two in series above the mains' peak): one repairer's tool, from memory. */
const LAMP_VOLTS = 325;

function lampWords(equipment: readonly string[], volts: number): readonly string[] {
  const largest = lampsOf(equipment).at(-1);
  if (largest === undefined) return [];
  return volts > LAMP_VOLTS
    ? [said`Without one two such lamps in series do it in a flash; a dark lamp is no proof.`]
    : [said`Without one the ${`${largest} W`} lamp across it does it in a flash; a dark lamp is no proof.`];
}

function pinsOf({ part, pins }: StoreOfCharge): readonly [Place, Place] {
  return [`${part}.${pins[0]}`, `${part}.${pins[1]}`];
}

function joulesWords(joules: number): string {
  if (joules < 0.1) return said`under 0.1 J`;
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
