import type { BenchState } from "../bench/bench-state.ts";
import type { ColdMode, Place } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, Part } from "../board/board.ts";
import { faultSites } from "../board/fault-sites.ts";
import { powerSwitches } from "../board/power-switches.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { ColdCheck } from "../meter/prediction.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { junctionPins } from "./junction-pins.ts";
import { checkKey, stillKnown } from "./still-known.ts";

/** A cold check worth weighing, and the set-up it belongs to: checks of one set-up are taken in a row. */
export interface CandidateCheck {
  readonly check: ColdCheck;
  /** what the probes are about: `the six switches`, `the low rails`, a part's reference */
  readonly setUp: string;
  /** the part on whose own pins the probes stand, where it is off the board or has a pin lifted */
  readonly inHand: string | null;
}

/** Most checks weighed at once: a bound on work. */
const MOST_CHECKS = 110;
/** Parts whose own junctions are probed, most suspected first. */
const MOST_PARTS = 40;
/** Power switches and rails weighed at once: two three-phase stages, and the rails of a large board. Bounds on work. */
const MOST_SWITCHES = 12;
const MOST_RAILS = 10;
const PART_LEAST = 0.002;

/**
 * Cold checks worth considering with the bench as it is: bus, phases, bridges, rails, high-voltage chains, supply pins and gates
 * found from what the parts do; then the junctions of the most suspected parts, both ways. No check twice, none whose reading still
 * stands. In a fixed order.
 *
 * Bounded whatever the size of the board, never by pairs of nets: five checks at supply and bus, three a switch for the twelve
 * most suspected switches, two a bridge diode, three a rail for the ten most suspected rails, then the own junctions of up to
 * forty suspects and ohms across suspected dirt, 110 in all. Every part has its checks and is reached once it is suspected more than what
 * stands before it. What that loses: a reading between nets that neither a part joins nor dirt is suspected at (one that two parts in
 * series explain) is never proposed, and on a board of many axes a row covers the suspected axes, not all of them.
 */
export function candidateChecks(
  board: Board,
  bench: BenchState,
  timeline: Timeline,
  belief: Belief,
): readonly CandidateCheck[] {
  const found = new Map<string, CandidateCheck>();
  const taken = stillKnown(board, timeline, bench, belief);
  const add = (setUp: string, mode: ColdMode, red: Place, black: Place, inHand: string | null): void => {
    if (red === black) return;
    const key = checkKey({ mode, red, black });
    if (found.has(key) || taken.has(key)) return;
    found.set(key, { check: { mode, red, black }, setUp, inHand });
  };
  // the parts in hand first: they were lifted or taken off to be measured
  for (const part of partsInHand(board, bench)) addPart(bench, part, add);
  addBus(board, add);
  const doubt = doubtOf(belief);
  addSwitches(board, bench, doubt, add);
  addBridges(board, bench, add);
  addRails(board, doubt, add);
  let parts = 0;
  for (const suspect of belief.suspects) {
    if (suspect.probability < PART_LEAST || parts >= MOST_PARTS) continue;
    const part = board.parts.get(suspect.part);
    if (part === undefined) addDirt(suspect.part, add);
    else if (addPart(bench, part, add)) parts += 1;
  }
  return [...found.values()].slice(0, MOST_CHECKS);
}

/** How probably each part is faulty. */
type Doubt = ReadonlyMap<string, number>;

function doubtOf({ suspects }: Belief): Doubt {
  return new Map(suspects.map(({ part, probability }) => [part, probability]));
}

/** The `count` of most doubt, in their own order; all of them where there are no more. */
function mostDoubted<T>(all: readonly T[], count: number, doubt: (one: T) => number): readonly T[] {
  if (all.length <= count) return all;
  const kept = new Set([...all].sort((a, b) => doubt(b) - doubt(a)).slice(0, count));
  return all.filter((one) => kept.has(one));
}

type Add = (setUp: string, mode: ColdMode, red: Place, black: Place, inHand: string | null) => void;

/** The place at which a pin is touched: its net while it is soldered there, the pin itself once it is not. */
export function placeOf(bench: BenchState, part: Part, pin: string): Place {
  const place = `${part.ref}.${pin}`;
  const loose = bench.off.has(part.ref) || bench.lifted.has(place);
  return loose ? place : (part.pins.get(pin) ?? place);
}

function partsInHand(board: Board, bench: BenchState): readonly Part[] {
  const refs = [...bench.lifted].map((place) => place.slice(0, place.indexOf(".")));
  return [...board.parts.values()].filter((part) => refs.includes(part.ref) || bench.off.has(part.ref));
}

/** Dirt between two nets is measured in ohms between them; no part need join them. `suspect`: `NET1~NET2`. */
function addDirt(suspect: string, add: Add): void {
  const [red, black] = suspect.split("~");
  if (red !== undefined && black !== undefined) add("the places with dirt", "ohms", red, black, null);
}

