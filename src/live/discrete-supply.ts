/**
 * The small off-line supply without a chip: a transistor that a resistor from the bus starts and a winding of its own transformer keeps swinging
 * (blocking oscillator, "ringing choke"). Found by its nets; without one of the two it does nothing at all.
 */
import type { Part } from "../board/board.ts";

/** The transistor's pins, the place inside it that is its switch, and the one that is its control. */
interface Transistor {
  readonly high: string;
  readonly low: string;
  readonly control: string;
  readonly through: string;
  readonly drive: string;
}

const TRANSISTORS: Readonly<Partial<Record<Part["kind"], Transistor>>> = {
  bjt: { high: "c", low: "e", control: "b", through: "ce", drive: "be" },
  mosfet: { high: "d", low: "s", control: "g", through: "ds", drive: "gs" },
};

export function transistorOf({ kind, value }: Part): Transistor | null {
  if (value.polarity === "pnp" || value.channel === "p") return null;
  return TRANSISTORS[kind] ?? null;
}

/** Most parts in a row between a winding, or the bus, and the control pin. From memory. */
const MOST_IN_A_ROW = 5;

/** A path of parts of these kinds from one net to another, bars left out; the shortest, null where there is none. */
export function pathBetween(
  parts: readonly Part[],
  kinds: ReadonlySet<Part["kind"]>,
  from: string,
  ends: ReadonlySet<string>,
  bars: ReadonlySet<string>,
): { readonly refs: readonly string[]; readonly end: string } | null {
  let open: { readonly net: string; readonly refs: readonly string[] }[] = [{ net: from, refs: [] }];
  const seen = new Set([from]);
  for (let row = 0; row < MOST_IN_A_ROW; row++) {
    const next: typeof open = [];
    for (const { net, refs } of open)
      for (const part of parts) {
        const nets = [...part.pins.values()];
        if (!kinds.has(part.kind) || nets.length !== 2 || !nets.includes(net)) continue;
        const far = nets[0] === net ? nets[1] : nets[0];
        if (far === undefined || seen.has(far) || bars.has(far)) continue;
        const found = { net: far, refs: [...refs, part.ref] };
        if (ends.has(far)) return { refs: found.refs, end: far };
        seen.add(far);
        next.push(found);
      }
    open = next;
  }
  return null;
}

export const START_KINDS: ReadonlySet<Part["kind"]> = new Set(["resistor"]);
export const SWING_KINDS: ReadonlySet<Part["kind"]> = new Set(["resistor", "capacitor", "diode"]);
