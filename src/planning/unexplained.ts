import { benchKey } from "../bench/bench-state.ts";
import type { MeasureEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import { isColdMode } from "../bench/words.ts";
import { said } from "../messages/said.ts";
import type { Action } from "./proposal.ts";

/** From this share of the belief on nothing that is known explains the board: no verdict may rest on the rest. From memory. */
export const MOSTLY_UNEXPLAINED = 0.5;
/** A reading that came out twice is no slip of the probe. */
const ENOUGH_TIMES = 2;
/** Where two readings came out as before, the rest are no slips either. From memory. */
const MOST_AGAIN = 2;

/**
 * Of the readings that nothing explains, the newest that can still be taken again: same bench, no power or new part since, and not taken
 * twice already. Null where there is none.
 * @param unexplained - log indexes
 */
export function readingToRepeat(
  { entries, spans, now }: Timeline,
  unexplained: readonly number[],
): Action | null {
  const key = benchKey(now);
  const newestSpan = spans.length - 1;
  const again = entries.flatMap(({ event, before, span, logIndex }) =>
    event.do === "measure" && isColdMode(event.mode) && span === newestSpan && benchKey(before) === key
      ? [{ event, logIndex }]
      : [],
  );
  const same = (a: MeasureEvent, b: MeasureEvent) =>
    a.mode === b.mode && a.red === b.red && a.black === b.black;
  const times = ({ event }: (typeof again)[number]) =>
    again.filter((other) => same(event, other.event)).length;
  const extra = again.filter((one, at) => again.slice(0, at).some((other) => same(one.event, other.event)));
  if (extra.length >= MOST_AGAIN) return null;
  const doubted = again.findLast(
    (one) => unexplained.includes(one.logIndex) && times(one) < ENOUGH_TIMES,
  )?.event;
  if (doubted?.red === undefined || doubted.black === undefined) return null;
  return { do: "measure", mode: doubted.mode, red: doubted.red, black: doubted.black };
}

/** Why a reading is taken again where nothing explains what was read; why it stops where none is left to take. */
export function whyUnexplained(again: Action | null): string {
  return again === null
    ? said`No fault that the program knows explains these readings, taken again where they could be: the board may not be as drawn. It stops here; who goes on, goes by hand.`
    : said`No fault that the program knows explains these readings together. Take this one again, with both probes on clean metal, before anything is concluded.`;
}
