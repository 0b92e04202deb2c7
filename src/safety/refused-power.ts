/** Power that is typed or chosen by hand meets the gates that a proposed one has passed: no resistor clipped on, no motor that nobody has read. */
import type { JobEvent, PowerEvent } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { said } from "../messages/said.ts";
import { motorInTheWay } from "./motor-check.ts";
import { resistorInTheWay } from "./resistor-on.ts";

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
    const event = log[index];
    if (event?.do !== "power") continue;
    const before = foldLog(board, absent, log.slice(0, index));
    const problem = before.ok ? inTheWay(board, before.value, event) : null;
    if (problem !== null) return `log[${index}].do: ${problem}`;
  }
  return null;
}

function inTheWay(board: Board, timeline: Timeline, { feed }: PowerEvent): string | null {
  const resistor = resistorInTheWay(timeline);
  if (resistor !== null || feed === "bench") return resistor;
  const motor = motorInTheWay(board, timeline);
  return motor === null ? null : said`${motor}, or overrule with a reason (overrule motor WHY)`;
}
