/**
 * The symbolic part of a sparse LU: which entries exist after elimination, and in which order to touch them. Computed once per
 * pattern and used for every set of values on it (George & Liu 1981: the graph of elimination).
 */

/** A pattern made ready for `sparse-lu.ts`. Rows are numbered as the caller numbers its unknowns. */
export interface EliminationPlan {
  readonly size: number;
  /**
   * last place of a values array, which has one more than this: the entries kept, fill included, and one place that takes
   * whatever is stamped outside the matrix
   */
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
  /** where each elimination starts in the program */
  readonly begin: Int32Array;
  /** slot of row i, column j, the place outside the matrix where either is negative (the reference); -1: not in the pattern */
  find(i: number, j: number): number;
}

/** `find` for an entry that the pattern has. */
export function slotOf(plan: EliminationPlan, i: number, j: number): number {
  const slot = plan.find(i, j);
  if (slot < 0) throw new Error(`row ${i}, column ${j} is not in the pattern`);
  return slot;
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
  const find = (i: number, j: number): number => (i < 0 || j < 0 ? entries : (slots.get(i * size + j) ?? -1));
  const program: number[] = [];
  const begin = new Int32Array(size);
  for (let k = 0; k < size; k++) {
    begin[k] = program.length;
    for (const place of elimination(order[k], later[k], find)) program.push(place);
  }
  return { size, entries, order, diagonal, program: Int32Array.from(program), begin, find };
}

/** What eliminating `unknown` touches, `around` being the later unknowns joined to it: its part of the program. */
function elimination(
  unknown: number,
  around: readonly number[],
  find: (i: number, j: number) => number,
): readonly number[] {
  const part = [around.length, ...around];
  for (const i of around) part.push(find(i, unknown));
  for (const j of around) part.push(find(unknown, j));
  for (const i of around) for (const j of around) part.push(find(i, j));
  return part;
}

/**
 * The plan of a pattern with a few entries more, in the same order: every slot of `base` stays where it is and new ones come
 * behind, so that whatever was looked up in `base` holds for this plan as well. What an entry adds lies on one path of the
 * elimination tree (Liu 1990), so this costs a small share of a plan made anew; the order may be a little worse than its own.
 */
export function extendPlan(base: EliminationPlan, pairs: ArrayLike<number>): EliminationPlan {
  const { size, order } = base;
  const position = positionsOf(base);
  const later = new Map<number, number[]>();
  const around = (k: number): readonly number[] => {
    const at = base.begin[k];
    return later.get(k) ?? Array.from(base.program.subarray(at + 1, at + 1 + base.program[at]));
  };
  const slots = new Map<number, number>();
  let entries = base.entries;
  const known = (i: number, j: number): number => {
    const slot = base.find(i, j);
    return slot >= 0 ? slot : (slots.get(i * size + j) ?? -1);
  };
  // Columns that have grown, by position: eliminating one passes all of it on to the next.
  const grown = new Set<number>();
  const join = (k: number, other: number): void => {
    const unknown = order[k];
    if (known(other, unknown) >= 0) return;
    slots.set(other * size + unknown, ++entries);
    slots.set(unknown * size + other, ++entries);
    later.set(k, [...around(k), other]);
    grown.add(k);
  };
  for (let p = 0; p + 1 < pairs.length; p += 2) {
    const [a, b] = [pairs[p], pairs[p + 1]];
    if (a < 0 || b < 0 || a === b) continue;
    if (position[a] < position[b]) join(position[a], b);
    else join(position[b], a);
  }
  if (grown.size === 0) return base;
  const changed = new Set<number>();
  while (grown.size > 0) {
    const k = Math.min(...grown);
    grown.delete(k);
    changed.add(k);
    const members = around(k);
    const parent = members.reduce((least, one) => Math.min(least, position[one]), size);
    for (const one of members) if (position[one] > parent) join(parent, one);
  }
  const segments: ArrayLike<number>[] = [];
  const begin = new Int32Array(size);
  let length = 0;
  for (let k = 0; k < size; k++) {
    begin[k] = length;
    const end = k + 1 < size ? base.begin[k + 1] : base.program.length;
    const segment = changed.has(k)
      ? elimination(order[k], around(k), known)
      : base.program.subarray(base.begin[k], end);
    segments.push(segment);
    length += segment.length;
  }
  const program = new Int32Array(length);
  segments.forEach((segment, k) => {
    program.set(segment, begin[k]);
  });
  return { ...base, entries, program, begin, find: known };
}

const positions = new WeakMap<Int32Array, Int32Array>();

/** When each unknown of a plan is eliminated. */
function positionsOf({ order }: EliminationPlan): Int32Array {
  const known = positions.get(order);
  if (known !== undefined) return known;
  const found = new Int32Array(order.length);
  order.forEach((unknown, k) => {
    found[unknown] = k;
  });
  positions.set(order, found);
  return found;
}
