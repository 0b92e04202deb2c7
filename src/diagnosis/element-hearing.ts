/**
 * Which elements each piece of evidence hears. A piece hears faults of the prior table; an element is a fault with its span, so a
 * piece hears it only where it was on the board when the reading was taken. Flat arrays over elements: the search asks this of every
 * element beside every set that it expands.
 */
import type { Evidence } from "./evidence.ts";
import type { Universe } from "./universe.ts";

/** 1 for each element of the universe that the piece taken at `logIndex` hears. */
function heardOf(universe: Universe, logIndex: number, mask: Uint8Array): Uint8Array {
  const { fault, from, until } = universe;
  const heard = new Uint8Array(fault.length);
  for (let e = 0; e < heard.length; e++)
    if (mask[fault[e]] === 1 && from[e] <= logIndex && logIndex < until[e]) heard[e] = 1;
  return heard;
}

export class ElementHearing {
  /** 1 where the piece hears the element */
  readonly each: readonly Uint8Array[]; // (pieces)(elements)
  /** how many pieces hear the element */
  readonly by: Int32Array; // (elements)
  readonly #universe: Universe;
  readonly #evidence: readonly Evidence[];

  private constructor(universe: Universe, evidence: readonly Evidence[], each: readonly Uint8Array[]) {
    this.#universe = universe;
    this.#evidence = evidence;
    this.each = each;
    this.by = new Int32Array(universe.fault.length);
    for (const heard of each) for (let e = 0; e < heard.length; e++) this.by[e] += heard[e];
  }

  /** @param masks - per piece, what it hears of the prior table */
  static of(universe: Universe, evidence: readonly Evidence[], masks: readonly Uint8Array[]): ElementHearing {
    return new ElementHearing(
      universe,
      evidence,
      evidence.map(({ logIndex }, i) => heardOf(universe, logIndex, masks[i])),
    );
  }

  /** The same with other masks for some pieces. */
  with(masks: ReadonlyMap<number, Uint8Array>): ElementHearing {
    if (masks.size === 0) return this;
    const each = this.each.map((heard, i) => {
      const mask = masks.get(i);
      return mask === undefined ? heard : heardOf(this.#universe, this.#evidence[i].logIndex, mask);
    });
    return new ElementHearing(this.#universe, this.#evidence, each);
  }

  /** 1 where no piece could show the element, 0 where one could. */
  silent(): Float64Array {
    return Float64Array.from(this.by, (pieces) => (pieces === 0 ? 1 : 0));
  }
}
