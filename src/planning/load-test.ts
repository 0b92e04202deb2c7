/**
 * The load test after a board has run: told to drive its load for one thermal cycle, with readings that tell a board that works from
 * one that only runs. What a minute at idle cannot show (a boost that never starts, an inrush part left in the way, a leak that
 * cooks) shows in the bus under load, in warmth, or in that it does not last (common practice).
 */
import type { LiveMode, MeasureEvent, Observed, Place, PowerEvent, RunLoad } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { deriveRoles } from "../board/roles.ts";
import { RUN_MODEL } from "../live/running.ts";
import { FULL_RUN_SECONDS } from "../priors/load-outcomes.ts";
import { bitsOf } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { bestClips, staysOn } from "./live-clips.ts";
import { livePartition } from "./live-partition.ts";
import { absentParts, type PlanningInput } from "./planning-input.ts";
import type { Action } from "./proposal.ts";

export const LOAD_TEST = {
  /** seconds after switch-on at which readings are taken: small parts have their heat by then, large ones, the whole board (common practice) */
  soonSeconds: 20,
  warmSeconds: 120,
  endSeconds: FULL_RUN_SECONDS,
  /** watts of a dummy load where the board came without its own (three lamps in a star; common practice) */
  dummyWatts: RUN_MODEL.watts,
  /** parts whose warmth is taken: suspected ones that it would tell of, and those fitted. From memory. */
  suspectsWarm: 2,
  fittedWarm: 2,
  /** bits below which a reading is not worth its turn. From memory. */
  leastBits: 0.005,
} as const;

/** Parts that give off heat enough to be worth a thermometer after they were fitted. */
const WARM_KINDS: ReadonlySet<string> = new Set([
  "bridge",
  "mosfet",
  "igbt",
  "module",
  "diode",
  "regulator",
  "switcher",
  "transformer",
  "relay",
  "ntc",
  "ptc",
  "controller",
]);

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
  const power = entries[at]?.event;
  if (power?.do !== "power" || power.load === undefined || power.feed !== "mains") return null;
  const since = entries.slice(at + 1);
  const off = since.find(({ event }) => event.do === "unpower")?.event;
  return {
    power,
    seen: [power.observed ?? []].flat(),
    readings: since.flatMap(({ event, before }) => (event.do === "measure" && before.powered ? [event] : [])),
    end: off?.do === "unpower" && off.observed !== undefined ? [off.observed].flat() : null,
    on: now.powered,
  };
}

/** What the board drives in its test: its own load where that is there, else a dummy. */
export function testLoad(input: PlanningInput): RunLoad {
  const absent = absentParts(input);
  const { parts } = input.board;
  const hasMotor = [...parts.values()].some(({ kind, ref }) => kind === "motor" && !absent.has(ref));
  const drivesMotor = deriveRoles(input.board).motorSwitches.length > 0;
  return hasMotor || !drivesMotor ? "own" : LOAD_TEST.dummyWatts;
}

/** The power-up of the test, its meters where they tell most of what is still believed; across the bus where nothing does. */
export function loadTestPower(input: PlanningInput, hypotheses: Hypotheses): Action {
  const power: PowerEvent = { do: "power", feed: "mains", load: testLoad(input) };
  const clips = bestClips(input, hypotheses, power).map(({ places }) => places);
  const { bus } = deriveRoles(input.board);
  const meters = clips.length > 0 ? clips : bus === null ? [] : [[bus.plus, bus.minus] as const];
  return meters.length === 0 ? power : { ...power, meters };
}

type LiveMeasure = Omit<MeasureEvent, "reading"> & { readonly mode: LiveMode };

/** The readings to take now, at one moment after switch-on; none once the run has lasted and all are taken. */
export function loadReadings(
  input: PlanningInput,
  hypotheses: Hypotheses,
  run: LoadRun,
): readonly LiveMeasure[] {
  if (!run.on || run.seen.some((word) => !staysOn(word))) return [];
  const { soonSeconds, warmSeconds, endSeconds } = LOAD_TEST;
  const meters = run.power.meters ?? [];
  const warmth = warmParts(input, hypotheses, run.power);
  const volts = (mode: "dcv" | "acv", [red, black]: readonly [Place, Place], afterPower: number) =>
    ({ do: "measure", mode, red, black, afterPower }) as const;
  const plan: readonly (readonly LiveMeasure[])[] = [
    meters.flatMap((places) => [
      volts("dcv", places, soonSeconds),
      ...(tells(input, hypotheses, run.power, volts("acv", places, soonSeconds))
        ? [volts("acv", places, soonSeconds)]
        : []),
    ]),
    warmth.map((one) => ({ ...one, afterPower: warmSeconds })),
    [
      ...meters.map((places) => volts("dcv", places, endSeconds)),
      ...warmth.map((one) => ({ ...one, afterPower: endSeconds })),
    ],
  ];
  for (const moment of plan) {
    const open = moment.filter((wanted) => !run.readings.some((taken) => sameReading(taken, wanted)));
    if (open.length > 0) return open;
  }
  return [];
}

/** A first reading that names no seconds counts for the first moment. */
function sameReading(taken: MeasureEvent, wanted: LiveMeasure): boolean {
  return (
    taken.mode === wanted.mode &&
    taken.red === wanted.red &&
    taken.black === wanted.black &&
    taken.part === wanted.part &&
    (taken.afterPower ?? LOAD_TEST.soonSeconds) >= (wanted.afterPower ?? 0)
  );
}

function tells(input: PlanningInput, hypotheses: Hypotheses, power: PowerEvent, check: LiveMeasure): boolean {
  const partition = livePartition(input, hypotheses, power, check);
  return partition !== null && bitsOf(partition, hypotheses) > LOAD_TEST.leastBits;
}

/** Whose warmth is taken, from outside, with what this bench has for it: the suspected that it would tell of, then the fitted. */
function warmParts(input: PlanningInput, hypotheses: Hypotheses, power: PowerEvent): readonly LiveMeasure[] {
  const by = input.equipment.includes("thermal-camera")
    ? "camera"
    : input.equipment.includes("thermometer")
      ? "spot"
      : null;
  if (by === null) return [];
  const { board } = input;
  const of = (part: string) => ({ do: "measure", mode: "temperature", part, by }) as const;
  const suspected = suspectedParts(hypotheses, board)
    .filter((part) => tells(input, hypotheses, power, { ...of(part), afterPower: LOAD_TEST.warmSeconds }))
    .slice(0, LOAD_TEST.suspectsWarm);
  const fitted = fittedParts(input)
    .filter((part) => WARM_KINDS.has(board.parts.get(part)?.kind ?? "") && !suspected.includes(part))
    .slice(-LOAD_TEST.fittedWarm);
  return [...suspected, ...fitted].map(of);
}

/** Parts looked at, the likeliest first. A bound on work. */
const MOST_SUSPECTED = 8;

function suspectedParts({ list }: Hypotheses, board: Board): readonly string[] {
  const weights = new Map<string, number>();
  for (const { dead, weight } of list)
    for (const name of dead) if (board.parts.has(name)) weights.set(name, (weights.get(name) ?? 0) + weight);
  return [...weights]
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, MOST_SUSPECTED)
    .map(([name]) => name);
}

function fittedParts({ timeline }: PlanningInput): readonly string[] {
  return [...new Set(timeline.entries.flatMap(({ event }) => (event.do === "replace" ? [event.part] : [])))];
}
