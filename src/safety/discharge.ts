import type { MeasureEvent } from "../bench/event.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import type { StoreOfCharge } from "../board/stores-of-charge.ts";

/** Below this a store of charge counts as empty: common practice (50 V is only "less dangerous"). */
export const EMPTY_BELOW_VOLTS = 10;

/** A store whose last voltage reading was not below the limit. */
interface ChargedStore {
  readonly store: StoreOfCharge;
  readonly volts: number;
}

/** Which stores of charge are proven empty since power was last on (or since the board arrived). */
export interface DischargeState {
  readonly proven: readonly StoreOfCharge[];
  /** not measured yet since then */
  readonly unproven: readonly StoreOfCharge[];
  readonly charged: readonly ChargedStore[];
  /** every store on the board is proven empty and the board is not powered: cold checks may begin */
  readonly open: boolean;
}

/**
 * The discharge gate. An empty log counts as powered, so nothing is proven until each store's own pins read below 10 V.
 * A store that is off the board is left out; one whose pin is lifted has to be measured at the pin itself.
 */
export function dischargeState(
  board: Board,
  timeline: Timeline,
  stores: readonly StoreOfCharge[],
): DischargeState {
  const sincePower = timeline.entries.slice(lastPowerIndex(timeline) + 1);
  const proven: StoreOfCharge[] = [];
  const unproven: StoreOfCharge[] = [];
  const charged: ChargedStore[] = [];
  for (const store of stores) {
    if (timeline.now.off.has(store.part)) continue;
    const volts = lastVolts(board, store, sincePower);
    if (volts === null) unproven.push(store);
    else if (Math.abs(volts) < EMPTY_BELOW_VOLTS) proven.push(store);
    else charged.push({ store, volts });
  }
  const open = !timeline.now.powered && unproven.length === 0 && charged.length === 0;
  return { proven, unproven, charged, open };
}

/** Position in `entries` of the last `power`; -1 where the board has not been powered on this bench. */
export function lastPowerIndex(timeline: Timeline): number {
  return timeline.entries.findLastIndex((entry) => entry.event.do === "power");
}

function lastVolts(
  board: Board,
  store: StoreOfCharge,
  entries: readonly Timeline["entries"][number][],
): number | null {
  for (const { event, before } of entries.toReversed()) {
    if (event.do !== "measure" || event.mode !== "dcv" || typeof event.reading !== "number") continue;
    if (before.powered) continue; // a reading under power proves nothing about afterwards
    if (spans(board, store, event, before.lifted)) return event.reading;
  }
  return null;
}

/** True where the probes stood on the store's two pins, or on the nets those pins were soldered to at the time. */
function spans(
  board: Board,
  store: StoreOfCharge,
  event: MeasureEvent,
  lifted: ReadonlySet<string>,
): boolean {
  const [plus, minus] = store.pins.map((pin) => {
    const place = `${store.part}.${pin}`;
    const net = board.parts.get(store.part)?.pins.get(pin);
    return new Set(net === undefined || lifted.has(place) ? [place] : [place, net]);
  });
  const { red, black } = event;
  if (red === undefined || black === undefined || plus === undefined || minus === undefined) return false;
  return (plus.has(red) && minus.has(black)) || (plus.has(black) && minus.has(red));
}
