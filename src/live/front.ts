/** Mains to bus: what gives way at switch-on, what the bus then is, and whether the feed can carry the small supply. */
import type { FaultedBoard } from "./faulted-board.ts";
import { type GivenWay, givesWay } from "./gives-way.ts";
import { SUPPLY_MODEL } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import { PathBuilder, type PowerPath, supplyLoad } from "./power-path.ts";
import { type Cycle, type Settling, settle } from "./settle.ts";

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

/** Steps that tell a short from a bus that has charged. */
const FIRST_STEPS = 64;

function settlingOf(view: LiveView, { feed, cold }: FrontConditions): Settling {
  return { cycleSeconds: secondsOf(view, feed), steps: STEPS, mostCycles: MOST_CYCLES, cold };
}

/**
 * The settled front end before anything is drawn; null where the feed is not clipped to the power path. What gives way (a fuse, a
 * burnt resistor) does so first, one after the other, and stays open.
 */
export function runFront(view: LiveView, whole: FaultedBoard, conditions: FrontConditions): Front | null {
  const gave: GivenWay[] = [];
  let board = whole;
  const settling = settlingOf(view, conditions);
  for (;;) {
    const path = pathOf(view, board, conditions);
    if (path === null) return null;
    const early = { ...settling, steps: FIRST_STEPS, mostCycles: FIRST_CYCLES, cold: true };
    const first = settle(path.circuit, early);
    const start = { startVolts: first.endVolts, startOhms: first.ohms };
    const cycle = settle(path.circuit, { ...settling, ...start });
    const given =
      givesWay(board, conditions.feed, path, first) ?? givesWay(board, conditions.feed, path, cycle);
    if (given?.how === "trip") {
      const off = { ...path, circuit: { ...path.circuit, sources: [] } };
      const dark = settle(off.circuit, { ...settling, mostCycles: 2 });
      return { path: off, first: dark, cycle: dark, gave, tripped: true, supplyVolts: [], idleVolts: [] };
    }
    if (given !== null && given.part !== null) {
      gave.push(given);
      board = board.with([given.part]);
      continue;
    }
    const idleVolts = inputVolts(view, path, cycle);
    return { path, first, cycle, gave, tripped: false, idleVolts, supplyVolts: idleVolts };
  }
}

/** The same front end with the small supplies drawing `watts` together, from where it stood without. */
export function loadFront(view: LiveView, idle: Front, conditions: FrontConditions, watts: number): Front {
  const load = supplyLoad(view, idle.path, watts);
  if (load === null || idle.idleVolts.every((volts) => volts < SUPPLY_MODEL.startVolts)) return idle;
  const path = { ...idle.path, circuit: { ...idle.path.circuit, load } };
  const start = { startVolts: idle.cycle.endVolts, startOhms: idle.cycle.ohms };
  const cycle = settle(path.circuit, { ...settlingOf(view, conditions), ...start });
  return { ...idle, path, cycle, supplyVolts: inputVolts(view, path, cycle) };
}
