/**
 * The run under load before a board is handed back: what it drives, and what the log tells of it. A boost that never starts, an inrush
 * part left in the way, a leak that cooks: they show in the bus under load, or in that it does not last (common practice).
 */
import { standsWhole } from "../bench/bench-state.ts";
import { isWork } from "../bench/dead-board.ts";
import type { MeasureEvent, Observed, PowerEvent, RunLoad } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Part } from "../board/board.ts";
import { deriveRoles } from "../board/roles.ts";
import { RUN_MODEL } from "../live/running.ts";
import { FULL_RUN_SECONDS } from "../priors/load-outcomes.ts";
import { motorCheck, motorsOf } from "../safety/motor-check.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";

export const LOAD_TEST = {
  /** seconds after switch-on at which readings are taken: small parts have their heat by then, and large ones (common practice) */
  soonSeconds: 20,
  warmSeconds: 120,
  /** one thermal cycle, for a board that is worth the wait */
  endSeconds: FULL_RUN_SECONDS,
  /** watts of a dummy load where the board came without its own (three lamps in a star; common practice), and minutes of wiring it up (from memory) */
  dummyWatts: RUN_MODEL.watts,
  dummyMinutes: 5,
  /** minutes of looking for what is weak in a board that did not hold. From memory. */
  onwardMinutes: 25,
  /** runs of a board that is left as it is, where the first did not hold. From memory. */
  mostRuns: 2,
} as const;

/** A run under load that the log tells of. */
export interface LoadRun {
  readonly power: PowerEvent;
  /** what was seen when it came on */
  readonly seen: readonly Observed[];
  /** what was read since */
  readonly readings: readonly MeasureEvent[];
  /** what it had done when it was switched off; null while it is on, or where nobody said */
  readonly end: readonly Observed[] | null;
  readonly on: boolean;
}

/** The last power-up, where the board was told to drive a load on the mains; null where it was not. */
export function lastLoadRun({ entries, now }: Timeline): LoadRun | null {
  const at = entries.findLastIndex(({ event }) => event.do === "power");
  const run = loadRunAt(entries, at);
  return run === null ? null : { ...run, on: now.powered };
}

function loadRunAt(entries: Timeline["entries"], at: number): Omit<LoadRun, "on"> | null {
  const power = entries[at]?.event;
  if (power?.do !== "power" || power.load === undefined || power.feed !== "mains") return null;
  const since = entries.slice(at + 1);
  const ends = since.findIndex(({ event }) => event.do === "unpower" || event.do === "power");
  const during = ends < 0 ? since : since.slice(0, ends);
  const off = since[ends]?.event;
  return {
    power,
    seen: [power.observed ?? []].flat(),
    readings: during.flatMap(({ event, before }) =>
      event.do === "measure" && before.powered ? [event] : [],
    ),
    end: off?.do === "unpower" && off.observed !== undefined ? [off.observed].flat() : null,
  };
}

/** The runs under load of the board as it is now, in their order. */
function loadRunsAsItIs({ entries }: Timeline): readonly Omit<LoadRun, "on">[] {
  const since = entries.slice(entries.findLastIndex(({ event }) => isWork(event.do)) + 1);
  return since.flatMap((_, at) => loadRunAt(since, at) ?? []);
}

/** Did the board, as it is now, run under load until it was switched off? */
export function heldUnderLoad(timeline: Timeline): boolean {
  return loadRunsAsItIs(timeline).at(-1)?.end?.includes("runs") ?? false;
}

/** Is nothing more to be asked of the board under load: did it hold, or was it tried often enough, or did nobody say how it ended? */
export function isLoadTested(timeline: Timeline): boolean {
  const runs = loadRunsAsItIs(timeline);
  const last = runs.at(-1);
  if (last === undefined) return false;
  return last.end === null || last.end.includes("runs") || runs.length >= LOAD_TEST.mostRuns;
}

/**
 * What the board drives before it is handed back: its own load where that is plugged in, a dummy in place of a motor that did not come
 * with it; null where something stands against its motor, which then stays unplugged. A motor that is unplugged waits for its gate.
 */
export function testLoad(input: PlanningInput): RunLoad | null {
  const { board } = input;
  const motors = motorsOf(board, absentParts(input));
  if (motors.some((motor) => staysApart(input, motor))) return null;
  const drivesMotor = deriveRoles(board).motorSwitches.length > 0;
  return motors.length > 0 || !drivesMotor ? "own" : LOAD_TEST.dummyWatts;
}

function staysApart({ board, timeline }: PlanningInput, motor: Part): boolean {
  if (standsWhole(timeline.now, motor.ref)) return false;
  const { overruled, against } = motorCheck(board, timeline, motor);
  return !overruled && against !== null;
}
