/**
 * The symbolic part of a sparse LU: which entries exist after elimination, and in which order to touch them. Computed once per
 * pattern and used for every set of values on it (George & Liu 1981: the graph of elimination).
 */

/** A pattern made ready for `sparse-lu.ts`. Rows are numbered as the caller numbers its unknowns. */
export interface EliminationPlan {
  readonly size: number;
  /** entries kept, fill included; a values array has one more place, which takes whatever is stamped outside the matrix */
  readonly entries: number;
  /** elimination order: order[k] is the unknown that goes k-th */
  readonly order: Int32Array;
  /** where the diagonal of each unknown stands */
  readonly diagonal: Int32Array;
  /**
   * per elimination: count, then `count` later unknowns, their slots below the diagonal (L), their slots right of it (U), and
   * count x count slots to update
   */
  readonly program: Int32Array;
  /** slot of row i, column j; `entries` where either is negative (the reference) */
  slot(i: number, j: number): number;
}

/** Unknowns joined to each other: neighbours of each, for a symmetric pattern given as pairs. */
function neighboursOf(size: number, pairs: ArrayLike<number>): Set<number>[] {
  const neighbours = Array.from({ length: size }, () => new Set<number>());
  for (let p = 0; p + 1 < pairs.length; p += 2) {
    const a = pairs[p];
    const b = pairs[p + 1];
    if (a < 0 || b < 0 || a === b) continue;
    neighbours[a].add(b);
    neighbours[b].add(a);
  }
  return neighbours;
}

/**
 * Minimum-degree order (Tinney & Walker 1967) of a symmetric pattern, with its fill. `pairs` holds two indexes per entry; a
 * negative index is the reference and is left out. Ties go to the lower index, so the same pattern gives the same plan.
 */
export function planElimination(size: number, pairs: ArrayLike<number>): EliminationPlan {
  const neighbours = neighboursOf(size, pairs);
  const order = new Int32Array(size);
  const gone = new Uint8Array(size);
  const later: number[][] = [];
  for (let k = 0; k < size; k++) {
    let pick = -1;
    let least = size + 1;
    for (let i = 0; i < size; i++) {
      const degree = neighbours[i].size;
      if (gone[i] === 0 && degree < least) {
        least = degree;
        pick = i;
      }
    }
    gone[pick] = 1;
    order[k] = pick;
    const around = [...neighbours[pick]].sort((a, b) => a - b);
    later.push(around);
    for (const one of around) {
      neighbours[one].delete(pick);
      for (const other of around) if (other !== one) neighbours[one].add(other);
    }
  }
  return layOut(size, order, later);
}

function layOut(size: number, order: Int32Array, later: readonly number[][]): EliminationPlan {
  const slots = new Map<number, number>();
  const diagonal = new Int32Array(size);
  for (let i = 0; i < size; i++) {
    diagonal[i] = i;
    slots.set(i * size + i, i);
  }
  let entries = size;
  for (let k = 0; k < size; k++) {
    for (const other of later[k]) {
      slots.set(other * size + order[k], entries++);
      slots.set(order[k] * size + other, entries++);
    }
  }
  const slot = (i: number, j: number): number => {
    if (i < 0 || j < 0) return entries;
    const found = slots.get(i * size + j);
    if (found === undefined) throw new Error(`row ${i}, column ${j} is not in the pattern`);
    return found;
  };
  const program: number[] = [];
  for (let k = 0; k < size; k++) {
    const around = later[k];
    program.push(around.length, ...around);
    for (const i of around) program.push(slot(i, order[k]));
    for (const j of around) program.push(slot(order[k], j));
    for (const i of around) for (const j of around) program.push(slot(i, j));
  }
  return { size, entries, order, diagonal, program: Int32Array.from(program), slot };
}