function addPart(bench: BenchState, part: Part, add: Add): boolean {
  if (bench.off.has(part.ref) && part.kind === "motor") return false;
  for (const site of faultSites(part)) {
    const pins = junctionPins(part, site.junction);
    if (pins === null) continue;
    const [red, black] = pins.map((pin) => placeOf(bench, part, pin));
    // only a pin that is free is on the part in hand; its other pins are still the board's nets
    const inHand = [red, black].some((place) => place.startsWith(`${part.ref}.`)) ? part.ref : null;
    const { modes, bothWays } = modesFor(part, site.junction);
    for (const mode of modes) {
      if (mode === "ohms" && conducts(part, site.junction)) add(part.ref, mode, black, red, inHand);
      else add(part.ref, mode, red, black, inHand);
      if (bothWays && mode === "diode") add(part.ref, mode, black, red, inHand);
    }
  }
  return true;
}

/** Below this a hand-held meter shows its own leads (from memory). */
const LEAST_FARADS = 1e-9;

const OHMIC: ReadonlySet<Part["kind"]> = new Set([
  "fuse",
  "link",
  "resistor",
  "ntc",
  "ptc",
  "inductor",
  "choke",
  "transformer",
  "motor",
]);

/** Parts that are diodes, and nothing else. */
const DIODES: ReadonlySet<Part["kind"]> = new Set(["diode", "bridge"]);

/**
 * Has the junction a diode whose forward way comes first? Its ohms are taken the way it blocks: a meter opens half a volt in ohms too, and
 * the diode then reads a kilo-ohm or two, behind which a leak of two hides (common practice).
 */
function conducts(part: Part, junction: string | null): boolean {
  return DIODES.has(part.kind) || (part.kind !== "bjt" && (junction === "ce" || junction === "ds"));
}

/** Which modes tell something of a junction: ohms for what is ohmic, both directions of the diode mode for the rest. */
function modesFor(
  part: Part,
  junction: string | null,
): { readonly modes: readonly ColdMode[]; readonly bothWays: boolean } {
  if (OHMIC.has(part.kind) || part.kind === "relay") return { modes: ["ohms"], bothWays: false };
  // Only capacitance tells an open or dried-out capacitor from a good one.
  if (part.kind === "capacitor" && (part.value.farads ?? 0) >= LEAST_FARADS)
    return { modes: ["diode", "ohms", "farads"], bothWays: true };
  if (part.kind === "capacitor" || part.kind === "varistor")
    return { modes: ["diode", "ohms"], bothWays: true };
  if (junction === "ge" || junction === "gs") return { modes: ["ohms", "diode"], bothWays: true };
  // Behind the windings of a motor a shorted leg reads zero on all three; ohms tell the near one from those some ohms away.
  if (junction === "ce" || junction === "ds" || DIODES.has(part.kind))
    return { modes: ["diode", "ohms"], bothWays: true };
  return { modes: ["diode"], bothWays: true };
}

function addBus(board: Board, add: Add): void {
  const { supply } = board;
  if (supply.kind === "ac" && supply.at.length >= 2) {
    add("the supply terminals", "diode", supply.at[0], supply.at[1], null);
    add("the supply terminals", "diode", supply.at[1], supply.at[0], null);
  }
  const { bus } = viewOf(board).roles;
  if (bus === null) return;
  add("the bus", "diode", bus.plus, bus.minus, null);
  add("the bus", "diode", bus.minus, bus.plus, null);
  add("the bus", "ohms", bus.plus, bus.minus, null);
}

/** Each switch across its own two nets, first the way it blocks, then its diode; then its gate. */
function addSwitches(board: Board, bench: BenchState, doubt: Doubt, add: Add): void {
  const there = powerSwitches(board).filter(({ part }) => !isLoose(bench, part));
  const all = mostDoubted(there, MOST_SWITCHES, ({ part }) => doubt.get(part) ?? 0);
  for (const { high, low } of all) add("the switches, blocking way", "diode", high, low, null);
  for (const { high, low } of all) add("the switches, diode way", "diode", low, high, null);
  for (const { gate, low } of all) if (gate !== null) add("the gates", "ohms", gate, low, null);
}

function isLoose(bench: BenchState, ref: string): boolean {
  return bench.off.has(ref) || [...bench.lifted].some((place) => place.startsWith(`${ref}.`));
}

function addBridges(board: Board, bench: BenchState, add: Add): void {
  for (const part of board.parts.values()) {
    if (part.kind !== "bridge" || bench.off.has(part.ref)) continue;
    const pairs = faultSites(part).flatMap((site) => {
      const pins = junctionPins(part, site.junction);
      return pins === null ? [] : [pins.map((pin) => placeOf(bench, part, pin))];
    });
    for (const [red, black] of pairs) add(`${part.ref}, diode way`, "diode", red, black, null);
    for (const [red, black] of pairs) add(`${part.ref}, blocking way`, "diode", black, red, null);
  }
}

function addRails(board: Board, doubt: Doubt, add: Add): void {
  const onNet = (net: string): number => {
    let most = 0;
    for (const part of board.parts.values())
      if ([...part.pins.values()].includes(net)) most = Math.max(most, doubt.get(part.ref) ?? 0);
    return most;
  };
  const rails = mostDoubted(board.rails, MOST_RAILS, ({ net }) => onNet(net));
  for (const rail of rails) add("the low rails", "diode", rail.net, rail.against ?? board.zero, null);
  for (const rail of rails) add("the low rails", "ohms", rail.net, rail.against ?? board.zero, null);
  for (const rail of rails)
    add("the low rails, leads swapped", "diode", rail.against ?? board.zero, rail.net, null);
}
