import type { Part, PartKind, PartValue } from "./board.ts";

/** A part of which nothing is known but what it is and what it joins. */
export function barePart(
  ref: string,
  kind: PartKind,
  pins: ReadonlyMap<string, string>,
  value: PartValue = {},
): Part {
  return {
    ref,
    kind,
    pins,
    value,
    stage: null,
    role: null,
    price: null,
    minutes: {},
    obtainable: null,
    plugged: false,
    assumed: false,
  };
}
