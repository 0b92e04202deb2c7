/** The board as it stands on the bench: what is there, joined to what, and what is wrong with it. */
import type { BenchState } from "../bench/bench-state.ts";
import type { Place } from "../bench/event.ts";
import { pinOfPlace } from "../bench/place.ts";
import type { Board, Part } from "../board/board.ts";
import type { Fault, LeakFault, PartFault } from "../board/fault.ts";
import { DRIFT, FAULT_OHMS } from "../board/fault-nominal.ts";

function siteKey(ref: string, junction: string | null): string {
  return junction === null ? ref : `${ref}.${junction}`;
}

/** Notes that dirt is asked about: anywhere, or where it lies on this net. */
const DIRT = "~";

/** Would the fault have answered one of these questions? Dirt answers where both of its nets were asked about. */
export function answers(fault: Fault, asked: ReadonlySet<string>): boolean {
  if (fault.of === "part") return asked.has(siteKey(fault.part, fault.junction));
  return asked.has(DIRT) || fault.nets.every((net) => asked.has(DIRT + net));
}

const onBench = new WeakMap<BenchState, Map<Board, readonly Part[]>>();

/** Parts that are on the board, in file order. */
function partsOn(board: Board, bench: BenchState): readonly Part[] {
  const boards = onBench.get(bench) ?? new Map<Board, readonly Part[]>();
  onBench.set(bench, boards);
  const parts = boards.get(board) ?? [...board.parts.values()].filter(({ ref }) => !bench.off.has(ref));
  boards.set(board, parts);
  return parts;
}

export class FaultedBoard {
  readonly board: Board;
  readonly bench: BenchState;
  /** parts that power has opened since: fuses blown, resistors burnt */
  readonly opened: ReadonlySet<string>;
  /** as text, for telling two such sets apart */
  readonly openedKey: string;
  readonly faults: readonly Fault[];
  readonly #leaks: readonly LeakFault[];
  readonly #bySite = new Map<string, PartFault>();
  readonly #parts: readonly Part[];
  /** where what is asked about faults is noted; null: nowhere */
  readonly #asked: Set<string> | null;

  constructor(
    board: Board,
    bench: BenchState,
    faults: readonly Fault[],
    opened: ReadonlySet<string> = new Set(),
    asked: Set<string> | null = null,
  ) {
    this.board = board;
    this.bench = bench;
    this.opened = opened;
    this.openedKey = opened.size === 0 ? "" : [...opened].sort().join(",");
    this.faults = faults;
    this.#asked = asked;
    this.#parts = partsOn(board, bench);
    this.#leaks = faults.filter((fault) => fault.of === "nets");
    for (const fault of faults)
      if (fault.of === "part") this.#bySite.set(siteKey(fault.part, fault.junction), fault);
  }

  /** The same with more parts opened by power. */
  with(opened: Iterable<string>): FaultedBoard {
    return new FaultedBoard(
      this.board,
      this.bench,
      this.faults,
      new Set([...this.opened, ...opened]),
      this.#asked,
    );
  }

  /** The same with some of its faults only. Sites whose faults it is asked for are noted in `asked`, those without one as well. */
  only(faults: readonly Fault[], asked: Set<string>): FaultedBoard {
    return new FaultedBoard(this.board, this.bench, faults, this.opened, asked);
  }

  get leaks(): readonly LeakFault[] {
    this.#asked?.add(DIRT);
    return this.#leaks;
  }

  /** Dirt between any two of these nets. */
  leaksAmong(nets: ReadonlySet<string>): readonly LeakFault[] {
    if (this.#asked !== null) for (const net of nets) this.#asked.add(DIRT + net);
    return this.#leaks.filter((leak) => leak.nets.every((net) => nets.has(net)));
  }

  /** Parts that are on the board, in file order. */
  parts(): readonly Part[] {
    return this.#parts;
  }

  /** The part, or null where it is off the board or never was on it. */
  part(ref: string): Part | null {
    return this.bench.off.has(ref) ? null : (this.board.parts.get(ref) ?? null);
  }

  /** The net a pin is soldered to now; null where it is lifted, off the board or no pin of the part. */
  netOf(ref: string, pin: string): string | null {
    const { off, lifted } = this.bench;
    if (off.has(ref) || (lifted.size > 0 && lifted.has(`${ref}.${pin}`))) return null;
    return this.board.parts.get(ref)?.pins.get(pin) ?? null;
  }

  /** The net a probe or clip touches; null on a lifted pin or a part that is off. */
  netAt(place: Place): string | null {
    const pin = pinOfPlace(place);
    return pin === null ? place : this.netOf(pin.ref, pin.pin);
  }

  fault(ref: string, junction: string | null = null): PartFault | null {
    if (this.#asked === null && this.#bySite.size === 0) return null;
    const site = siteKey(ref, junction);
    this.#asked?.add(site);
    return this.#bySite.get(site) ?? null;
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
