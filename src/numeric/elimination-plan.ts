/**
 * The symbolic part of a sparse LU: which entries exist after elimination, and in which order to touch them. Computed once per
 * pattern and used for every set of values on it (George & Liu 1981: the graph of elimination).
 */

/**
 * A pattern made ready for `sparse-lu.ts`. Unknowns are eliminated in the order of their numbers: whoever numbers them asks
 * `eliminationOrder` first. The diagonal of unknown k is slot k.
 */
export interface EliminationPlan {
  readonly size: number;
  /**
   * last place of a values array, which has one more than this: the entries kept, fill included, and one place that takes
   * whatever is stamped outside the matrix
   */
  readonly entries: number;
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

/** Takes `unknown` out of the graph, its neighbours joined to each other; returns them in rising order. */
function eliminate(neighbours: readonly Set<number>[], unknown: number): number[] {
  const around = [...neighbours[unknown]].sort((a, b) => a - b);
  for (const one of around) {
    neighbours[one].delete(unknown);
    for (const other of around) if (other !== one) neighbours[one].add(other);
  }
  return around;
}

/**
 * Which unknown should go k-th so that little fills in: minimum degree (Tinney & Walker 1967) on a symmetric pattern. `pairs`
 * holds two indexes per entry; a negative index is the reference and is left out. Ties go to the lower index.
 */
export function eliminationOrder(size: number, pairs: ArrayLike<number>): Int32Array {
  const neighbours = neighboursOf(size, pairs);
  const order = new Int32Array(size);
  const gone = new Uint8Array(size);
  for (let k = 0; k < size; k++) {
    let pick = -1;
    for (let i = 0; i < size; i++)
      if (gone[i] === 0 && (pick < 0 || neighbours[i].size < neighbours[pick].size)) pick = i;
    gone[pick] = 1;
    order[k] = pick;
    eliminate(neighbours, pick);
  }
  return order;
}

/** The plan of a symmetric pattern, given as for `eliminationOrder`, in the order of the unknowns' numbers. */
export function planElimination(size: number, pairs: ArrayLike<number>): EliminationPlan {
  const neighbours = neighboursOf(size, pairs);
  const later = neighbours.map((_, k) => eliminate(neighbours, k));
  const slots = new Map<number, number>();
  for (let i = 0; i < size; i++) slots.set(i * size + i, i);
  let entries = size;
  for (let k = 0; k < size; k++) {
    for (const other of later[k]) slots.set(other * size + k, entries++);
    for (const other of later[k]) slots.set(k * size + other, entries++);
  }
  const find = (i: number, j: number): number => (i < 0 || j < 0 ? entries : (slots.get(i * size + j) ?? -1));
  const program: number[] = [];
  const begin = new Int32Array(size);
  for (let k = 0; k < size; k++) {
    begin[k] = program.length;
    for (const place of elimination(k, later[k], find)) program.push(place);
  }
  return { size, entries, program: Int32Array.from(program), begin, find };
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
  const { size } = base;
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
  // Columns that have grown: eliminating one passes all of it on to the next.
  const grown = new Set<number>();
  const join = (k: number, other: number): void => {
    if (known(other, k) >= 0) return;
    slots.set(other * size + k, ++entries);
    slots.set(k * size + other, ++entries);
    later.set(k, [...around(k), other]);
    grown.add(k);
  };
  for (let p = 0; p + 1 < pairs.length; p += 2) {
    const [a, b] = [pairs[p], pairs[p + 1]];
    if (a >= 0 && b >= 0 && a !== b) join(Math.min(a, b), Math.max(a, b));
  }
  if (grown.size === 0) return base;
  const changed = new Set<number>();
  while (grown.size > 0) {
    const k = Math.min(...grown);
    grown.delete(k);
    changed.add(k);
    const members = around(k);
    const parent = Math.min(...members);
    for (const one of members) if (one > parent) join(parent, one);
  }
  const segments: ArrayLike<number>[] = [];
  const begin = new Int32Array(size);
  let length = 0;
  for (let k = 0; k < size; k++) {
    begin[k] = length;
    const end = k + 1 < size ? base.begin[k + 1] : base.program.length;
    const segment = changed.has(k)
      ? elimination(k, around(k), known)
      : base.program.subarray(base.begin[k], end);
    segments.push(segment);
    length += segment.length;
  }
  const program = new Int32Array(length);
  segments.forEach((segment, k) => {
    program.set(segment, begin[k]);
  });
  return { size, entries, program, begin, find: known };
}
