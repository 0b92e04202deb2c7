/** The ladder of a limited power-up: what has been tried on the board as it is now, and which rungs this bench can do next. */
import { isWorkOn } from "../bench/dead-board.ts";
import type { Observed, Place, PowerEvent } from "../bench/event.ts";
import { isInjection } from "../bench/injection.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { railEnds } from "../board/rail-ends.ts";
import { FEED_MODEL } from "../live/power-feed.ts";
import { viewOf } from "../priors/circuit-view.ts";
import { feedNets } from "../priors/fed-nets.ts";
import { lampFor, limitFor } from "../safety/limiter.ts";
import { connectedMotors } from "../safety/motor-check.ts";
import { goodAmps, idleWatts } from "./board-idle.ts";
import { busShown, hasBus } from "./bus-proof.ts";
import type { PlanningInput } from "./planning-input.ts";
import { RUNG_FEEDS, type RungId } from "./power-rungs.ts";

/** A power-up that this bench can do. */
export interface Rung {
  readonly id: RungId;
  readonly action: PowerEvent;
}

/** A power-up of the board as it is now. */
export interface Tried {
  readonly id: RungId;
  readonly event: PowerEvent;
  readonly seen: readonly Observed[];
  /** `unread`: nothing stood against it, but nothing shows that the bus stands, and a lamp gone dark proves nothing without it */
  readonly came: "passed" | "stopped" | "unread";
}

/** Sights after which the next rung may come; a dark or dim lamp only with the bus read. Common practice. */
export const FINE: ReadonlySet<Observed> = new Set(["quiet", "lamp-dark", "lamp-dim", "runs"]);

/** Everything tried since the board was last worked on, oldest first. Pulling and plugging a motor is no work on the board. */
export function triedRungs(board: Board, timeline: Timeline): readonly Tried[] {
  const { entries } = timeline;
  const since = entries.slice(entries.findLastIndex(({ event }) => isWorkOn(board, event)) + 1);
  return since.flatMap(({ event, before }, at): Tried[] => {
    if (event.do !== "power" || isInjection(event)) return [];
    const off = since.findIndex((next, n) => n > at && ["power", "unpower"].includes(next.event.do));
    const under = since.slice(at + 1, off < 0 ? since.length : off);
    const seen = [event.observed ?? []].flat();
    const wentOn = since
      .slice(at + 1)
      .some((next) => next.event.do === "overrule" && (next.event.of ?? "proposal") === "proposal");
    const came = wentOn ? "passed" : cameOf(board, event, seen, under);
    return [{ id: rungOf(board, before, event), event, seen, came }];
  });
}

/** Which rung a power-up is. */
export function rungOf(
  board: Board,
  bench: Pick<TimelineEntry["before"], "off" | "lifted">,
  { feed, at, volts }: PowerEvent,
): RungId {
  if (feed === "lamp") return "E";
  if (feed === "mains") return connectedMotors(board, bench).length > 0 ? "H" : "F";
  const { rail } = typeof at === "object" ? feedNets(board, at) : { rail: null };
  if (rail !== null) return Math.abs(rail.volts) > RUNG_FEEDS.driveVolts ? "A" : "B";
  return (volts ?? 0) >= RUNG_FEEDS.leastIsolatedVolts ? "D" : "C";
}

function cameOf(
  board: Board,
  { feed, watts }: PowerEvent,
  seen: readonly Observed[],
  under: readonly TimelineEntry[],
): Tried["came"] {
  if (seen.length === 0 || !seen.every((one) => FINE.has(one))) return "stopped";
  if (feed !== "lamp" || seen.includes("runs") || !hasBus(board)) return "passed";
  const readings = under.flatMap(({ event }) => (event.do === "measure" ? [event] : []));
  const bus = busShown(board, watts ?? FEED_MODEL.lampWatts, seen, readings);
  return bus === "stands" ? "passed" : bus === "missing" ? "stopped" : "unread";
}

