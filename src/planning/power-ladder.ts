/** The ladder of a limited power-up: what has been tried on the board as it is now, and which rungs this bench can do next. */
import type { Observed, Place, PowerEvent } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { feedNets, netOfPlace } from "../priors/fed-nets.ts";
import { type FeedHarm, feedHarm } from "../priors/feed-harm.ts";
import { lampFor, limitFor } from "../safety/limiter.ts";
import { motorConnected, motorsOf } from "../safety/motor-check.ts";
import { goodAmps, idleWatts } from "./board-idle.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import { RUNG_FEEDS, type RungId } from "./power-rungs.ts";

/** A power-up that this bench can do. */
export interface Rung {
  readonly id: RungId;
  readonly action: PowerEvent;
  readonly harm: FeedHarm;
}

/** A power-up of the board as it is now. */
export interface Tried {
  readonly id: RungId;
  readonly event: PowerEvent;
  readonly seen: readonly Observed[];
  /** `unread`: the lamp went dark and nobody read the bus, which proves nothing */
  readonly came: "passed" | "stopped" | "unread";
}

interface Ladder {
  readonly tried: readonly Tried[];
  /** rungs without mains, worth their minutes or not */
  readonly lower: readonly Rung[];
  /** the next rung on the mains; null where none is left, or the last one said stop */
  readonly top: Rung | null;
}

const WORK: ReadonlySet<string> = new Set([
  "replace",
  "remove",
  "restore",
  "lift",
  "refit",
  "clean",
  "resolder",
]);
/** Sights after which the next rung may come; a dark or dim lamp only with the bus read. Common practice. */
const FINE: ReadonlySet<Observed> = new Set(["quiet", "lamp-dark", "lamp-dim", "runs"]);
/** A bus under this share of the mains' peak is not charged: dark and empty. From memory: 250 V of 325 is a dim lamp's worst. */
const CHARGED_SHARE = 0.75;

/** Everything tried since the board was last worked on, oldest first. Pulling and plugging a motor is no work on the board. */
export function triedRungs(board: Board, timeline: Timeline): readonly Tried[] {
  const worked = timeline.entries.findLastIndex((entry) => isWork(board, entry));
  const since = timeline.entries.slice(worked + 1);
  return since.flatMap(({ event, before }, at): Tried[] => {
    if (event.do !== "power") return [];
    const until = since.findIndex((next, n) => n > at && ["power", "unpower"].includes(next.event.do));
    const under = since.slice(at + 1, until < 0 ? since.length : until);
    const seen = [event.observed ?? []].flat();
    const id = rungOf(board, before, event);
    const overruled = since.slice(at + 1).some((next) => next.event.do === "overrule");
    const came = cameOf(board, id, seen, busRead(board, under));
    return [{ id, event, seen, came: overruled ? "passed" : came }];
  });
}

function isWork(board: Board, { event }: TimelineEntry): boolean {
  if (!WORK.has(event.do)) return false;
  const ref =
    event.do === "lift" || event.do === "refit"
      ? event.place.slice(0, event.place.indexOf("."))
      : event.do === "remove" || event.do === "restore"
        ? event.part
        : "";
  return board.parts.get(ref)?.kind !== "motor";
}

/** Which rung a power-up was. */
export function rungOf(
  board: Board,
  bench: Pick<TimelineEntry["before"], "off" | "lifted">,
  { feed, at, volts }: PowerEvent,
): RungId {
  if (feed === "lamp") return "E";
  if (feed === "mains") {
    const turns = motorsOf(board, bench.off).some((motor) => motorConnected({ ...IDLE, ...bench }, motor));
    return turns ? "H" : "F";
  }
  const { rail } = typeof at === "object" ? feedNets(board, at) : { rail: null };
  if (rail !== null) return rail.volts > RUNG_FEEDS.driveVolts ? "A" : "B";
  return (volts ?? 0) >= 100 ? "D" : "C";
}

const IDLE = { clips: [], powered: false };

function cameOf(board: Board, id: RungId, seen: readonly Observed[], bus: number | null): Tried["came"] {
  if (!seen.every((one) => FINE.has(one) || (one === "lamp-bright" && seen.includes("lamp-dark"))))
    return "stopped";
  if (id !== "E" || seen.includes("runs")) return "passed";
  if (viewOf(board).roles.bus === null) return "passed";
  if (bus === null) return "unread";
  return bus >= chargedVolts(board) ? "passed" : "stopped";
}

/** Volts from which the bus counts as charged from the mains. */
export function chargedVolts({ supply }: Board): number {
  return CHARGED_SHARE * supply.volts * (supply.kind === "ac" ? Math.SQRT2 : 1);
}

