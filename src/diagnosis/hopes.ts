/** What each piece of evidence may yet be hoped to say of a better set: what bounds a search. */
import type { Evidence } from "./evidence.ts";

/** A piece this far from what it could say is not explained yet (nats). */
export const MISFIT = 3;
/** Pieces that have their turn at being explained, from one set. */
const MOST_MISFITS = 4;
/** How much better than the best so far a piece of evidence may yet be explained (nats). */
const HOPE = 0.5;
/** A piece this much likelier than by a slip alone counts as explained (nats). */
const EXPLAINED = 2;

export class Hopes {
  /** the most that each piece can say of any set, and what a slip alone says */
  readonly #bounds: Float64Array;
  readonly #slips: Float64Array;
  /** best log likelihood that each piece has given any set tried */
  readonly #seen: Float64Array;

  constructor(evidence: readonly Evidence[]) {
    this.#bounds = Float64Array.from(evidence, ({ best }) => best);
    this.#slips = Float64Array.from(evidence, ({ slip }) => slip);
    this.#seen = new Float64Array(evidence.length).fill(Number.NEGATIVE_INFINITY);
  }

  /**
   * The best this piece can be hoped to say: little more than the best it has said of any set so far, once some set has
   * explained it better than a slip would; else its bound.
   */
  of(i: number): number {
    const best = this.#bounds[i];
    const seen = this.#seen[i];
    return seen > this.#slips[i] + EXPLAINED ? Math.min(best, seen + HOPE) : best;
  }

  /** The piece said so much of some set; was it never as much before? */
  heard(i: number, log: number): boolean {
    if (log <= this.#seen[i]) return false;
    this.#seen[i] = log;
    return true;
  }

  /** What the readings could still add if all were explained best, nats. */
  gain(own: readonly number[]): number {
    return own.reduce((sum, log, i) => sum + Math.max(0, this.of(i) - log), 0);
  }

  /** The pieces that a set leaves furthest from explained, worst first. */
  misfits(own: readonly number[]): readonly number[] {
    return own
      .map((log, i) => ({ i, misfit: this.of(i) - log }))
      .filter(({ misfit }) => misfit > MISFIT)
      .sort((a, b) => b.misfit - a.misfit || a.i - b.i)
      .slice(0, MOST_MISFITS)
      .map(({ i }) => i);
  }
}
