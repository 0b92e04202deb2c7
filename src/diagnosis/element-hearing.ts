/**
 * Which elements each piece of evidence hears. A piece hears faults of the prior table; an element is a fault with its span, so a
 * piece hears it only where it was on the board when the reading was taken. One flat array, an element's pieces side by side: the search
 * asks this of every element beside every set that it expands.
 */
import type { Evidence } from "./evidence.ts";
import type { Universe } from "./universe.ts";

export class ElementHearing {
  readonly pieces: number;
  /** 1 where the piece hears the element */
  readonly heard: Uint8Array; // (elements x pieces)
  /** how many pieces hear the element */
  readonly by: Int32Array; // (elements)
  readonly #universe: Universe;
  readonly #evidence: readonly Evidence[];

  private constructor(
    universe: Universe,
    evidence: readonly Evidence[],
    heard: Uint8Array,
    by: Int32Array,
    masks: ReadonlyMap<number, Uint8Array>,
  ) {
    this.#universe = universe;
    this.#evidence = evidence;
    this.pieces = evidence.length;
    this.heard = heard;
    this.by = by;
    for (const [i, mask] of masks) this.#put(i, mask);
  }

  /** @param masks - per piece, what it hears of the prior table */
  static of(universe: Universe, evidence: readonly Evidence[], masks: readonly Uint8Array[]): ElementHearing {
    const elements = universe.fault.length;
    const heard = new Uint8Array(elements * evidence.length);
    return new ElementHearing(universe, evidence, heard, new Int32Array(elements), new Map(masks.entries()));
  }

  /** The same with other masks for some pieces. */
  with(masks: ReadonlyMap<number, Uint8Array>): ElementHearing {
    if (masks.size === 0) return this;
    return new ElementHearing(this.#universe, this.#evidence, this.heard.slice(), this.by.slice(), masks);
  }

  /** What piece `i` hears of the prior table, as of elements on the board when it was taken. */
  #put(i: number, mask: Uint8Array): void {
    const { fault, from, until } = this.#universe;
    const { logIndex } = this.#evidence[i];
    for (let e = 0, at = i; e < fault.length; e++, at += this.pieces) {
      const hears = mask[fault[e]] === 1 && from[e] <= logIndex && logIndex < until[e] ? 1 : 0;
      this.by[e] += hears - this.heard[at];
      this.heard[at] = hears;
    }
  }

  hears(piece: number, element: number): boolean {
    return this.heard[element * this.pieces + piece] === 1;
  }

  /** 1 where no piece could show the element, 0 where one could. */
  silent(): Float64Array {
    return Float64Array.from(this.by, (pieces) => (pieces === 0 ? 1 : 0));
  }
}
