/** Where on the board's picture a place is, and which of its spots to point at. */

import { said } from "../../messages/said.ts";
import type { BoardPin, BoardSide } from "../../wire/job-api.ts";

/** What is known of the board that its picture does not show. */
export interface BoardNow {
  /** pin -> net */
  readonly nets: ReadonlyMap<string, string>;
  /** pins off their pads */
  readonly lifted: ReadonlySet<string>;
  /** parts off the board */
  readonly off: ReadonlySet<string>;
}

/** Every spot of a place: a pin has its own; a net those of all its pins that are on their pads. The easiest to find first. */
export function spotsOf(pins: readonly BoardPin[], place: string, now: BoardNow): readonly BoardPin[] {
  if (now.nets.has(place)) {
    const part = place.slice(0, place.indexOf("."));
    return now.off.has(part) ? [] : pins.filter((pin) => pin.place === place);
  }
  return pins.filter(
    (pin) => pin.place === place || (now.nets.get(pin.place) === place && !now.lifted.has(pin.place)),
  );
}

export interface ProbeSpots {
  readonly red: BoardPin | null;
  readonly black: BoardPin | null;
}

/** One spot for each probe, on one side of the board where that can be; the spots come the easiest first. */
export function pairOf(red: readonly BoardPin[], black: readonly BoardPin[]): ProbeSpots {
  const onSide = (side: BoardSide) => {
    const [a, b] = [red, black].map((spots) => spots.findIndex((spot) => spot.side === side));
    return a === undefined || b === undefined || a < 0 || b < 0
      ? null
      : { red: red[a] ?? null, black: black[b] ?? null, late: a + b };
  };
  const [top, bottom] = [onSide("top"), onSide("bottom")];
  const best = top !== null && (bottom === null || top.late <= bottom.late) ? top : bottom;
  return best === null
    ? { red: red[0] ?? null, black: black[0] ?? null }
    : { red: best.red, black: best.black };
}

/** Pins of a net in words, for one that is on no picture: `C5 plus, Q1 c`. */
export function pinsInWords(place: string, { nets, lifted, off }: BoardNow, most = 3): string {
  const pins = [...nets]
    .filter(([pin, net]) => net === place && !lifted.has(pin) && !off.has(pin.slice(0, pin.indexOf("."))))
    .map(([pin]) => pin.replace(".", " "));
  const more = pins.length - most;
  const named = pins.slice(0, most).join(", ");
  return more > 0 ? said`${named} and ${more} more` : named;
}
