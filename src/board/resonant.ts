/** Single-switch resonant inverters (induction hobs), derived from the circuit. */
import type { Board, Part } from "./board.ts";
import { type Bus, busCapacitors, busGroups } from "./bus.ts";
import { type PowerSwitch, powerSwitches } from "./power-switches.ts";

/** One switch from the bus minus to a coil whose other end is the bus plus, a capacitor across one of the two. References. */
export interface Resonant {
  readonly switch: PowerSwitch;
  readonly coil: string;
  readonly capacitors: readonly string[];
  /** bus capacitors: they carry the whole switching current */
  readonly busCapacitors: readonly string[];
  /** resistors of the chains by which a comparator sees the coil's ends */
  readonly sensing: readonly string[];
}

/** Chains that see the coil's ends start with a resistor of this or more. Common practice: 240-820 kohm. */
const SENSING_OHMS = 100_000;

function ends(part: Part): readonly [string, string] {
  const [one = "", other = ""] = part.pins.values();
  return [one, other];
}

/** High-ohm resistors one after the other from `net`, however many branch off there. */
function chainFrom(parts: readonly Part[], net: string): readonly Part[] {
  const found: Part[] = [];
  const nets = [net];
  for (let at = 0; at < nets.length; at++) {
    for (const part of parts) {
      const [one, other] = ends(part);
      const here = one === nets[at] || other === nets[at];
      if (!here || found.includes(part) || part.kind !== "resistor") continue;
      if ((part.value.ohms ?? 0) < SENSING_OHMS) continue;
      found.push(part);
      nets.push(one === nets[at] ? other : one);
    }
  }
  return found;
}

/**
 * Every such switch, in file order. A diode from the coil's end to the bus plus would make it a boost, and a second switch a
 * leg: those are not here.
 */
export function resonants(board: Board, bus: Bus | null): readonly Resonant[] {
  if (bus === null) return [];
  const groups = busGroups(board);
  const parts = [...board.parts.values()];
  const across = (part: Part, one: string, other: string): boolean => {
    const [a, b] = ends(part);
    return (groups.same(a, one) && groups.same(b, other)) || (groups.same(a, other) && groups.same(b, one));
  };
  const switches = powerSwitches(board).filter((one) => one.gate !== null);
  return switches.flatMap((one) => {
    const { high, low } = one;
    if (!groups.same(low, bus.minus) || groups.same(high, bus.plus)) return [];
    if (switches.some((other) => groups.same(other.low, high))) return [];
    if (parts.some((part) => part.kind === "diode" && across(part, high, bus.plus))) return [];
    const coil = parts.find((part) => part.kind === "inductor" && across(part, high, bus.plus));
    const tank = parts.filter(
      (part) => part.kind === "capacitor" && (across(part, high, bus.plus) || across(part, high, bus.minus)),
    );
    if (coil === undefined || tank.length === 0) return [];
    return [
      {
        switch: one,
        coil: coil.ref,
        capacitors: tank.map((part) => part.ref),
        busCapacitors: busCapacitors(board, bus),
        sensing: chainFrom(parts, high).map((part) => part.ref),
      },
    ];
  });
}
