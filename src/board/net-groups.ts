import type { Board, Part } from "./board.ts";

/** A resistor up to this is there to measure or to carry current, not to drop voltage: shunts, 0-ohm links. Common practice. */
export const SHUNT_OHMS = 1;

/** A winding up to this is one turn or two of a current transformer, there to carry what is measured. Common practice. */
const CURRENT_WINDING_OHMS = 0.02;

/** Is the part, between its pins 1 and 2, as good as a piece of wire to whoever asks what belongs to a rail or a bus? */
export function isNearlyWire(part: Part): boolean {
  if (part.kind === "link" || part.kind === "fuse") return true;
  return part.kind === "resistor" && part.value.ohms !== undefined && part.value.ohms <= SHUNT_OHMS;
}

/** The pairs of nets a part carries its current between (a choke two pairs, a transformer those of its current windings). */
export function throughPairs(part: Part): readonly (readonly [string, string])[] {
  const pair = (from: string, to: string): readonly (readonly [string, string])[] => {
    const one = part.pins.get(from);
    const other = part.pins.get(to);
    return one === undefined || other === undefined ? [] : [[one, other]];
  };
  if (part.kind === "choke") return [...pair("1", "2"), ...pair("3", "4")];
  if (part.kind === "relay") return pair("com", "no");
  if (part.kind === "transformer")
    return Object.values(part.value.windings ?? {})
      .filter((winding) => (winding.ohms ?? Number.MAX_VALUE) <= CURRENT_WINDING_OHMS)
      .flatMap((winding) => pair(...winding.pins));
  return pair("1", "2");
}

/** Nets taken together where a part that `joins` says is as good as wire lies between them. */
export class NetGroups {
  readonly #parent = new Map<string, string>();

  constructor(board: Board, joins: (part: Part) => boolean) {
    for (const net of board.nets.keys()) this.#parent.set(net, net);
    for (const part of board.parts.values()) {
      if (!joins(part)) continue;
      for (const [one, other] of throughPairs(part)) this.#parent.set(this.of(one), this.of(other));
    }
  }

  /** The name of the group a net is in (one of its nets). */
  of(net: string): string {
    let at = net;
    for (;;) {
      const up = this.#parent.get(at);
      if (up === undefined || up === at) return at;
      at = up;
    }
  }

  same(one: string, other: string): boolean {
    return this.of(one) === this.of(other);
  }
}
