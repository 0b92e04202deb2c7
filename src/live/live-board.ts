/**
 * The live board: what a powered board shows, for a board, a state of the bench, a feed and what was seen at power-up, compiled
 * once and asked for many sets of faults. Behavioural, stage by stage from the mains forward.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Observed } from "../bench/event.ts";
import type { Board } from "../board/board.ts";
import { type Fault, faultName } from "../board/fault.ts";
import { FaultedBoard } from "./faulted-board.ts";
import { fedRail } from "./fed-rail.ts";
import type { Found } from "./found.ts";
import { type Front, loadFront, meanOf, runFront, waveBetween } from "./front.ts";
import type { GivenWay } from "./gives-way.ts";
import { STARVED, SUPPLY_MODEL } from "./live-models.ts";
import { LiveState } from "./live-state.ts";
import { type LiveView, liveView } from "./live-view.ts";
import { isAlive, relaysIn } from "./logic-state.ts";
import type { PowerFeed } from "./power-feed.ts";
import type { RailDraw } from "./rail-load.ts";
import { type RailState, railsOf } from "./rail-state.ts";
import { RailTree } from "./rail-tree.ts";
import { RUN_MODEL, type Running, running } from "./running.ts";
import { type SupplyState, supplyState } from "./secondaries.ts";

/** Relays and supply are looked at again until nothing changes, at most so often. */
const MOST_ROUNDS = 4;
/** Front ends remembered: most faults of a board leave its mains side alone. */
const MOST_FRONTS = 800;
/** The supply's watts count in steps of this ratio: what it draws is known no better. */
const WATTS_STEP = 1.08;

export class LiveBoard {
  readonly board: Board;
  readonly bench: BenchState;
  readonly feed: PowerFeed;
  readonly #seen: readonly Observed[];
  readonly #view: LiveView;
  readonly #good: RailTree;
  readonly #fronts = new Map<string, Front | null>();

