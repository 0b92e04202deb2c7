/**
 * Sets of faults as one piece of evidence hears them. A search grows thousands of sets by one fault and asks each piece of each; the same
 * piece is asked again at every later reading. So a set is one object, reached from a smaller one by the fault that it has more, and what was
 * worked out for it is at hand there.
 */
import { type Evidence, overCommon } from "./evidence.ts";
import { insertSorted } from "./set-order.ts";

export class HeardSet {
  /** indexes into the prior table, ascending */
  readonly faults: readonly number[];
  readonly #sets: HeardSets;
  #grown: Map<number, HeardSet> | null = null;
  #vector: Float64Array | null = null;
  #log: { readonly weights: Float64Array; readonly value: number } | null = null;
  #hears: Map<number, boolean> | null = null;

  constructor(sets: HeardSets, faults: readonly number[]) {
    this.#sets = sets;
    this.faults = faults;
    sets.count++;
  }

  /** The set with one fault more. */
  with(fault: number): HeardSet {
    this.#grown ??= new Map();
    const known = this.#grown.get(fault);
    if (known !== undefined) return known;
    const { faults } = this;
    const last = faults.length === 0 || faults[faults.length - 1] <= fault;
    // each set hangs on the one without its last fault, and whatever else leads to it points there
    const grown = last
      ? new HeardSet(this.#sets, [...faults, fault])
      : this.#sets.of(insertSorted(faults, fault));
    this.#grown.set(fault, grown);
    return grown;
  }

  /** ln P(seen | faults, common unknown at each point) */
  get vector(): Float64Array {
    this.#vector ??= this.#sets.piece.logLikelihood(this.faults);
    return this.#vector;
  }

  /** The same over the common unknown, with these log weights. */
  log(weights: Float64Array): number {
    if (this.#log?.weights !== weights) this.#log = { weights, value: overCommon(this.vector, weights) };
    return this.#log.value;
  }

  /** Could the fault change the answer when it comes to these? */
  hears(fault: number): boolean {
    this.#hears ??= new Map();
    const known = this.#hears.get(fault) ?? this.#sets.piece.hears(this.faults, fault);
    this.#hears.set(fault, known);
    return known;
  }
}

type Asked = Pick<Evidence, "logLikelihood" | "hears">;

export class HeardSets {
  /** who is asked of a set that nobody asked of before; every answer is the same whoever it is */
  piece: Asked;
  /** sets made so far */
  count = 0;
  readonly none: HeardSet;

  constructor(piece: Asked) {
    this.piece = piece;
    this.none = new HeardSet(this, []);
  }

  /** @param faults - ascending */
  of(faults: readonly number[]): HeardSet {
    return faults.reduce((set, fault) => set.with(fault), this.none);
  }
}

const ofEvidence = new WeakMap<Evidence, HeardSets>();

/** The sets of a piece: those given to it, else its own. */
export function heardSets(piece: Evidence): HeardSets {
  return ofEvidence.get(piece) ?? giveSets(piece, new HeardSets(piece));
}

/** Gives a piece the sets that an equal one had before: what is new of them it is asked itself. */
export function giveSets(piece: Evidence, sets: HeardSets): HeardSets {
  sets.piece = piece;
  ofEvidence.set(piece, sets);
  return sets;
}
