import type { Place } from "../bench/event.ts";
import { netOfPlace } from "../bench/place.ts";
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

/** How high two places stand between bus minus (0) and bus plus (1). */
interface Heights {
  readonly over: number;
  readonly under: number;
}

/**
 * Where two places stand on the bus, one of two like capacitors in series half way up; null where the bus does not reach them. Shunts and
 * fuses are seen through.
 */
function heightsOf(board: Board, red: Place, black: Place): Heights | null {
  const bus = findBus(board);
  if (bus === null) return null;
  const groups = busGroups(board);
  const height = (net: string): number | null => {
    if (groups.same(net, bus.plus)) return 1;
    return groups.same(net, bus.minus) ? 0 : between(net);
  };
  const between = (net: string): number | null => {
    let [up, down] = [0, 0];
    for (const { kind, pins, value } of board.parts.values()) {
      const nets = [...pins.values()];
      if (kind !== "capacitor" || !nets.some((own) => groups.same(own, net))) continue;
      if (nets.some((own) => groups.same(own, bus.plus))) up += value.farads ?? 0;
      if (nets.some((own) => groups.same(own, bus.minus))) down += value.farads ?? 0;
    }
    // capacitors in series share by their capacitance, the smaller one taking more
    return up > 0 && down > 0 ? up / (up + down) : null;
  };
  const [over, under] = [height(netOfPlace(board, red)), height(netOfPlace(board, black))];
  return over === null || under === null || over === under ? null : { over, under };
}

/** Does a resistor across `clip` empty what stands between `asked`? */
function empties(clip: Heights | null, asked: Heights): boolean {
  if (clip === null) return false;
  const [low, high] = [Math.min(clip.over, clip.under), Math.max(clip.over, clip.under)];
  return low <= Math.min(asked.over, asked.under) && high >= Math.max(asked.over, asked.under);
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
  const asked = heightsOf(board, red, black);
  const empty = seededRandom(seed, `empty ${timeline.entries.length} ${red} ${black}`)() * EMPTY_VOLTS;
  if (asked === null) return empty / 4;
  const share = asked.over - asked.under;
  const power = timeline.entries.findLast((entry) => entry.event.do === "power");
  const since = power?.logIndex ?? -1;
  const discharged = timeline.entries.some(
    ({ event, logIndex }) =>
      event.do === "clip" && logIndex > since && empties(heightsOf(board, event.at[0], event.at[1]), asked),
  );
  if (discharged || shorted) return share * empty;
  const random = seededRandom(seed, `charge ${since}`);
  const charged = random() < CHARGED_SHARE || power !== undefined;
  const [least, most] = power === undefined ? ARRIVAL_VOLTS : AFTER_POWER_VOLTS;
  if (power !== undefined && left !== null) return share * Math.max(left, empty);
  return share * (charged ? least + (most - least) * random() : empty);
}