  constructor(board: Board, bench: BenchState, feed: PowerFeed, seen: readonly Observed[] = []) {
    this.board = board;
    this.bench = bench;
    this.feed = feed;
    this.#seen = seen;
    this.#view = liveView(board);
    const bare: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: true };
    this.#good = new RailTree(this.#view, new FaultedBoard(board, bare, []), new Map());
  }

  /** What it does when told to run, with just these faults. */
  running(faults: readonly Fault[]): Running {
    const found = this.#find(faults);
    const { bus } = this.#view.roles;
    const { supply } = this.board;
    const peak = supply.volts * (supply.kind === "ac" ? Math.SQRT2 : 1);
    const cold = !limiterStays(this.#view, found.relaysIn);
    const front =
      bus === null || found.front === null
        ? null
        : this.#front(found.board, found.relaysIn, cold, wattsOf(found.supplies), RUN_MODEL.watts);
    const wave =
      bus === null || front === null ? null : waveBetween(front, this.board.zero, bus.plus, bus.minus);
    return running(found, wave === null ? null : meanOf(wave), peak);
  }

  /** What the board shows with just these faults. */
  state(faults: readonly Fault[]): LiveState {
    return new LiveState(this.#find(faults));
  }

  #find(faults: readonly Fault[]): Found {
    const view = this.#view;
    const dead = this.#seen.includes("fuse-blew") ? view.roles.lineFuses : [];
    const whole = new FaultedBoard(this.board, this.bench, faults, new Set(dead));
    if (this.#seen.includes("trip")) return this.#off(whole);
    const fed = fedRail(view, whole, this.feed);
    if (fed !== null) return this.#told(whole, { ...fed, front: null, supplies: [], collapses: false });
    return this.#run(whole);
  }

  #off(whole: FaultedBoard): Found {
    return this.#told(whole, { front: null, supplies: [], collapses: false, limited: 0, tripped: true });
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
        const front = found.front === null ? null : { ...found.front, gave };
        return this.#told(board, { ...found, front, tripped: front?.tripped === true });
      }
      closed = now;
    }
  }

  #round(whole: FaultedBoard, closed: ReadonlySet<string>, cold: boolean) {
    const view = this.#view;
    const idle = this.#front(whole, closed, cold, 0);
    const gave = idle?.gave ?? [];
    const board = whole.with(gave.flatMap(({ part }) => part ?? []));
    const tree = new RailTree(view, board, coils(view, board, closed));
    const supplies = view.supplies.map((plan, i) =>
      supplyState(board, plan, tree, this.#good, idle?.supplyVolts[i] ?? 0),
    );
    const watts = wattsOf(supplies);
    const front = watts > 0 ? this.#front(board, closed, cold, watts) : idle;
    const fails = (supply: SupplyState, i: number): boolean =>
      supply.watts > 0 && (front?.supplyVolts[i] ?? 0) < SUPPLY_MODEL.startVolts;
    const collapses = supplies.some(fails);
    const stands = collapses ? idle : front;
    const told = supplies.map((supply, i) => (fails(supply, i) ? starved(supply) : supply));
    const rails = railsOf(told);
    return {
      board,
      gave,
      tree,
      // One that is pulled down and comes up again stands somewhere below where it would without its load.
      front: stands,
      supplies: told,
      collapses,
      limited: stands?.cycle.limited[0] ?? 0,
      relaysIn: relaysIn(view, board, aliveOf(view, board, rails), rails),
    };
  }

  #told(board: FaultedBoard, found: Omit<Found, "view" | "board" | "feed" | "alive" | "relaysIn">): Found {
    const view = this.#view;
    const rails = found.fedRails ?? railsOf(found.supplies);
    const alive = aliveOf(view, board, rails);
    return {
      ...found,
      view,
      board,
      feed: this.feed,
      alive,
      relaysIn: relaysIn(view, board, alive, rails),
    };
  }

  /** With `watts` drawn by the small supplies. Remembered by what of the faults lies on or near the power path. */
  #front(
    board: FaultedBoard,
    closed: ReadonlySet<string>,
    cold: boolean,
    watts: number,
    motorWatts = 0,
  ): Front | null {
    const view = this.#view;
    const names = board.faults.filter((fault) => onPath(view, fault)).map(faultName);
    const faults = [...names.sort(), ...[...board.opened].sort()].join(",");
    const key = `${faults}|${[...closed].sort().join(",")}|${cold}|${motorWatts}`;
    const conditions = { feed: this.feed, closed, motorWatts, cold };
    const idle = this.#remembered(key, () => runFront(view, board, conditions));
    if (idle === null || watts <= 0) return idle;
    const rounded = WATTS_STEP ** Math.round(Math.log(watts) / Math.log(WATTS_STEP));
    return this.#remembered(`${key}|${rounded}`, () => loadFront(view, idle, conditions, rounded));
  }

  #remembered(key: string, run: () => Front | null): Front | null {
    const known = this.#fronts.get(key);
    if (known !== undefined) return known;
    if (this.#fronts.size >= MOST_FRONTS) this.#fronts.clear();
    const front = run();
    this.#fronts.set(key, front);
    return front;
  }
}

/** Does an inrush part stay in the way, its relay out or none there? Then it warms. */
function limiterStays(view: LiveView, closed: ReadonlySet<string>): boolean {
  const bypassed = new Set([...view.bypasses].flatMap(([relay, part]) => (closed.has(relay) ? [part] : [])));
  return view.roles.inrush.some((ref) => !bypassed.has(ref));
}

function onPath(view: LiveView, fault: Fault): boolean {
  if (fault.of === "part" && view.supplies.some((plan) => plan.switcher === fault.part)) return true;
  const nets =
    fault.of === "nets" ? fault.nets : [...(view.board.parts.get(fault.part)?.pins.values() ?? [])];
  return nets.some((net) => view.nearNets.has(net));
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
