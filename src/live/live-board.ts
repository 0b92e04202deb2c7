/**
 * The live board: what a powered board shows, for a board, a state of the bench, a feed and what was seen at power-up, compiled
 * once and asked for many sets of faults. Behavioural, stage by stage from the mains forward.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { FaultedBoard } from "./faulted-board.ts";
import { type FedRail, fedRail } from "./fed-rail.ts";
import type { Found } from "./found.ts";
import { type Front, meanBetween } from "./front.ts";
import { Fronts } from "./fronts.ts";
import type { GivenWay } from "./gives-way.ts";
import { STARVED, SUPPLY_MODEL } from "./live-models.ts";
import { LiveState } from "./live-state.ts";
import { type LiveView, liveView } from "./live-view.ts";
import { isAlive, relaysIn } from "./logic-state.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { RailDraw } from "./rail-load.ts";
import type { RailState } from "./rail-state.ts";
import { RailTree } from "./rail-tree.ts";
import { Remembered } from "./remembered.ts";
import type { BoardLoad, Running } from "./run-state.ts";
import { OWN_LOAD, running } from "./running.ts";
import { type SupplyState, supplyState } from "./secondaries.ts";
import { underLoad } from "./under-load.ts";

/** Relays and supply are looked at again until nothing changes, at most so often. */
const MOST_ROUNDS = 4;

/** Small supplies and the rails that they make; the same list as long as they are the same. */
interface Supplied {
  readonly supplies: readonly SupplyState[];
  readonly rails: readonly RailState[];
}

const UNSUPPLIED: Supplied = { supplies: [], rails: [] };

/** The small supplies under some load, and the same once it shows which of them their feed does not carry. */
interface Fed {
  readonly tree: RailTree;
  readonly supplies: readonly SupplyState[];
  readonly carried: Map<string, Supplied>;
}

/** Controllers that run and relays that are in, at given rails. */
interface Logic {
  readonly alive: ReadonlySet<string>;
  readonly relaysIn: ReadonlySet<string>;
}

export class LiveBoard {
  readonly board: Board;
  readonly bench: BenchState;
  readonly feed: PowerFeed;
  readonly #seen: readonly Observed[];
  readonly #load: BoardLoad | null;
  readonly #view: LiveView;
  readonly #good: RailTree;
  readonly #fronts: Fronts;
  readonly #fedRails = new Remembered<FedRail | null>();
  readonly #supplies = new Remembered<Fed>();
  readonly #logics = new WeakMap<readonly RailState[], Remembered<Logic>>();

  /** @param load - what it was told to drive; null: it stands idle */
  constructor(
    board: Board,
    bench: BenchState,
    feed: PowerFeed,
    seen: readonly Observed[] = [],
    load: BoardLoad | null = null,
  ) {
    this.board = board;
    this.bench = bench;
    this.feed = feed;
    this.#load = load;
    this.#seen = seen;
    this.#view = liveView(board);
    this.#fronts = new Fronts(this.#view, feed);
    const bare: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: true };
    this.#good = new RailTree(this.#view, new FaultedBoard(board, bare, []), new Map());
  }

  /** What it does when told to run, with just these faults. */
  running(faults: readonly Fault[]): Running {
    return this.#runs(this.#find(faults), this.#load ?? OWN_LOAD).run;
  }

  /** What the board shows with just these faults. */
  state(faults: readonly Fault[]): LiveState {
    const found = this.#find(faults);
    const load = this.#load;
    return new LiveState(load === null ? found : underLoad(found, this.#runs(found, load), load));
  }

  /** What becomes of it when told to drive the load, and its front end with the load's watts drawn from the bus. */
  #runs(found: Found, load: BoardLoad): { readonly run: Running; readonly front: Front | null } {
    const { bus } = this.#view.roles;
    const { supply } = this.board;
    const peak = supply.volts * (supply.kind === "ac" ? Math.SQRT2 : 1);
    const cold = !limiterStays(this.#view, found.relaysIn);
    const front =
      bus === null || found.front === null
        ? null
        : this.#front(found.board, found.relaysIn, cold, wattsOf(found.supplies), load.watts);
    const volts =
      bus === null || front === null
        ? null
        : meanBetween(front.path, front.cycle, this.board.zero, bus.plus, bus.minus);
    return { run: running(found, volts, peak, load), front };
  }

  #find(faults: readonly Fault[]): Found {
    const view = this.#view;
    const dead = this.#seen.includes("fuse-blew") ? view.roles.lineFuses : [];
    const whole = new FaultedBoard(this.board, this.bench, faults, new Set(dead));
    if (this.#seen.includes("trip")) return this.#off(whole);
    const fed = this.#fedRails.of(whole, "", (board) => fedRail(view, board, this.feed));
    if (fed !== null) return this.#told(whole, { ...fed, front: null, supplies: [], collapses: false });
    return this.#run(whole);
  }

  #off(whole: FaultedBoard): Found {
    const nothing = { front: null, collapses: false, limited: 0, tripped: true };
    return this.#told(whole, { ...UNSUPPLIED, ...nothing });
  }

  /** Front, supply, rails, controllers, relays, and round again until the relays stay as they are; then inrush parts warm up. */
  #run(whole: FaultedBoard): Found {
    let board = whole;
    let closed: ReadonlySet<string> = new Set();
    const gave: GivenWay[] = [];
    let cold = true;
    for (let round = 1; ; round++) {
      const found = this.#round(board, closed, cold);
      board = found.board;
      gave.push(...found.gave.filter((one) => !gave.some((known) => known.part === one.part)));
      const now = found.relaysIn;
      const same = now.size === closed.size && [...now].every((ref) => closed.has(ref));
      if ((same || found.collapses) && cold && limiterStays(this.#view, now)) {
        cold = false;
        continue;
      }
      if (same || found.collapses || round >= MOST_ROUNDS) {
        const front = found.front === null ? null : found.front.after(gave);
        return this.#told(board, { ...found, front, tripped: front?.tripped === true });
      }
      closed = now;
    }
  }

  #round(whole: FaultedBoard, closed: ReadonlySet<string>, cold: boolean) {
    const idle = this.#front(whole, closed, cold, 0);
    const gave = idle?.gave ?? [];
    const board = gave.length === 0 ? whole : whole.with(gave.flatMap(({ part }) => part ?? []));
    const fed = this.#fed(board, closed, idle?.supplyVolts ?? []);
    const watts = wattsOf(fed.supplies);
    const front = watts > 0 ? this.#front(board, closed, cold, watts) : idle;
    const { supplies, rails, collapses } = carried(fed, front?.supplyVolts ?? []);
    const stands = collapses ? idle : front;
    return {
      board,
      gave,
      tree: fed.tree,
      // One that is pulled down and comes up again stands somewhere below where it would without its load.
      front: stands,
      supplies,
      rails,
      collapses,
      limited: stands?.limited ?? 0,
      relaysIn: this.#logic(board, rails).relaysIn,
    };
  }

  /** The small supplies with these volts at their inputs. */
  #fed(whole: FaultedBoard, closed: ReadonlySet<string>, inputVolts: readonly number[]): Fed {
    const view = this.#view;
    // Of their inputs only this is looked at.
    const starts = view.supplies.map((_, i) => (inputVolts[i] ?? 0) >= SUPPLY_MODEL.startVolts);
    return this.#supplies.of(whole, `${[...closed].join(",")}|${starts.join(",")}`, (board) => {
      const tree = new RailTree(view, board, coils(view, board, closed));
      const supplies = view.supplies.map((plan, i) =>
        supplyState(board, plan, tree, this.#good, inputVolts[i] ?? 0),
      );
      return { tree, supplies, carried: new Map() };
    });
  }

  #logic(whole: FaultedBoard, rails: readonly RailState[]): Logic {
    const view = this.#view;
    const known = this.#logics.get(rails) ?? new Remembered<Logic>();
    this.#logics.set(rails, known);
    return known.of(whole, "", (board) => {
      const alive = aliveOf(view, board, rails);
      return { alive, relaysIn: relaysIn(view, board, alive, rails) };
    });
  }

  #told(board: FaultedBoard, found: Omit<Found, "view" | "board" | "feed" | "alive" | "relaysIn">): Found {
    return { ...found, view: this.#view, board, feed: this.feed, ...this.#logic(board, found.rails) };
  }

  #front(
    board: FaultedBoard,
    closed: ReadonlySet<string>,
    cold: boolean,
    watts: number,
    motorWatts = 0,
  ): Front | null {
    return this.#fronts.at(board, { closed, watts, motorWatts, cold });
  }
}