/** The last reading of the bus among these entries. */
function busRead(board: Board, under: readonly TimelineEntry[]): number | null {
  const { bus } = viewOf(board).roles;
  if (bus === null) return null;
  const across = (red: Place | undefined, black: Place | undefined): boolean => {
    const nets = [red, black].map((place) => (place === undefined ? "" : netOfPlace(board, place)));
    return nets.includes(bus.plus) && nets.includes(bus.minus);
  };
  const read = under.findLast(
    ({ event }) => event.do === "measure" && event.mode === "dcv" && across(event.red, event.black),
  )?.event;
  return read?.do === "measure" && typeof read.reading === "number" ? Math.abs(read.reading) : null;
}

/** What can be powered next. Deterministic; a function of the log and of what this bench has. */
export function ladderOf(input: PlanningInput): Ladder {
  const { board, timeline } = input;
  const tried = triedRungs(board, timeline);
  const onMains = tried.filter(({ id }) => id === "E" || id === "F" || id === "H");
  const passedLamp = onMains.some(({ came }) => came === "passed");
  return {
    tried,
    lower: passedLamp ? [] : benchRungs(input).filter(({ action }) => !wasTried(tried, action)),
    top: topRung(input, tried),
  };
}

function wasTried(tried: readonly Tried[], { at, volts }: PowerEvent): boolean {
  return tried.some(({ event }) => event.feed === "bench" && event.volts === volts && sameAt(event.at, at));
}

function sameAt(one: PowerEvent["at"], other: PowerEvent["at"]): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function topRung(input: PlanningInput, tried: readonly Tried[]): Rung | null {
  const { board, equipment, timeline } = input;
  const watts = idleWatts(board);
  const lamps = tried.filter(({ id }) => id === "E");
  const last = lamps.at(-1);
  const pulsed =
    last?.came === "stopped" && last.seen.every((one) => one === "lamp-pulsing" || FINE.has(one));
  // pulsing may be the lamp itself: the next size tells
  if (pulsed && last.seen.includes("lamp-pulsing")) {
    const larger = lampFor(equipment, watts, last.event.watts ?? 0);
    return larger === null ? null : rungAt(input, { do: "power", feed: "lamp", watts: larger.watts });
  }
  // of several lamps the last one counts: a larger one has answered for the one that pulsed
  if (tried.some(({ id, came }, at) => came === "stopped" && (id !== "E" || tried[at] === last))) return null;
  if (tried.some(({ id }) => id === "H")) return null;
  const mains = rungAt(input, { do: "power", feed: "mains" });
  if (tried.some(({ id }) => id === "F"))
    return motorsOf(board, absentParts(input)).some((motor) => motorConnected(timeline.now, motor))
      ? mains
      : null;
  if (lamps.some(({ came }) => came === "passed")) return mains;
  return lampRung(input) ?? mains;
}

function rungAt({ board, timeline }: PlanningInput, action: PowerEvent): Rung {
  return { id: rungOf(board, timeline.now, action), action, harm: feedHarm(board, action) };
}

/** Mains through the smallest lamp at hand that carries the board; null where there is no lamp. */
export function lampRung(input: PlanningInput): Rung | null {
  const lamp = lampFor(input.equipment, idleWatts(input.board));
  return lamp === null ? null : rungAt(input, { do: "power", feed: "lamp", watts: lamp.watts });
}

/** Mains with nothing in between. */
export function mainsRung(input: PlanningInput): Rung {
  return rungAt(input, { do: "power", feed: "mains" });
}

/** The rungs of a bench supply: each rail at its own volts, then the bus. */
export function benchRungs(input: PlanningInput): readonly Rung[] {
  const { board, equipment } = input;
  const { bus, rails } = viewOf(board).roles;
  const rungs: Rung[] = [];
  const add = (volts: number, limitAmps: number, at: readonly [Place, Place]) =>
    rungs.push(rungAt(input, { do: "power", feed: "bench", volts, limitAmps, at }));
  if (equipment.includes("bench-supply")) {
    for (const { net, back, volts } of rails)
      if (volts > 0 && volts <= RUNG_FEEDS.mostRailVolts)
        add(volts, limitFor(goodAmps(board, volts, [net, back])), [net, back]);
    if (bus !== null) add(RUNG_FEEDS.bus.volts, RUNG_FEEDS.bus.limitAmps, [bus.plus, bus.minus]);
  }
  if (equipment.includes("high-voltage-supply") && bus !== null)
    add(RUNG_FEEDS.isolatedBus.volts, RUNG_FEEDS.isolatedBus.limitAmps, [bus.plus, bus.minus]);
  return rungs;
}