/**
 * The next rung on the mains: the lamp, again where its bus was not read, a larger one where the first pulsed, then the mains; where
 * the largest pulsed and did nothing else, the mains at their own risk, because the lamp itself may be why. Null where none is left, or
 * the last one said stop.
 */
export function nextOnMains(input: PlanningInput): Rung | null {
  const { board, equipment, timeline } = input;
  const tried = triedRungs(board, timeline);
  const mains = mainsRung(input);
  const lamp = tried.findLast(({ id }) => id === "E");
  const mayBeLamp = lamp?.came === "stopped" && pulsed(lamp);
  const larger = mayBeLamp ? lampFor(equipment, idleWatts(board), lamp.event.watts ?? 0) : null;
  if (larger !== null) return { id: "E", action: lampOf(larger.watts) };
  // of several lamps the last one counts: a larger one has answered for the one that pulsed
  if (tried.some((one) => one.came === "stopped" && (one.id !== "E" || (one === lamp && !mayBeLamp))))
    return null;
  if (tried.some(({ id }) => id === "H")) return null;
  if (tried.some(({ id }) => id === "F")) return mains.id === "H" ? mains : null;
  return lamp?.came === "passed" || mayBeLamp ? mains : (lampRung(input) ?? mains);
}

/** Pulsing alone may be the lamp itself: the next size tells. */
export function pulsed({ seen }: Tried): boolean {
  return seen.includes("lamp-pulsing") && seen.every((one) => one === "lamp-pulsing" || FINE.has(one));
}

const lampOf = (watts: number) => ({ do: "power", feed: "lamp", watts }) as const;

/** Mains through the smallest lamp at hand that carries the board; null where there is no lamp. */
export function lampRung({ board, equipment }: PlanningInput): Rung | null {
  const lamp = lampFor(equipment, idleWatts(board));
  return lamp === null ? null : { id: "E", action: lampOf(lamp.watts) };
}

/** Mains with nothing in between, with the motor or without as it is plugged now. */
export function mainsRung({ board, timeline }: PlanningInput): Rung {
  const action = { do: "power", feed: "mains" } as const;
  return { id: rungOf(board, timeline.now, action), action };
}

/** The rungs of a bench supply: each rail at its own volts, then the bus. None where the bench has no supply. */
export function benchRungs({ board, equipment }: PlanningInput): readonly Rung[] {
  const low = equipment.includes("bench-supply");
  const high = equipment.includes("high-voltage-supply");
  if (!low && !high) return [];
  const { bus, rails } = viewOf(board).roles;
  const rungs: Rung[] = [];
  const add = (id: RungId, volts: number, limitAmps: number, at: readonly [Place, Place]) =>
    rungs.push({ id, action: { do: "power", feed: "bench", volts, limitAmps, at } });
  for (const rail of low ? rails : []) {
    const volts = Math.abs(rail.volts);
    if (volts > RUNG_FEEDS.mostRailVolts) continue;
    const ends = railEnds(rail);
    add(volts > RUNG_FEEDS.driveVolts ? "A" : "B", volts, limitFor(goodAmps(board, volts, ends)), ends);
  }
  if (bus === null) return rungs;
  const { bus: onBus, isolatedBus } = RUNG_FEEDS;
  if (low) add("C", onBus.volts, onBus.limitAmps, [bus.plus, bus.minus]);
  if (high) add("D", isolatedBus.volts, isolatedBus.limitAmps, [bus.plus, bus.minus]);
  return rungs;
}

/** Those not tried on the board as it is; none once the mains have been borne. */
export function openBenchRungs(input: PlanningInput): readonly Rung[] {
  const rungs = benchRungs(input);
  if (rungs.length === 0) return [];
  const tried = triedRungs(input.board, input.timeline);
  if (tried.some(({ event, came }) => event.feed !== "bench" && came === "passed")) return [];
  const samePlaces = (one: PowerEvent["at"], other: PowerEvent["at"]) => `${one}` === `${other}`;
  return rungs.filter(
    ({ action }) =>
      !tried.some(({ event }) => event.volts === action.volts && samePlaces(event.at, action.at)),
  );
}
