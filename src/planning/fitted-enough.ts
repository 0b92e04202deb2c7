/**
 * Parts that are not fitted once more. A new part at which a check still reads the same wrong thing as at the old one, and that has been
 * measured by itself since, is hardly bad: the board is not as its file says there (another part in the way, one that was never fitted), and a
 * third one would read the same. One that cannot be freed by a lifted pin counts without. A new part that reads wrong in a way of its own may be
 * bad, or in wrong, and is seen to. Common practice.
 */
import type { MeasureEvent, Reading } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { coldCheckOf } from "../diagnosis/cold-evidence.ts";
import type { Predictor } from "../meter/prediction.ts";
import { pinToLift } from "./hands-on-steps.ts";
import { measuredInHandSince } from "./in-hand.ts";

/** New parts after which the place is believed to be sound, whatever it reads. */
const MOST_FITTED = 2;
/** Numbers this near are the same reading, a share of the larger; and so many spreads from a good board's is wrong. From memory. */
const SAME_SHARE = 0.1;
const WRONG_SPREADS = 3;

/** Parts new twice, and parts of which a check across their own nets reads the same as before they were new, and not as on a good board. */
export function fittedEnough(board: Board, timeline: Timeline, predictor: Predictor): ReadonlySet<string> {
  const fits = new Map<string, number[]>();
  timeline.entries.forEach(({ event }, at) => {
    if (event.do === "replace") fits.set(event.part, [...(fits.get(event.part) ?? []), at]);
  });
  const enough = new Set<string>();
  for (const [part, at] of fits) {
    const last = at[at.length - 1] ?? 0;
    const asked = (measuredInHandSince(timeline, part) ?? 0) > 0 || !freedByAPin(board, part);
    if (at.length >= MOST_FITTED || (asked && readsAsBefore(board, timeline, predictor, part, last)))
      enough.add(part);
  }
  return enough;
}

function freedByAPin(board: Board, ref: string): boolean {
  const part = board.parts.get(ref);
  return part !== undefined && pinToLift(part) !== null;
}

function readsAsBefore(
  board: Board,
  { entries }: Timeline,
  predictor: Predictor,
  part: string,
  fittedAt: number,
): boolean {
  const nets = new Set(board.parts.get(part)?.pins.values());
  const across = entries.map(({ event }) =>
    event.do === "measure" && nets.has(event.red ?? "") && nets.has(event.black ?? "") ? event : null,
  );
  return across.slice(fittedAt + 1).some((after) => {
    if (after === null) return false;
    const before = across.slice(0, fittedAt).findLast((one) => one !== null && sameCheck(one, after));
    return before != null && alike(before.reading, after.reading) && isWrong(after, predictor);
  });
}

function sameCheck(one: MeasureEvent, other: MeasureEvent): boolean {
  return one.mode === other.mode && one.red === other.red && one.black === other.black;
}

function alike(one: Reading, other: Reading): boolean {
  if (typeof one === "string" || typeof other === "string") return one === other;
  return Math.abs(one - other) <= SAME_SHARE * Math.max(Math.abs(one), Math.abs(other));
}

/** Is this a reading that a good board does not give? */
function isWrong(event: MeasureEvent, predictor: Predictor): boolean {
  const check = coldCheckOf(event);
  const good = check === null ? null : predictor.predict(check, []);
  if (good === null || !good.solved) return false;
  if (typeof event.reading === "string" || typeof good.shown === "string")
    return event.reading !== good.shown;
  return Math.abs(event.reading - good.centre) > WRONG_SPREADS * good.spread;
}
