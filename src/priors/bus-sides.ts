/** Nets that stand at the bus's volts while nothing draws much: what leaks between the two sides turns those volts to heat. */
import type { Board, Part } from "../board/board.ts";
import { isNearlyWire, throughPairs } from "../board/net-groups.ts";
import { deriveRoles } from "../board/roles.ts";

export interface BusSides {
  readonly plus: ReadonlySet<string>;
  readonly minus: ReadonlySet<string>;
  /** the peak of the mains, or what else feeds the board */
  readonly volts: number;
}

/** A resistor or winding up to this drops little of the bus on its way to a leak of some kilohms: fusible and brake resistors, primaries. From memory. */
const LITTLE_OHMS = 150;

/**
 * A spot of dirt or a part that no heatsink cools chars in time above this, watts (from memory: half a watt is borne by a body of 10 mm
 * for years, two are not).
 */
const CHARS_WATTS = 2;

const known = new WeakMap<Board, BusSides | null>();

/** The two sides; null without a bus. */
export function busSides(board: Board): BusSides | null {
  const before = known.get(board);
  if (before !== undefined) return before;
  const { bus } = deriveRoles(board);
  const sides = bus === null ? null : sidesOf(board, bus);
  known.set(board, sides);
  return sides;
}

function sidesOf(board: Board, bus: { readonly plus: string; readonly minus: string }): BusSides {
  const { kind, volts } = board.supply;
  const minus = grown(board, bus.minus, new Set(), (part) => (isNearlyWire(part) ? throughPairs(part) : []));
  const rails = board.rails.map(({ net }) => net).filter((net) => net !== bus.plus);
  const plus = grown(board, bus.plus, new Set([...minus, ...rails, ...board.supply.at]), onTheWay);
  return { plus, minus, volts: kind === "ac" ? Math.SQRT2 * volts : volts };
}

/** Pairs of nets that the part holds at nearly the same volts. */
function onTheWay(part: Part): readonly (readonly [string, string])[] {
  if (part.kind === "resistor") return (part.value.ohms ?? 1e6) <= LITTLE_OHMS ? throughPairs(part) : [];
  if (["fuse", "link", "inductor", "choke"].includes(part.kind)) return throughPairs(part);
  if (part.kind !== "transformer") return [];
  return Object.values(part.value.windings ?? {}).flatMap(({ pins, ohms = 0 }) => {
    const [one, other] = pins.map((pin) => part.pins.get(pin));
    return one === undefined || other === undefined || ohms > LITTLE_OHMS ? [] : [[one, other] as const];
  });
}

function grown(
  board: Board,
  from: string,
  ends: ReadonlySet<string>,
  pairsOf: (part: Part) => readonly (readonly [string, string])[],
): ReadonlySet<string> {
  const found = new Set([from]);
  const pairs = [...board.parts.values()].flatMap(pairsOf);
  for (let before = 0; before < found.size; ) {
    before = found.size;
    for (const [one, other] of pairs) {
      if (found.has(one) && !ends.has(other)) found.add(other);
      if (found.has(other) && !ends.has(one)) found.add(one);
    }
  }
  return found;
}

/** Does a path of so many ohms between these nets char what it runs through, though the board may run? */
export function charsOnBus(board: Board, nets: readonly string[], ohms: number): boolean {
  const sides = busSides(board);
  if (sides === null) return false;
  const across = nets.some((net) => sides.plus.has(net)) && nets.some((net) => sides.minus.has(net));
  return across && sides.volts ** 2 / ohms > CHARS_WATTS;
}
