/** How long an action takes: the board's own minutes, else those of the job file format (docs/formats.md). */
import type { BenchState } from "../bench/bench-state.ts";
import type { CloseEvent, JobEvent, MeasureEvent, ReplaceEvent } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { BenchMinutes, Board, Part } from "../board/board.ts";

/** An event that may not have happened yet: a measure may lack its reading. */
export type TimedAction = Omit<MeasureEvent, "reading"> | Exclude<JobEvent, MeasureEvent>;

/** Minutes of `faultwright-job/1` where a board gives none. */
export const MINUTES = {
  measure: 0.4,
  look: 0.2,
  lift: 3,
  refit: 2,
  /** lifting or refitting what comes off by pulling a plug */
  plug: 0.5,
  clip: 0.5,
  remove: { small: 5, overSixPins: 8, moduleOrController: 12 },
  restore: 5,
  /** the removal included */
  replace: { small: 10, overSixPins: 13, moduleOrController: 20 },
  /** coming on and the first two minutes, with the eyes on it */
  power: 3,
  unpower: 0.5,
} as const;
const MANY_PINS = 6;

/** Minutes of a reading, a look, a clip and of power on and off, as the board's bench takes them. */
export function benchMinutes(board: Board): BenchMinutes {
  return board.benchMinutes ?? MINUTES;
}

/** A run that goes on is looked at every few minutes, with other work in sight: the share of it that is gone. From memory. */
const WATCHED_SHARE = 1 / 3;
const POWER_SECONDS = 120;

/** Bench minutes of a run of so many seconds beyond those that `power` holds. */
function watchedMinutes(seconds: number): number {
  return (WATCHED_SHARE * Math.max(0, seconds - POWER_SECONDS)) / 60;
}

function bySize(part: Part, minutes: typeof MINUTES.remove | typeof MINUTES.replace): number {
  if (part.kind === "module" || part.kind === "controller") return minutes.moduleOrController;
  return part.pins.size > MANY_PINS ? minutes.overSixPins : minutes.small;
}

function partOf(board: Board, ref: string): Part {
  const part = board.parts.get(ref);
  if (part === undefined) throw new Error(`minutes asked of ${ref}, which is not on this board`);
  return part;
}

function removeMinutes(part: Part): number {
  return part.minutes.remove ?? bySize(part, MINUTES.remove);
}

/** Replacing, the removal included; of a part that is off already, only what is left to do. */
function replaceMinutes(part: Part, bench: BenchState): number {
  const whole = part.minutes.replace ?? bySize(part, MINUTES.replace);
  return bench.off.has(part.ref) ? Math.max(0, whole - removeMinutes(part)) : whole;
}

/** A part that no drawer holds still sits on its donor board, and has to come off that first: as long as it takes here. */
function donorMinutes(part: Part, { from }: ReplaceEvent): number {
  return from?.donor !== undefined && from.place === undefined ? removeMinutes(part) : 0;
}

function liftMinutes(board: Board, name: "lift" | "refit", place: string): number {
  const pin = pinOfPlace(place);
  if (pin === null) throw new Error(`minutes asked of lifting ${place}, which is no pin`);
  const part = partOf(board, pin.ref);
  return part.minutes[name] ?? (part.plugged ? MINUTES.plug : MINUTES[name]);
}

/** What was fitted here and goes back onto the shelf is taken off for that. */
function shelvedMinutes(board: Board, bench: BenchState, { shelved = [] }: CloseEvent): number {
  return shelved
    .filter((ref) => !bench.off.has(ref))
    .reduce((sum, ref) => sum + removeMinutes(partOf(board, ref)), 0);
}

/**
 * Bench minutes of one action from this state of the bench. The action's part or place must be on the board (a broken
 * invariant throws); actions that the format gives no time take none.
 */
export function actionMinutes(board: Board, bench: BenchState, action: TimedAction): number {
  switch (action.do) {
    case "measure":
    case "incoming":
    case "beside":
      return benchMinutes(board).measure;
    case "look":
      return benchMinutes(board).look;
    case "lift":
    case "refit":
      return liftMinutes(board, action.do, action.place);
    case "remove":
      return removeMinutes(partOf(board, action.part));
    case "restore":
      return partOf(board, action.part).minutes.restore ?? MINUTES.restore;
    case "replace":
      return (
        replaceMinutes(partOf(board, action.part), bench) + donorMinutes(partOf(board, action.part), action)
      );
    case "close":
      return shelvedMinutes(board, bench, action);
    case "clip":
    case "unclip":
      return benchMinutes(board).clip;
    case "power":
      return benchMinutes(board).power;
    case "unpower":
      return benchMinutes(board).unpower + watchedMinutes(action.afterPower ?? 0);
    default:
      return 0;
  }
}
