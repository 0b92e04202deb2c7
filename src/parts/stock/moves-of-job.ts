/** What a job's log takes out of stock and puts back: told by the log alone, so that undoing an entry undoes its move. */
import type { CloseEvent, JobEvent, ReplaceEvent } from "../../bench/event.ts";
import { undoneEvents } from "../../bench/fold.ts";
import type { PartKind } from "../../board/board.ts";
import type { LineName } from "../catalogue.ts";
import type { PutEvent, StockMove, TakeEvent } from "./stock-event.ts";

/** Where a pulled part goes that came from no place of the shop's. */
const PULLED_PLACE = "pulled parts";

/** The line of stock that a fitted part was taken from; null where it came from none. */
function takenFrom({ with: name, used, from }: ReplaceEvent): LineName | null {
  if (from === undefined || name === undefined) return null;
  return { name, place: from.place ?? null, used: used === true, donor: from.donor ?? null };
}

/** Where a part that was fitted here lies once it is off again: pulled, in the place it came from. Null: it has no name to be kept by. */
function shelvedAt({ with: name, from }: ReplaceEvent): LineName | null {
  if (name === undefined) return null;
  return { name, place: from?.place ?? PULLED_PLACE, used: true, donor: from?.donor ?? null };
}

type KindOf = (ref: string) => PartKind | null;

/** Every move that the log as it stands asks for, by entry and part. */
function wanted(
  job: string,
  log: readonly JobEvent[],
  kindOf: KindOf,
): ReadonlyMap<string, TakeEvent | PutEvent> {
  const undone = undoneEvents(log);
  const moves = new Map<string, TakeEvent | PutEvent>();
  const fitted = new Map<string, ReplaceEvent>();
  const shelve = (event: string, part: string) => {
    const had = fitted.get(part);
    const line = had === undefined ? null : shelvedAt(had);
    const kind = kindOf(part);
    if (line !== null && kind !== null)
      moves.set(`${event} ${part}`, { do: "put", job, event, part, line, kind });
  };
  log.forEach((event, index) => {
    if (undone[index] === true || event.id === undefined) return;
    if (event.do === "close") for (const part of shelvedBy(event)) shelve(event.id, part);
    if (event.do !== "replace") return;
    fitted.set(event.part, event);
    const { id, part } = event;
    const line = takenFrom(event);
    if (line !== null) moves.set(`${id} ${part}`, { do: "take", job, event: id, part, line });
  });
  return moves;
}

function shelvedBy({ shelved }: CloseEvent): readonly string[] {
  return shelved ?? [];
}

/**
 * The moves between two states of one job's log. `kept` is how many events of `log` were there before: those that a job was brought with
 * moved nothing here, and neither does undoing them.
 */
export function movesOfJob(
  job: string,
  log: readonly JobEvent[],
  kept: number,
  kindOf: KindOf,
): readonly StockMove[] {
  const before = wanted(job, log.slice(0, kept), kindOf);
  const after = wanted(job, log, kindOf);
  const back = [...before].flatMap(([key, { event, part }]): readonly StockMove[] =>
    after.has(key) ? [] : [{ do: "back", job, event, part }],
  );
  return [...back, ...[...after].flatMap(([key, move]) => (before.has(key) ? [] : [move]))];
}
