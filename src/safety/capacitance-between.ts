/**
 * All capacitance that empties through a resistor clipped between two places of a board without power. Where the circuit leaves a doubt
 * it counts in, so that the seconds it gives are rather too many. Circuit algebra alone: computed.
 */
import type { BenchState } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Board, Part } from "../board/board.ts";

/** Parts that let charge through as wire does, beside any resistor of at most these ohms: little beside the kilohms clipped on. */
const LETS_THROUGH: ReadonlySet<Part["kind"]> = new Set(["fuse", "link", "inductor", "choke", "ntc"]);
const LITTLE_OHMS = 100;

type Pair = readonly [Place, Place];

/** Places taken together where charge passes between them as through wire. */
class Joined {
  readonly #up = new Map<Place, Place>();

  of(place: Place): Place {
    const up = this.#up.get(place);
    return up === undefined ? place : this.of(up);
  }

  join([one, other]: Pair): void {
    const [a, b] = [this.of(one), this.of(other)];
    if (a !== b) this.#up.set(a, b);
  }
}

/** The board as it lies: where each pin is, the part of interest also where it is off the board and in the hand. */
class Lying {
  readonly #board: Board;
  readonly #bench: BenchState;
  readonly #inHand: string;

  constructor(board: Board, bench: BenchState, inHand: string) {
    this.#board = board;
    this.#bench = bench;
    this.#inHand = inHand;
  }

  /** The net that a pin is soldered to, or the pin itself where it is loose; null where the part is not there. */
  #pin(part: Part, pin: string): Place | null {
    const off = this.#bench.off.has(part.ref);
    if (off && part.ref !== this.#inHand) return null;
    const place = `${part.ref}.${pin}`;
    return off || this.#bench.lifted.has(place) ? place : (part.pins.get(pin) ?? null);
  }

  place(place: Place): Place {
    const pin = pinOfPlace(place);
    const part = pin === null ? undefined : this.#board.parts.get(pin.ref);
    return pin === null || part === undefined ? place : (this.#pin(part, pin.pin) ?? place);
  }

  ends(part: Part, one: string, other: string): readonly Pair[] {
    const [a, b] = [this.#pin(part, one), this.#pin(part, other)];
    return a === null || b === null ? [] : [[a, b]];
  }
}

function throughEnds(lying: Lying, part: Part): readonly Pair[] {
  const small = part.kind === "resistor" && (part.value.ohms ?? Number.MAX_VALUE) <= LITTLE_OHMS;
  if (!small && !LETS_THROUGH.has(part.kind)) return [];
  const first = lying.ends(part, "1", "2");
  return part.kind === "choke" ? [...first, ...lying.ends(part, "3", "4")] : first;
}

/**
 * Farads between two places (nets or pins) as the bench stands. Capacitors in series count as a series, those behind a winding, a fuse or
 * a small resistor as if soldered to it, and those behind a diode too, unless the diode lies across the two places.
 */
export function faradsBetween(board: Board, bench: BenchState, [from, to]: Pair): number {
  const lying = new Lying(board, bench, pinOfPlace(from)?.ref ?? "");
  const parts = [...board.parts.values()];
  const joined = new Joined();
  for (const pair of parts.flatMap((part) => throughEnds(lying, part))) joined.join(pair);
  const ends = (): Pair => [joined.of(lying.place(from)), joined.of(lying.place(to))];
  if (ends()[0] === ends()[1]) return 0;
  for (const [a, k] of parts.flatMap((part) => (part.kind === "diode" ? lying.ends(part, "a", "k") : []))) {
    const across = ends();
    if (!across.includes(joined.of(a)) || !across.includes(joined.of(k))) joined.join([a, k]);
  }
  const capacitors = parts.flatMap((part) =>
    part.kind !== "capacitor"
      ? []
      : lying.ends(part, "plus", "minus").map(([a, b]) => ({
          between: [joined.of(a), joined.of(b)] as Pair,
          farads: part.value.farads ?? 0,
        })),
  );
  return seenBetween(capacitors, ...ends());
}

interface Capacitance {
  readonly between: Pair;
  readonly farads: number;
}

/** The capacitance of a network of capacitors between two of its places: every other place is taken out, its star made a mesh. */
function seenBetween(capacitors: readonly Capacitance[], from: Place, to: Place): number {
  const mesh = new Map<Place, Map<Place, number>>();
  const add = (a: Place, b: Place, farads: number): void => {
    const arms = mesh.get(a) ?? new Map<Place, number>();
    mesh.set(a, arms.set(b, (arms.get(b) ?? 0) + farads));
  };
  for (const { between, farads } of capacitors) {
    const [a, b] = between;
    if (a === b || farads <= 0) continue;
    add(a, b, farads);
    add(b, a, farads);
  }
  for (const place of [...mesh.keys()]) {
    if (place === from || place === to) continue;
    const arms = [...(mesh.get(place) ?? [])];
    mesh.delete(place);
    const total = arms.reduce((sum, [, farads]) => sum + farads, 0);
    for (const [a] of arms) mesh.get(a)?.delete(place);
    for (const [a, one] of arms) for (const [b, other] of arms) if (a !== b) add(a, b, (one * other) / total);
  }
  return mesh.get(from)?.get(to) ?? 0;
}
