/** What of the card's action can be pointed at on the board: two probes, or one place or part. */

import type { CardView } from "../../wire/bench-view.ts";
import type { BoardPin } from "../../wire/job-api.ts";
import { field } from "../job-event.ts";
import type { Mark } from "./board-svg.tsx";
import { pairOf, spotsOf } from "./spots.ts";
import type { BoardPicture } from "./use-board-picture.ts";

export interface AskedSpots {
  /** places that the probes go to; null where the step has none */
  readonly places: { readonly red: string; readonly black: string } | null;
  readonly red: BoardPin | null;
  readonly black: BoardPin | null;
  /** where a hand goes: a pin to lift, a part to look at */
  readonly here: BoardPin | null;
}

const NOTHING: AskedSpots = { places: null, red: null, black: null, here: null };

export function askedSpots({ pins, now }: BoardPicture, { action }: CardView): AskedSpots {
  const places = probedPlaces(action);
  if (places !== null)
    return {
      ...NOTHING,
      places,
      ...pairOf(spotsOf(pins, places.red, now), spotsOf(pins, places.black, now)),
    };
  const place = field(action, "place");
  if (place !== null) return { ...NOTHING, here: spotsOf(pins, place, now)[0] ?? null };
  const part = field(action, "part");
  return { ...NOTHING, here: part === null ? null : middleOf(pins, part) };
}

/** Red and black of a check, or of the meter that is clipped on before power. */
function probedPlaces(action: CardView["action"]): AskedSpots["places"] {
  const meter: unknown = Array.isArray(action.meters) ? action.meters[0] : null;
  const [red, black] = Array.isArray(meter)
    ? meter.map(String)
    : [field(action, "red"), field(action, "black")];
  return red == null || black == null ? null : { red, black };
}

/** The middle of a part's pins that are on one side. */
function middleOf(pins: readonly BoardPin[], part: string): BoardPin | null {
  const own = pins.filter(({ place }) => place.startsWith(`${part}.`));
  const side = own.some((pin) => pin.side === "top") ? "top" : "bottom";
  const here = own.filter((pin) => pin.side === side);
  if (here.length === 0) return null;
  const mean = (of: (pin: BoardPin) => number) => here.reduce((sum, pin) => sum + of(pin), 0) / here.length;
  return { place: part, side, x: mean(({ x }) => x), y: mean(({ y }) => y) };
}

/** The spots that lie on this side, as marks. */
export function marksOf({ red, black, here }: AskedSpots, side: BoardPin["side"]): readonly Mark[] {
  const tones = [
    ["here", here],
    ["black", black],
    ["red", red],
  ] as const;
  return tones.flatMap(([tone, spot]) => (spot?.side === side ? [{ key: tone, tone, at: spot }] : []));
}
