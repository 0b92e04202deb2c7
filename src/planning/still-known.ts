/**
 * Readings that need not be taken again. A reading stays good while nothing was done at its two places: work elsewhere on the board, or a
 * power-up that nothing is believed to have broken, does not make a second look at the same places tell anything new.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { JobEvent, MeasureEvent, Place } from "../bench/event.ts";
import { netOfPlace, pinOfPlace } from "../bench/place.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import type { Board } from "../board/board.ts";
import type { Belief } from "../diagnosis/belief.ts";
import type { ColdCheck } from "../meter/prediction.ts";

/** A part broken by power with this chance puts the readings at its pins in doubt. From memory. */
const BROKE_LEAST = 0.01;

/** The same check whichever way round, where that makes no difference: ohms and beeps are alike both ways, diode readings are not. */
export function checkKey({ mode, red, black }: Pick<ColdCheck, "mode" | "red" | "black">): string {
  const ordered = mode === "diode" || red < black ? [red, black] : [black, red];
  return [mode, ...ordered].join(" ");
}

/** Keys of the checks whose readings still stand for the bench as it is now; one that nothing explains is open for a second reading. */
export function stillKnown(
  board: Board,
  timeline: Timeline,
  bench: BenchState,
  belief: Belief,
): ReadonlySet<string> {
  const known = new Set<string>();
  const asked = new Set<string>();
  timeline.entries.forEach((entry, at) => {
    const { event, before, logIndex } = entry;
    if (event.do !== "measure" || event.red === undefined || event.black === undefined) return;
    if (!isColdMode(event.mode) || before.powered) return;
    const key = checkKey({ mode: event.mode, red: event.red, black: event.black });
    if (belief.unexplained.includes(logIndex) && !asked.has(key)) {
      asked.add(key);
      return;
    }
    const nets = netsOf(board, event.red, event.black);
    const same = stateAt(board, before, nets) === stateAt(board, bench, nets);
    if (same && !timeline.entries.slice(at + 1).some((later) => changes(board, later, nets, belief)))
      known.add(key);
    else known.delete(key);
  });
  return known;
}

/** The nets that a check is about. Half of the board hangs on its zero: work at a part there says nothing of a reading to it. */
function netsOf(board: Board, red: Place, black: Place): ReadonlySet<string> {
  const zeros = new Set([board.zero, ...board.rails.flatMap(({ against }) => against ?? [])]);
  const both = [red, black].map((place) => netOfPlace(board, place));
  const own = both.filter((net) => !zeros.has(net));
  return new Set(own.length > 0 ? own : both);
}

function touches(board: Board, ref: string, nets: ReadonlySet<string>): boolean {
  return [...(board.parts.get(ref)?.pins.values() ?? [])].some((net) => nets.has(net));
}

/** Lifted pins, absent parts and clips at these nets, as one key. */
function stateAt(board: Board, { lifted, off, clips }: BenchState, nets: ReadonlySet<string>): string {
  const pins = [...lifted].filter((place) => touches(board, pinOfPlace(place)?.ref ?? "", nets));
  const parts = [...off].filter((ref) => touches(board, ref, nets));
  const resistors = clips
    .filter(({ at }) => at.some((place) => nets.has(netOfPlace(board, place))))
    .map(({ at, ohms }) => `${at.join("^")}^${ohms}`);
  return [pins.sort().join(","), parts.sort().join(","), resistors.sort().join(",")].join("|");
}

/** Could what was done here have changed a reading between these nets? */
function changes(board: Board, entry: TimelineEntry, nets: ReadonlySet<string>, belief: Belief): boolean {
  const { event, logIndex } = entry;
  switch (event.do) {
    case "replace":
      return touches(board, event.part, nets);
    case "clean":
    case "resolder":
      return workedOn(board, event).some((ref) => touches(board, ref, nets));
    case "power":
      return [...brokenBy(belief, logIndex)].some((ref) => touches(board, ref, nets));
    default:
      return false;
  }
}

function workedOn(board: Board, event: Exclude<JobEvent, MeasureEvent>): readonly string[] {
  if (event.do !== "clean" && event.do !== "resolder") return [];
  if (event.part !== undefined) return [event.part];
  return [...board.parts.values()].filter(({ stage }) => stage === event.stage).map(({ ref }) => ref);
}

const broken = new WeakMap<Belief, Map<number, ReadonlySet<string>>>();

/** Parts that this power-up may have broken, by the explanations as they are. Every reading before it asks. */
function brokenBy(belief: Belief, logIndex: number): ReadonlySet<string> {
  const known = broken.get(belief) ?? new Map<number, ReadonlySet<string>>();
  broken.set(belief, known);
  const refs = known.get(logIndex) ?? mayHaveBroken(belief, logIndex);
  known.set(logIndex, refs);
  return refs;
}

function mayHaveBroken(belief: Belief, logIndex: number): ReadonlySet<string> {
  const chance = new Map<string, number>();
  for (const { faults, probability } of belief.explanations)
    for (const ref of new Set(
      faults.flatMap((one) => (one.since === logIndex ? [belief.priors[one.fault].part] : [])),
    ))
      chance.set(ref, (chance.get(ref) ?? 0) + probability);
  return new Set([...chance].flatMap(([ref, p]) => (p >= BROKE_LEAST ? [ref] : [])));
}
