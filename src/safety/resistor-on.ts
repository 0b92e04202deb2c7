/** A resistor clipped on for discharging has to be off before power: it would burn, and what it hangs on would be reached for live. */
import type { JobEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { lastPowerIndex } from "./discharge.ts";

/** Has the technician said, since power was last on and since the last clip went on, that power comes with the resistor in place? */
export function resistorOverruled(timeline: Timeline): boolean {
  const clip = timeline.entries.findLastIndex(({ event }) => event.do === "clip");
  const since = timeline.entries.slice(Math.max(lastPowerIndex(timeline), clip) + 1);
  return since.some(({ event }, at) => {
    if (event.do !== "overrule") return false;
    return event.of === "resistor" || (event.of === undefined && at === since.length - 1);
  });
}

/** Why power may not come now, in one line that says what to do; null where no resistor is in its way. */
export function resistorInTheWay(timeline: Timeline): string | null {
  const { clips } = timeline.now;
  const [clip] = clips;
  if (clip === undefined || resistorOverruled(timeline)) return null;
  const more = clips.length > 1 ? ` (and ${clips.length - 1} more)` : "";
  return `${clip.ohms} ohm is still clipped on between ${clip.at[0]} and ${clip.at[1]}${more}: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live`;
}

/** A log with what it is folded over. */
interface Logged {
  readonly board: Board;
  readonly absent: readonly string[];
  readonly log: readonly JobEvent[];
}

/**
 * Why one of the events added to a log is not to be kept, as a line that names it; null where all are. A log that already holds such a
 * power-up is left alone: it says what was done.
 * @param kept - how many of the events were there before
 */
export function refusedPower({ board, absent, log }: Logged, kept: number): string | null {
  for (let index = kept; index < log.length; index++) {
    if (log[index]?.do !== "power") continue;
    const before = foldLog(board, absent, log.slice(0, index));
    const problem = before.ok ? resistorInTheWay(before.value) : null;
    if (problem !== null) return `log[${index}].do: ${problem}`;
  }
  return null;
}
