/** Which one pin to lift so that a group of parts falls apart most evenly. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import type { ColdCheck, MakePredictor } from "../meter/prediction.ts";
import type { MeterSettings } from "../meter/settings.ts";
import { leftTogether, partsOf } from "./ambiguity.ts";
import { waysAcross } from "./telling-checks.ts";

export interface Split {
  /** the pin to lift */
  readonly place: string;
  /** parts that are then still together */
  readonly into: readonly (readonly string[])[];
}

/** Pins tried of one group: lifting is weighed, not searched. */
const MOST_PLACES = 16;
/** Of a part of more pins than this no pin is lifted to search with. */
const MOST_PINS = 4;

/** Checks that a lifted pin opens: from it to the pad it left, and to the part's other pins; and what could be read before. */
function checksRound(board: Board, place: string, group: readonly Fault[]): readonly ColdCheck[] {
  const [ref, pin] = [place.slice(0, place.indexOf(".")), place.slice(place.indexOf(".") + 1)];
  const pins = board.parts.get(ref)?.pins ?? new Map<string, string>();
  const pad = pins.get(pin) ?? "";
  const own = [...pins].filter(([other]) => other !== pin).map(([, net]) => net);
  const nets = partsOf(group).flatMap((part) => [...(board.parts.get(part)?.pins.values() ?? [])]);
  const pairs = new Map<string, readonly [string, string]>();
  const add = (one: string, other: string) => {
    if (one !== other) pairs.set(`${one} ${other}`, [one, other]);
  };
  for (const net of [pad, ...own]) add(place, net);
  for (const net of new Set(nets)) for (const other of [pad, ...own]) add(net, other);
  return [...pairs.values()].flatMap(waysAcross);
}

/** Parts left together, weighed by how likely each group is to be the one: the expected number of parts still in question. */
const stillTogether = (groups: readonly (readonly string[])[]): number => {
  const all = groups.reduce((sum, group) => sum + group.length, 0);
  return groups.reduce((sum, group) => sum + group.length ** 2, 0) / all;
};

/** The best pin to lift for one group, or null where no pin splits it. */
export function bestSplit(
  board: Board,
  bench: BenchState,
  meter: MeterSettings,
  make: MakePredictor,
  group: readonly Fault[],
): Split | null {
  const places = partsOf(group)
    .flatMap((ref) => {
      const pins = [...(board.parts.get(ref)?.pins.keys() ?? [])];
      // either end of a part with two does the same
      const tried = pins.length === 2 ? pins.slice(0, 1) : pins;
      return pins.length > MOST_PINS ? [] : tried.map((pin) => `${ref}.${pin}`);
    })
    .slice(0, MOST_PLACES);
  let best: Split | null = null;
  for (const place of places) {
    const predictor = make(board, { ...bench, lifted: new Set([...bench.lifted, place]) }, meter);
    const { groups, unseen } = leftTogether(predictor, checksRound(board, place, group), group);
    const into = [...groups, ...(unseen.length > 0 ? [unseen] : [])].map(partsOf);
    if (into.length > 1 && (best === null || stillTogether(into) < stillTogether(best.into)))
      best = { place, into };
    // no pin does better than one that leaves no two parts together
    if (into.every((parts) => parts.length === 1)) break;
  }
  return best;
}
