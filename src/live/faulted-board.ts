/** The board as it stands on the bench: what is there, joined to what, and what is wrong with it. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Board, Part } from "../board/board.ts";
import type { Fault, LeakFault, PartFault } from "../board/fault.ts";
import { DRIFT, FAULT_OHMS } from "../cold/model-table.ts";

function siteKey(ref: string, junction: string | null): string {
  return junction === null ? ref : `${ref}.${junction}`;
}

export class FaultedBoard {
  readonly board: Board;
  readonly bench: BenchState;
  readonly leaks: readonly LeakFault[];
  /** parts that power has opened since: fuses blown, resistors burnt */
  readonly opened: ReadonlySet<string>;
  readonly faults: readonly Fault[];
  readonly #bySite = new Map<string, PartFault>();

  constructor(
    board: Board,
    bench: BenchState,
    faults: readonly Fault[],
    opened: ReadonlySet<string> = new Set(),
  ) {
    this.board = board;
    this.bench = bench;
    this.opened = opened;
    this.faults = faults;
    this.leaks = faults.filter((fault) => fault.of === "nets");
    for (const fault of faults)
      if (fault.of === "part") this.#bySite.set(siteKey(fault.part, fault.junction), fault);
  }

  /** The same with more parts opened by power. */
  with(opened: Iterable<string>): FaultedBoard {
    return new FaultedBoard(this.board, this.bench, this.faults, new Set([...this.opened, ...opened]));
  }

  /** Parts that are on the board, in file order. */
  *parts(): Generator<Part> {
    for (const part of this.board.parts.values()) if (!this.bench.off.has(part.ref)) yield part;
  }

  /** The part, or null where it is off the board or never was on it. */
  part(ref: string): Part | null {
    return this.bench.off.has(ref) ? null : (this.board.parts.get(ref) ?? null);
  }

  /** The net a pin is soldered to now; null where it is lifted, off the board or no pin of the part. */
  netOf(ref: string, pin: string): string | null {
    if (this.bench.off.has(ref) || this.bench.lifted.has(`${ref}.${pin}`)) return null;
    return this.board.parts.get(ref)?.pins.get(pin) ?? null;
  }

  /** The net a probe or clip touches; null on a lifted pin or a part that is off. */
  netAt(place: Place): string | null {
    const pin = pinOfPlace(place);
    return pin === null ? place : this.netOf(pin.ref, pin.pin);
  }

  fault(ref: string, junction: string | null = null): PartFault | null {
    return this.#bySite.get(siteKey(ref, junction)) ?? null;
  }

  isOpen(ref: string, junction: string | null = null): boolean {
    return this.opened.has(ref) || this.fault(ref, junction)?.mode === "open";
  }

  /** Ohms of a short or leak where none belongs; infinite where there is none. */
  acrossOhms(ref: string, junction: string | null = null): number {
    const fault = this.fault(ref, junction);
    if (fault?.mode === "short") return fault.value ?? FAULT_OHMS.short;
    return fault?.mode === "leaky" ? (fault.value ?? FAULT_OHMS.leaky) : Number.POSITIVE_INFINITY;
  }

  /** Is the site shorted so far that it no longer does its work? */
  isShort(ref: string, junction: string | null = null, below = 100): boolean {
    return this.acrossOhms(ref, junction) < below;
  }

  /** Ohms of a part that the current goes through, `nominal` when good; infinite where it is open. */
  throughOhms(ref: string, junction: string | null, nominal: number): number {
    if (this.isOpen(ref, junction)) return Number.POSITIVE_INFINITY;
    const fault = this.fault(ref, junction);
    if (fault?.mode === "drift") return fault.value ?? nominal * DRIFT.ohms;
    const kind = this.board.parts.get(ref)?.kind;
    if (fault?.mode === "leaky" && (kind === "fuse" || kind === "link"))
      return nominal + (fault.value ?? FAULT_OHMS.leakyInSeries);
    return 1 / (1 / nominal + 1 / this.acrossOhms(ref, junction));
  }

  /** Farads of a capacitor as it is; 0 where it is open. */
  farads(part: Part, nominal: number): number {
    const fault = this.fault(part.ref);
    if (this.isOpen(part.ref)) return 0;
    return fault?.mode === "drift" ? (fault.value ?? nominal * DRIFT.farads) : nominal;
  }
}
