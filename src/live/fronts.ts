/**
 * The front ends of one bench and feed, each circuit settled once: faults that leave the power path as it is, or change it alike,
 * share theirs.
 */
import type { FaultedBoard } from "./faulted-board.ts";
import { Front, meanBetween } from "./front.ts";
import { type GivenWay, givesWay } from "./gives-way.ts";
import { SUPPLY_MODEL } from "./live-models.ts";
import type { LiveView } from "./live-view.ts";
import type { PowerFeed } from "./power-feed.ts";
import { circuitText, PathBuilder, type PowerPath, supplyLoad } from "./power-path.ts";
import { Remembered } from "./remembered.ts";
import { type Rough, roughly, type Settling, type Totals } from "./settle.ts";

/** Steps a shown cycle, and how many cycles a settled state may take. */
const STEPS = 320;
const MOST_CYCLES = 90;
/** Cycles after switch-on by which a bus has charged through its limiter and a short has not. */
const FIRST_CYCLES = 40;
/** A bench supply's cycle: long enough to charge a bus at its limit, seconds. */
const DIRECT_SECONDS = 4;
/** Circuits remembered: most faults of a board leave its mains side alone. */
const MOST_FRONTS = 1000;
/** The supplies' watts count in steps of this ratio: what they draw is known no better. */
const WATTS_STEP = 1.08;

export interface FrontConditions {
  /** relays whose contacts are closed */
  readonly closed: ReadonlySet<string>;
  /** watts that the small supplies draw together; 0: none runs */
  readonly watts: number;
  /** drawn from the bus by what the board drives, watts */
  readonly motorWatts: number;
  /** inrush parts still cold: the first second, in which a good board's relay pulls in */
  readonly cold: boolean;
}

/** One circuit with nothing drawn from it, what of it gives way, and the same under the loads asked for so far. */
interface Idle {
  readonly path: PowerPath;
  readonly first: Totals;
  readonly settled: Rough;
  /** at each small supply's input */
  readonly volts: readonly number[];
  readonly given: GivenWay | null;
  readonly loaded: Map<number, Front>;
}

/** What is left of a board on power once all has given way that does. */
interface Standing {
  readonly idle: Idle;
  readonly gave: readonly GivenWay[];
}

export class Fronts {
  readonly #view: LiveView;
  readonly #feed: PowerFeed;
  readonly #standing = new Remembered<Standing | null>();
  readonly #idles = new Map<string, Idle>();

  constructor(view: LiveView, feed: PowerFeed) {
    this.#view = view;
    this.#feed = feed;
  }

  /**
   * The settled front end under these conditions; null where the feed is not clipped to the power path. What gives way (a fuse, a
   * burnt resistor) does so first, one after the other, and stays open.
   */
  at(board: FaultedBoard, conditions: FrontConditions): Front | null {
    const { closed, cold, motorWatts } = conditions;
    const standing = this.#standing.of(board, `${[...closed].join(",")}|${cold}|${motorWatts}`, (seen) =>
      this.#stand(seen, conditions),
    );
    if (standing === null) return null;
    const { idle, gave } = standing;
    const { watts } = conditions;
    const rounded = watts <= 0 ? 0 : WATTS_STEP ** Math.round(Math.log(watts) / Math.log(WATTS_STEP));
    const known = idle.loaded.get(rounded) ?? this.#load(idle, rounded, conditions.cold);
    idle.loaded.set(rounded, known);
    return gave.length === 0 ? known : known.after(gave);
  }

  #stand(whole: FaultedBoard, conditions: FrontConditions): Standing | null {
    const gave: GivenWay[] = [];
    for (let board = whole; ; ) {
      const path = this.#pathOf(board, conditions);
      if (path === null) return null;
      const idle = this.#idle(board, path, conditions.cold);
      const part = idle.given?.part ?? null;
      if (idle.given === null || part === null) return { idle, gave };
      gave.push(idle.given);
      board = board.with([part]);
    }
  }

  #pathOf(board: FaultedBoard, { closed, motorWatts }: FrontConditions): PowerPath | null {
    const build = new PathBuilder(this.#view, board, closed);
    if (!build.feed(this.#feed)) return null;
    build.motor(motorWatts);
    return build.build();
  }

  #settling(cold: boolean): Settling {
    const { supply } = this.#view.board;
    const direct = this.#feed.kind === "bench" || supply.kind === "dc";
    return {
      cycleSeconds: direct ? DIRECT_SECONDS : 1 / (supply.hz ?? 50),
      steps: STEPS,
      mostCycles: MOST_CYCLES,
      cold,
    };
  }

  #idle(board: FaultedBoard, path: PowerPath, cold: boolean): Idle {
    const warms = !cold && path.circuit.resistors.some(({ heats }) => heats?.slow === true);
    const key = `${warms}|${circuitText(path)}`;
    const known = this.#idles.get(key);
    if (known !== undefined) return known;
    if (this.#idles.size >= MOST_FRONTS) this.#idles.clear();
    const idle = this.#settleIdle(board, path, warms);
    this.#idles.set(key, idle);
    return idle;
  }

  #settleIdle(board: FaultedBoard, path: PowerPath, warms: boolean): Idle {
    const first = roughly(path.circuit, { ...this.#settling(true), mostCycles: FIRST_CYCLES });
    const settled = warms
      ? roughly(path.circuit, {
          ...this.#settling(false),
          startVolts: first.cycle.endVolts,
          startOhms: first.cycle.ohms,
        })
      : first;
    const given =
      givesWay(board, this.#feed, path, first.cycle) ??
      (warms ? givesWay(board, this.#feed, path, settled.cycle) : null);
    if (given?.how === "trip") return this.#tripped(path, given);
    const volts = this.#inputVolts(path, settled.cycle);
    return { path, first: first.cycle, settled, volts, given, loaded: new Map() };
  }

  #tripped(path: PowerPath, given: GivenWay): Idle {
    const off = { ...path, circuit: { ...path.circuit, sources: [] } };
    const settled = roughly(off.circuit, { ...this.#settling(true), mostCycles: 2 });
    return { path: off, first: settled.cycle, settled, volts: [], given, loaded: new Map() };
  }

  #load(idle: Idle, watts: number, cold: boolean): Front {
    const { path, first, settled, volts } = idle;
    const found = { first, gave: [], tripped: idle.given?.how === "trip", idleVolts: volts };
    const load = supplyLoad(this.#view, path, watts);
    if (load === null || watts <= 0 || volts.every((one) => one < SUPPLY_MODEL.startVolts))
      return new Front({ ...found, path, settled, supplyVolts: volts });
    const loaded = { ...path, circuit: { ...path.circuit, load } };
    const under = roughly(loaded.circuit, {
      ...this.#settling(cold),
      startVolts: settled.cycle.endVolts,
      startOhms: settled.cycle.ohms,
    });
    return new Front({
      ...found,
      path: loaded,
      settled: under,
      supplyVolts: this.#inputVolts(loaded, under.cycle),
    });
  }

  /** Mean volts at the small supplies' inputs. */
  #inputVolts(path: PowerPath, cycle: Totals): readonly number[] {
    const { supplies, board } = this.#view;
    return supplies.map(({ feed, back }) => meanBetween(path, cycle, board.zero, feed, back) ?? 0);
  }
}