/** Does an inrush part stay in the way, its relay out or none there? Then it warms. */
function limiterStays(view: LiveView, closed: ReadonlySet<string>): boolean {
  const bypassed = new Set([...view.bypasses].flatMap(([relay, part]) => (closed.has(relay) ? [part] : [])));
  return view.roles.inrush.some((ref) => !bypassed.has(ref));
}

/** A supply that its feed cannot carry: up for moments, dead for the rest. */
function starved(supply: SupplyState): SupplyState {
  const rails = supply.rails.map((rail) => ({
    ...rail,
    volts: rail.volts * STARVED.share,
    rippleVolts: rail.volts * STARVED.ripple,
    share: STARVED.doubt,
    steady: false,
  }));
  return { ...supply, mode: "hiccup", why: "the feed cannot carry it", rails };
}

/** What becomes of the supplies with these volts at their inputs under their load, and whether one of them collapses. */
function carried(fed: Fed, loadedVolts: readonly number[]): Supplied & { readonly collapses: boolean } {
  const fails = fed.supplies.map(
    ({ watts }, i) => watts > 0 && (loadedVolts[i] ?? 0) < SUPPLY_MODEL.startVolts,
  );
  const key = fails.join(",");
  let found = fed.carried.get(key);
  if (found === undefined) {
    const supplies = fed.supplies.map((supply, i) => (fails[i] ? starved(supply) : supply));
    found = { supplies, rails: supplies.flatMap(({ rails }) => rails) };
    fed.carried.set(key, found);
  }
  return { ...found, collapses: fails.includes(true) };
}

function wattsOf(supplies: readonly SupplyState[]): number {
  return supplies.reduce((sum, supply) => sum + supply.watts, 0);
}

function aliveOf(view: LiveView, board: FaultedBoard, rails: readonly RailState[]): ReadonlySet<string> {
  return new Set(view.roles.controllers.filter((one) => isAlive(board, one, rails)).map((one) => one.part));
}

/** Coils of closed relays as loads of their rails. */
function coils(
  view: LiveView,
  board: FaultedBoard,
  closed: ReadonlySet<string>,
): ReadonlyMap<string, RailDraw> {
  const found = new Map<string, RailDraw>();
  for (const ref of closed) {
    const relay = board.part(ref);
    const rail = view.board.rails.find((one) => one.net === relay?.pins.get("coil1"));
    if (relay === null || rail === undefined) continue;
    const siemens = 1 / board.throughOhms(ref, "coil", relay.value.coilOhms ?? 400);
    found.set(rail.name, {
      part: ref,
      siemens: siemens + (found.get(rail.name)?.siemens ?? 0),
      wanted: true,
    });
  }
  return found;
}
