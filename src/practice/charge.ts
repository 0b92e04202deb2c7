import type { Place } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { busGroups, findBus } from "../board/bus.ts";
import { seededRandom } from "./seeded-random.ts";

/** Volts left on the bus of a board: just come in, and just switched off where nobody knows better (`from memory`). */
const ARRIVAL_VOLTS = [20, 60] as const;
const AFTER_POWER_VOLTS = [40, 180] as const;
/** Share of boards that come in with the bus still charged. `from memory`. */
const CHARGED_SHARE = 0.4;
/** What a meter picks up on a board with nothing on it. */
const EMPTY_VOLTS = 2;

/** The net a place is on. */
export function netAt(board: Board, place: Place): string {
  const pin = pinOfPlace(place);
  return pin === null ? place : (board.parts.get(pin.ref)?.pins.get(pin.pin) ?? place);
}

/** Signed: +1 from bus plus to bus minus, -1 the other way, 0 elsewhere. Shunts and fuses are seen through. */
function acrossBus(board: Board, red: Place, black: Place): number {
  const bus = findBus(board);
  if (bus === null) return 0;
  const groups = busGroups(board);
  const is = (place: Place, net: string): boolean => groups.same(netAt(board, place), net);
  if (is(red, bus.plus) && is(black, bus.minus)) return 1;
  return is(red, bus.minus) && is(black, bus.plus) ? -1 : 0;
}

/**
 * DC volts between two places of a board that is not powered: the bus may hold a charge from before until a resistor was
 * clipped across it (or a short in it let it go: `shorted`); everything else is empty. Same seed and log, same answer.
 * @param left - volts that the last power left on it, where they are known; drawn where not
 */
export function restVolts(
  board: Board,
  timeline: Timeline,
  seed: number,
  red: Place,
  black: Place,
  shorted: boolean,
  left: number | null = null,
): number {
  const sign = acrossBus(board, red, black);
  const empty = seededRandom(seed, `empty ${timeline.entries.length} ${red} ${black}`)() * EMPTY_VOLTS;
  if (sign === 0) return empty / 4;
  const power = timeline.entries.findLast((entry) => entry.event.do === "power");
  const since = power?.logIndex ?? -1;
  const discharged = timeline.entries.some(
    ({ event, logIndex }) =>
      event.do === "clip" && logIndex > since && acrossBus(board, event.at[0], event.at[1]) !== 0,
  );
  if (discharged || shorted) return sign * empty;
  const random = seededRandom(seed, `charge ${since}`);
  const charged = random() < CHARGED_SHARE || power !== undefined;
  const [least, most] = power === undefined ? ARRIVAL_VOLTS : AFTER_POWER_VOLTS;
  if (power !== undefined && left !== null) return sign * Math.max(left, empty);
  return sign * (charged ? least + (most - least) * random() : empty);
}
