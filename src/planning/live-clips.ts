/**
 * Where a meter is clipped before power: the one or two pairs of places whose volts would tell most of what is still believed. On a
 * live board nothing is reached for, so a reading under power has to be chosen before it (common practice).
 */

import type { Place, PowerEvent } from "../bench/event.ts";
import { lastPowered, poweredNow } from "../bench/last-power.ts";
import { staysOn } from "../bench/stays-on.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { deriveRoles } from "../board/roles.ts";
import { FEED_MODEL } from "../live/power-feed.ts";
import { said } from "../messages/said.ts";
import { couldProveBus } from "./bus-proof.ts";
import { ANYTHING, bitsOf, type Partition, refine } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { livePartition } from "./live-partition.ts";
import type { PlanningInput } from "./planning-input.ts";

/** A pair of places with what a meter across it would show. */
export interface Clips extends Pair {
  readonly partition: Partition;
}

interface Pair {
  readonly places: readonly [Place, Place];
  /** what stands there, in the technician's words */
  readonly what: string;
  /** what the meter is set to: alternating volts where both places are on the line */
  readonly mode: ClipMode;
  readonly isBus: boolean;
}

type ClipMode = "dcv" | "acv";

/**
 * Pairs that are worth a clip: the bus, every rail, the supply of each off-line switch, the coil of each relay, and the inrush part: once its
 * relay has pulled in nothing stands across it, and volts there are all that an idle board shows of a relay that did not (common practice).
 */
function pairsOf(board: Board): readonly Pair[] {
  const { bus, rails, switchers, inrush, line } = deriveRoles(board);
  const pairs: Pair[] =
    bus === null ? [] : [{ places: [bus.plus, bus.minus], what: said`the bus`, mode: "dcv", isBus: true }];
  for (const { name, net, back } of rails)
    pairs.push({ places: [net, back], what: said`the ${name} rail`, mode: "dcv", isBus: false });
  const across = (ref: string, one: string, other: string, what: string): void => {
    const nets = [one, other].map((pin) => board.parts.get(ref)?.pins.get(pin));
    if (nets[0] === undefined || nets[1] === undefined) return;
    const mode = line.includes(nets[0]) && line.includes(nets[1]) ? "acv" : "dcv";
    pairs.push({ places: [nets[0], nets[1]], what, mode, isBus: false });
  };
  for (const ref of inrush) across(ref, "1", "2", said`${ref}, which its relay has to bypass`);
  for (const { part } of switchers) across(part, "vcc", "s", said`the supply of ${part}`);
  for (const { ref, kind } of board.parts.values())
    if (kind === "relay") across(ref, "coil1", "coil2", said`the coil of ${ref}`);
  return pairs;
}

/** The same places, whichever way round the leads are. */
export function samePlaces(one: readonly [Place, Place], other: readonly [Place, Place]): boolean {
  return (one[0] === other[0] && one[1] === other[1]) || (one[0] === other[1] && one[1] === other[0]);
}

/** What a meter across the pair would show under each hypothesis; null without a live model. */
function partitionOf(
  { places: [red, black], mode }: Pair,
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
): Partition | null {
  return livePartition(input, hypotheses, power, { mode, red, black });
}

/** Meters that this bench can leave clipped on. */
function metersOf({ equipment }: PlanningInput): number {
  return equipment.includes("second-meter") ? 2 : 1;
}

/**
 * The pairs to clip meters across before this power-up, the most telling first; none where no reading tells anything. Behind a lamp one
 * of them has to show that the bus stands, whatever it tells beside that: a lamp gone dark proves nothing without it.
 * @param left - the pairs to choose from
 */
export function bestClips(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
  left: (places: readonly [Place, Place]) => boolean = () => true,
): readonly Clips[] {
  const open = pairsOf(input.board).flatMap((pair): Clips[] => {
    if (!left(pair.places)) return [];
    const partition = partitionOf(pair, input, hypotheses, power);
    if (pair.isBus && power.feed === "lamp")
      return [{ ...pair, partition: partition ?? anything(hypotheses.list.length) }];
    return partition === null || partition.outcomes.length < 2 ? [] : [{ ...pair, partition }];
  });
  const chosen = mostTelling(open, hypotheses, metersOf(input));
  const watts = power.watts ?? FEED_MODEL.lampWatts;
  if (power.feed !== "lamp" || chosen.some(({ places }) => couldProveBus(input.board, watts, places)))
    return chosen;
  const bus = open.find((one) => one.isBus);
  return bus === undefined ? chosen : [...chosen.slice(0, metersOf(input) - 1), bus];
}

/** One after the other, each beside those before it. */
function mostTelling(open: readonly Clips[], hypotheses: Hypotheses, most: number): readonly Clips[] {
  const chosen: Clips[] = [];
  let joint: Partition | null = null;
  while (chosen.length < most) {
    let best: { readonly clips: Clips; readonly joint: Partition } | null = null;
    let bitsBest = joint === null ? 0 : bitsOf(joint, hypotheses);
    for (const clips of open) {
      const refined: Partition = joint === null ? clips.partition : refine(joint, clips.partition);
      const bits = bitsOf(refined, hypotheses);
      if (bits <= bitsBest + LEAST_BITS) continue;
      bitsBest = bits;
      best = { clips, joint: refined };
    }
    if (best === null) break;
    chosen.push(best.clips);
    joint = best.joint;
  }
  return chosen;
}

/** Of a reading that no model foretells. */
function anything(count: number): Partition {
  return { classOf: new Int16Array(count), outcomes: [{ word: ANYTHING, low: null, high: null }] };
}

/** A meter is not moved for less than this. From memory. */
const LEAST_BITS = 0.005;

/** The pairs with a meter across that have not been read since power came on; none where it has to go off, or is off. */
export function unreadClips(timeline: Timeline): readonly (readonly [Place, Place])[] {
  const on = poweredNow(timeline);
  if (on === null) return [];
  const { at, power } = on;
  if ([power.observed ?? []].flat().some((seen) => !staysOn(seen))) return [];
  const read = timeline.entries.slice(at + 1).flatMap(({ event }) => (event.do === "measure" ? [event] : []));
  return (power.meters ?? []).filter(
    ([red, black]) => !read.some((event) => event.red === red && event.black === black),
  );
}

/** The pairs that meters were clipped across at the last power-up. */
export function clippedOn(timeline: Timeline): readonly (readonly [Place, Place])[] {
  return lastPowered(timeline)?.power.meters ?? [];
}

/** What stands between these places and what a meter clipped across them is set to. */
export function clipAt(board: Board, places: readonly [Place, Place]): Pair {
  const pair = pairsOf(board).find((one) => samePlaces(one.places, places));
  if (pair !== undefined) return { ...pair, places };
  return { places, what: said`${places[0]} to ${places[1]}`, mode: "dcv", isBus: false };
}
