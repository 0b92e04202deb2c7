/** Readings of a powered practice board: the live board with the hidden faults, scattered as far as its own spread says. */

import type { MeasureEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { Fault } from "../board/fault.ts";
import { liveOfLog } from "../live/live-of-log.ts";
import { type LiveCheck, liveReading } from "../live/live-reading.ts";
import { said } from "../messages/said.ts";
import { normalDeviate, seededRandom } from "./seeded-random.ts";

/** Which board it is, its job's seed, and how far its meter is off (a share). */
interface Bench {
  readonly board: Board;
  readonly seed: number;
  readonly meterShare: number;
}

/** Digits of a common 6000-count meter on live ranges. */
function toDigits(value: number, mode: LiveCheck["mode"]): number {
  if (mode === "temperature") return Number(value.toFixed(1));
  return Math.abs(value) < 6 ? Number(value.toFixed(3)) : Number(value.toPrecision(4));
}

/**
 * The reading, or one sentence why this bench has none. The same place read again reads alike: what is not known of the board is
 * drawn once for it. Temperatures are those of the seconds that the event names, else of a minute.
 */
export function liveAnswer(
  { board, seed, meterShare }: Bench,
  timeline: Timeline,
  asked: Omit<MeasureEvent, "reading"> & { readonly mode: LiveCheck["mode"] },
  faults: readonly Fault[],
): { readonly ok: true; readonly reading: number } | { readonly ok: false; readonly problem: string } {
  const live = liveOfLog(board, timeline, faults);
  const found = live === null ? null : liveReading(live, asked);
  const where = asked.part ?? `${asked.red} and ${asked.black}`;
  if (found === null)
    return {
      ok: false,
      problem: said`under power nobody can tell from the board file the ${asked.mode} of ${asked.part ?? said`${asked.red ?? ""} and ${asked.black ?? ""}`}`,
    };
  const random = seededRandom(seed, `live ${asked.mode} ${where}`);
  const value = (found.value + found.spread * normalDeviate(random)) * (1 + meterShare);
  const shown = asked.mode === "acv" || asked.mode === "amps" ? Math.max(0, value) : value;
  return { ok: true, reading: toDigits(shown, asked.mode) };
}
