/** Mains to bus: what gives way at switch-on, what the bus then is, and whether the feed can carry the small supply. */
import type { FaultedBoard } from "./faulted-board.ts";
import { type GivenWay, givesWay } from "./gives-way.ts";
import { SUPPLY_MODEL } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import { PathBuilder, type PowerPath, supplyLoad } from "./power-path.ts";
import { type Cycle, settle } from "./settle.ts";

/** Steps a cycle, and how many cycles a settled state may take. */
const STEPS = 320;
const MOST_CYCLES = 90;
/** Cycles after switch-on by which a bus has charged through its limiter and a short has not. */
const FIRST_CYCLES = 40;
/** A bench supply's cycle: long enough to charge a bus at its limit, seconds. */
const DIRECT_SECONDS = 4;

export interface Front {
  readonly path: PowerPath;
  readonly cycle: Cycle;
  /** under a second after switch-on, inrush parts cold and nothing drawn */
  readonly first: Cycle;
  /** the board with what gave way at switch-on */
  readonly board: FaultedBoard;
  readonly gave: readonly GivenWay[];
  /** the outlet's breaker opened: nothing is fed any more */
  readonly tripped: boolean;
  /** mean volts at each small supply's input, with their load on; 0 where it has none in the path */
  readonly supplyVolts: readonly number[];
  /** the same before they draw anything */
  readonly idleVolts: readonly number[];
}

export interface FrontConditions {
  readonly feed: PowerFeed;
  /** relays whose contacts are closed */
  readonly closed: ReadonlySet<string>;
  /** watts that the small supplies draw together; 0: none runs */
  readonly watts: number;
  /** drawn from the bus by what the board drives, watts */
  readonly motorWatts: number;
  /** inrush parts still cold: the first second, in which a good board's relay pulls in */
  readonly cold: boolean;
}

function pathOf(view: LiveView, board: FaultedBoard, conditions: FrontConditions): PowerPath | null {
  const build = new PathBuilder(view, board, conditions.closed);
  if (!build.feed(conditions.feed)) return null;
  build.motor(conditions.motorWatts);
  return build.build();
}

function secondsOf(view: LiveView, feed: PowerFeed): number {
  const { supply } = view.board;
  return feed.kind === "bench" || supply.kind === "dc" ? DIRECT_SECONDS : 1 / (supply.hz ?? 50);
}

/** Volts between two nets as they move through the settled cycle; null where one is not in the path. */
export function waveBetween(
  front: Pick<Front, "path" | "cycle">,
  zero: string,
  one: string,
  far: string,
): Float64Array | null {
  const wave = (net: string): Float64Array | null | undefined => {
    const number = front.path.nets.get(net);
    return net === zero ? null : number === undefined ? undefined : front.cycle.waves[number];
  };
  const [a, b] = [wave(one), wave(far)];
  if (a === undefined || b === undefined) return null;
  return Float64Array.from({ length: STEPS }, (_, k) => (a?.[k] ?? 0) - (b?.[k] ?? 0));
}

export function meanOf(wave: Float64Array): number {
  return wave.reduce((sum, volts) => sum + volts, 0) / wave.length;
}

/** Mean volts at the small supplies' inputs. */
function inputVolts(view: LiveView, path: PowerPath, cycle: Cycle): readonly number[] {
  return view.supplies.map(({ feed, back }) => {
    const wave = waveBetween({ path, cycle }, view.board.zero, feed, back);
    return wave === null ? 0 : meanOf(wave);
  });
}

/**
 * The settled front end under these conditions; null where the feed is not clipped to the power path. What gives way (a fuse, a
 * burnt resistor) does so first, one after the other, and stays open.
 */
export function runFront(view: LiveView, whole: FaultedBoard, conditions: FrontConditions): Front | null {
  const gave: GivenWay[] = [];
  let board = whole;
  const cycleSeconds = secondsOf(view, conditions.feed);
  for (;;) {
    const path = pathOf(view, board, conditions);
    if (path === null) return null;
    const settling = { cycleSeconds, steps: STEPS, cold: conditions.cold };
    const first = settle(path.circuit, { ...settling, mostCycles: FIRST_CYCLES, cold: true });
    const idle = settle(path.circuit, {
      ...settling,
      mostCycles: MOST_CYCLES,
      startVolts: first.endVolts,
      startOhms: first.ohms,
    });
    const given =
      givesWay(board, conditions.feed, path, first) ?? givesWay(board, conditions.feed, path, idle);
    if (given?.how === "trip") {
      const off = { ...path, circuit: { ...path.circuit, sources: [] } };
      const cycle = settle(off.circuit, { ...settling, mostCycles: 2 });
      return { path: off, first: cycle, cycle, board, gave, tripped: true, supplyVolts: [], idleVolts: [] };
    }
    if (given !== null && given.part !== null) {
      gave.push(given);
      board = board.with([given.part]);
      continue;
    }
    const idleVolts = inputVolts(view, path, idle);
    const done = { board, gave, tripped: false, idleVolts, first };
    const load = supplyLoad(view, path, conditions.watts);
    if (load === null || conditions.watts <= 0 || idleVolts.every((volts) => volts < SUPPLY_MODEL.startVolts))
      return { ...done, path, cycle: idle, supplyVolts: idleVolts };
    const loaded = { ...path, circuit: { ...path.circuit, load } };
    const cycle = settle(loaded.circuit, {
      ...settling,
      mostCycles: MOST_CYCLES,
      startVolts: idle.endVolts,
      startOhms: idle.ohms,
    });
    return { ...done, path: loaded, cycle, supplyVolts: inputVolts(view, loaded, cycle) };
  }
}
