/**
 * The discharge gate: what is known of the charge of each store, and whether a hand may go in. State is a fold over the log.
 *
 * Nothing is known of a store until its own two pins read below 10 V with the power off. That proof is lost
 * - at every power-up, of every store on the board: also where a bench supply feeds two places of a rail. Which stores two places
 *   reach depends on what is faulty, and a switched supply hands charge on to places that no wire joins; so no store is spared;
 * - when a motor or fan turns while it is plugged in (it charges the bus through the diodes of the power switches), and when a board
 *   that is off shows volts that belong to no store's own pins: something charges it;
 * - of a capacitor that is put on the board (restored, replaced, its pin soldered back): it brings what it holds, or what it
 *   recovered while its leads were open. One that came off charged or unread, or is a used one, may hand that to all others.
 */
import { needsDeadBoard } from "../bench/dead-board.ts";
import type { MeasureEvent, OverruleEvent, Place } from "../bench/event.ts";
import type { Timeline, TimelineEntry } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { StoreOfCharge } from "../board/stores-of-charge.ts";

/** Below this a store of charge counts as empty: common practice (50 V is only "less dangerous"). */
export const EMPTY_BELOW_VOLTS = 10;

/** Why nothing is known of a store (any more). */
export type Unproven = "arrived" | "power" | "turned" | "volts" | "fitted" | "shared";

/** What is known of the charge of one store. */
export interface StoreState {
  readonly store: StoreOfCharge;
  readonly state: "charged" | "unknown" | "empty";
  /** last reading at its own pins; null: none since `because`, or more than the meter's range */
  readonly volts: number | null;
  /** log index of that reading; null: none */
  readonly readAt: number | null;
  /** what the proof was last lost by */
  readonly because: Unproven;
  /** most volts read at its pins since then: what it recovers from by itself; 0: none read */
  readonly mostVolts: number;
  /** off the board, with its charge in it */
  readonly off: boolean;
}

/** The proof overruled: until power comes on, something turns, or a store reads charged after all, of which the reason did not know. */
interface ProofOverruled {
  readonly why: string;
  /** log index from which it holds */
  readonly logIndex: number;
}

export interface DischargeState {
  readonly stores: readonly StoreState[];
  /** stores that keep hands and cold checks out: unknown, or charged; without those that were overruled */
  readonly inTheWay: readonly StoreState[];
  readonly overruled: ProofOverruled | null;
  /** the board is off and nothing is in the way: cold checks may begin */
  readonly open: boolean;
}

/** Position in `entries` of the last `power`; -1 where the board has not been powered on this bench. */
export function lastPowerIndex(timeline: Timeline): number {
  return timeline.entries.findLastIndex((entry) => entry.event.do === "power");
}

/** @param stores - of this board, in the order in which they are to be shown */
export function dischargeState(
  board: Board,
  timeline: Timeline,
  stores: readonly StoreOfCharge[],
): DischargeState {
  const book = new ChargeBook(board, timeline, stores);
  timeline.entries.forEach((entry, at) => {
    book.note(entry, timeline.entries[at - 1]);
  });
  const { overruled } = book;
  const states = book.states(timeline);
  const inTheWay = overruled === null ? states.filter(({ state }) => state !== "empty") : [];
  return { stores: states, inTheWay, overruled, open: !timeline.now.powered && inTheWay.length === 0 };
}

type Known = Omit<StoreState, "store" | "off">;

/** What is known after each entry so far. */
class ChargeBook {
  overruled: ProofOverruled | null = null;
  readonly #board: Board;
  readonly #stores: readonly StoreOfCharge[];
  /** by part; one that never came with the board is not in it */
  readonly #known = new Map<string, Known>();

  constructor(board: Board, timeline: Timeline, stores: readonly StoreOfCharge[]) {
    this.#board = board;
    this.#stores = stores;
    const absent = timeline.entries[0]?.before.off ?? timeline.now.off;
    for (const { part } of stores) if (!absent.has(part)) this.#known.set(part, unknown("arrived"));
  }

  states({ now }: Timeline): readonly StoreState[] {
    return this.#stores.flatMap((store): StoreState[] => {
      const known = this.#known.get(store.part);
      return known === undefined ? [] : [{ store, ...known, off: now.off.has(store.part) }];
    });
  }

  note(entry: TimelineEntry, previous: TimelineEntry | undefined): void {
    const { event } = entry;
    if (previous?.event.do === "overrule") this.#overruledBefore(entry, previous.event);
    switch (event.do) {
      case "power":
        this.#forget(entry, "power");
        break;
      case "note":
        if (event.turned !== undefined && !entry.before.off.has(event.turned)) this.#forget(entry, "turned");
        break;
      case "overrule":
        if (event.of === "proof") this.overruled = { why: event.why, logIndex: entry.logIndex };
        break;
      case "refit":
        this.#fitted(entry, event.place.slice(0, event.place.indexOf(".")));
        break;
      case "restore":
        this.#fitted(entry, event.part);
        break;
      case "replace":
        this.#fitted(entry, event.part, event.used === true);
        break;
      case "measure":
        this.#measured(entry, event);
        break;
      default:
    }
  }

  /** Nothing is known any more of what is on the board; an overruled proof ends with it. */
  #forget({ before }: TimelineEntry, because: Unproven): void {
    for (const part of this.#known.keys()) if (!before.off.has(part)) this.#known.set(part, unknown(because));
    this.overruled = null;
  }

  /** An overrule that does not say of what: of the proof, where the next event needs a dead board and the proof was in its way. */
  #overruledBefore({ event, logIndex }: TimelineEntry, { of, why }: OverruleEvent): void {
    if (of !== undefined || !needsDeadBoard(event)) return;
    const proven = [...this.#known.values()].every(({ state }) => state === "empty");
    if (!proven) this.overruled = { why, logIndex };
  }

  /**
   * @param shares - it may hand charge to the others: a used one, and one that was not proven empty; a new one holds at most what it
   * recovered in its bag, too little to hand on (from memory)
   */
  #fitted(entry: TimelineEntry, part: string, shares = this.#known.get(part)?.state !== "empty"): void {
    if (!this.#stores.some((store) => store.part === part)) return;
    if (shares)
      for (const [other, { state }] of this.#known)
        if (state === "empty" && !entry.before.off.has(other)) this.#known.set(other, unknown("shared"));
    this.#known.set(part, unknown("fitted"));
  }

  #measured(entry: TimelineEntry, event: MeasureEvent): void {
    const { mode, reading } = event;
    // a reading under power proves nothing about afterwards
    if (entry.before.powered || (mode !== "dcv" && mode !== "acv")) return;
    const volts = typeof reading === "number" ? reading : null;
    const high = volts === null || Math.abs(volts) >= EMPTY_BELOW_VOLTS;
    const read = mode === "dcv" ? this.#stores.filter((store) => this.#spans(store, event, entry)) : [];
    for (const { part } of read) {
      const known = this.#known.get(part);
      if (known === undefined) continue;
      this.#known.set(part, {
        ...known,
        state: high ? "charged" : "empty",
        volts,
        readAt: entry.logIndex,
        mostVolts: Math.max(known.mostVolts, Math.abs(volts ?? 0)),
      });
    }
    if (high) this.overruled = null;
    if (high && read.length === 0) this.#forget(entry, "volts");
  }

  /** True where the probes stood on the store's two pins, or on the nets those pins were soldered to at the time. */
  #spans(store: StoreOfCharge, { red, black }: MeasureEvent, { before }: TimelineEntry): boolean {
    const [plus, minus] = store.pins.map((pin): ReadonlySet<Place> => {
      const place = `${store.part}.${pin}`;
      const net = this.#board.parts.get(store.part)?.pins.get(pin);
      const loose = before.off.has(store.part) || before.lifted.has(place);
      return new Set(net === undefined || loose ? [place] : [place, net]);
    });
    if (red === undefined || black === undefined || plus === undefined || minus === undefined) return false;
    return (plus.has(red) && minus.has(black)) || (plus.has(black) && minus.has(red));
  }
}

function unknown(because: Unproven): Known {
  return { state: "unknown", volts: null, readAt: null, because, mostVolts: 0 };
}
