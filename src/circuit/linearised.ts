/** A circuit at one of its solutions, kept factored: what a small current does, and where a small change would take it. */
import { keepFactors, solve, solveTransposed, takeFactors, VECTOR } from "../numeric/sparse-lu.ts";
import { Equations, type Problem } from "./equations.ts";
import { JUNCTION_LEAK_SIEMENS, junctionAmps, junctionSiemens } from "./junction.ts";

/** One branch that changes: siemens more (or less) between two nets, or a junction taken out (its index, else -1). */
export interface Change {
  readonly from: number;
  readonly to: number;
  readonly siemens: number;
  readonly junction: number;
}

/** More changes at once than this are a new circuit. */
const MOST_CHANGES = 4;
const MOST_STEPS = 6;
/** A step that leaves more than this share of the missing current is not getting there. */
const CONTRACTION = 0.3;
/** Below this the change leaves part of the circuit hanging on nothing. */
const LEAST_PIVOT = 1e-6;

/** Factors of the circuit's own, and room to work in. */
interface Kept {
  readonly factors: Float64Array;
  readonly volts: Float64Array;
  /** volts per amp put in at one pair of nets, and that pair: most questions about a pair come together */
  readonly column: Float64Array;
  readonly pair: Int32Array;
}

/** The circuit linearised at a solution. */
export class Linearised {
  readonly #problem: Problem;
  readonly #volts: Float64Array;
  /** made when a second question comes: the first is answered where the solve stood */
  #kept: Kept | null = null;
  #singular = false;

  constructor(problem: Problem, volts: Float64Array) {
    this.#problem = problem;
    this.#volts = volts;
  }

  /** How the voltage from `plus` to `minus` moves per amp put into each net (volts per amp; the reference 0). */
  transfer(plus: number, minus: number): Float64Array {
    const { plan } = this.#problem.frame;
    const regular = this.#factored();
    putPair(plan.size, plus, minus);
    if (regular) solveTransposed(plan);
    return VECTOR.slice(0, plan.size + 1);
  }

  /** Ohms seen between two nets, small signal; 0 where the circuit has no answer. */
  impedance(from: number, to: number): number {
    const kept = this.#own();
    return kept === null ? 0 : across(this.#column(kept, from, to), from, to);
  }

  #column({ factors, column, pair }: Kept, from: number, to: number): Float64Array {
    if (pair[0] === from && pair[1] === to) return column;
    const { plan } = this.#problem.frame;
    takeFactors(factors);
    putPair(plan.size, from, to);
    solve(plan);
    for (let i = 0; i < plan.size; i++) column[i] = VECTOR[i];
    pair[0] = from;
    pair[1] = to;
    return column;
  }

  /**
   * Volts of all nets with `changes` made, so that the currents miss by no more than `enoughAmps` in sum; null where that is
   * not near. Newton's method with the slopes of this circuit corrected for the changes (chord method; the inverse by Woodbury
   * 1950): a step costs a tenth of a whole solve's. The array is written over by the next call.
   */
  moved(changes: readonly Change[], enoughAmps: number): Float64Array | null {
    const kept = changes.length > MOST_CHANGES ? null : this.#own();
    if (kept === null) return null;
    const update = changes.length === 1 ? this.#rankOne(changes[0], kept) : this.#woodbury(changes, kept);
    if (update === null) return null;
    const equations = new Equations(this.#problem);
    const { plan } = this.#problem.frame;
    const { volts } = kept;
    volts.set(this.#volts);
    takeFactors(kept.factors);
    let last = Number.POSITIVE_INFINITY;
    for (let step = 0; step <= MOST_STEPS; step++) {
      if (step === 0) VECTOR.fill(0, 0, plan.size + 1);
      else equations.amps(volts, this.#volts);
      this.#addChanges(changes, volts);
      let missing = 0;
      for (let i = 0; i < plan.size; i++) missing += Math.abs(VECTOR[i]);
      if (missing <= enoughAmps) return volts;
      if (step > 0 && !(missing <= CONTRACTION * last)) return null;
      if (step > 0) last = missing;
      VECTOR[plan.size] = 0;
      solve(plan);
      update();
      for (let i = 0; i < plan.size; i++) volts[i] -= VECTOR[i];
    }
    return null;
  }

  /** Adds to the currents what the changes let through at `volts`, less what they took away. */
  #addChanges(changes: readonly Change[], volts: Float64Array): void {
    const ground = volts.length - 1;
    for (const { from, to, siemens, junction } of changes) {
      const here = across(volts, from, to);
      const amps = siemens * here - (junction < 0 ? 0 : this.#junctionAmps(junction, here));
      VECTOR[from < 0 ? ground : from] += amps;
      VECTOR[to < 0 ? ground : to] -= amps;
    }
  }

  #junctionAmps(junction: number, volts: number): number {
    const { netlist, values } = this.#problem;
    const saturation = values.saturation[junction];
    if (saturation === 0) return 0;
    const emission = netlist.junctions.emissionVolts[junction];
    return junctionAmps(saturation, emission, volts) + JUNCTION_LEAK_SIEMENS * volts;
  }

  #slope({ from, to, siemens, junction }: Change): number {
    const { netlist, values } = this.#problem;
    if (junction < 0 || values.saturation[junction] === 0) return siemens;
    const emission = netlist.junctions.emissionVolts[junction];
    const slope = junctionSiemens(values.saturation[junction], emission, across(this.#volts, from, to));
    return siemens - slope - JUNCTION_LEAK_SIEMENS;
  }

  /** `#woodbury` of the commonest case, with nothing made anew (Sherman & Morrison 1950). */
  #rankOne(change: Change, kept: Kept): (() => void) | null {
    const { from, to } = change;
    const slope = this.#slope(change);
    const column = this.#column(kept, from, to);
    const pivot = 1 + slope * across(column, from, to);
    if (!(Math.abs(pivot) > LEAST_PIVOT)) return null;
    const share = slope / pivot;
    return () => {
      const amps = share * inHand(column.length - 1, from, to);
      for (let i = 0; i < column.length - 1; i++) VECTOR[i] -= amps * column[i];
    };
  }

  /** Corrects the vector, an answer of the unchanged circuit, for the changes; null where the changed one is singular. */
  #woodbury(changes: readonly Change[], { factors }: Kept): (() => void) | null {
    const { plan } = this.#problem.frame;
    const slopes = changes.map((change) => this.#slope(change));
    takeFactors(factors);
    const columns = changes.map(({ from, to }) => {
      putPair(plan.size, from, to);
      solve(plan);
      return VECTOR.slice(0, plan.size + 1);
    });
    const size = changes.length;
    const small = changes.map(({ from, to }, i) =>
      columns.map((column, j) => (i === j ? 1 : 0) + slopes[i] * across(column, from, to)),
    );
    if (!eliminate(small)) return null;
    return () => {
      const wanted = changes.map(({ from, to }, i) => slopes[i] * inHand(plan.size, from, to));
      substitute(small, wanted);
      for (let j = 0; j < size; j++)
        for (let i = 0; i < plan.size; i++) VECTOR[i] -= wanted[j] * columns[j][i];
    };
  }

  /** Puts the factors at the solution into the matrix; false where there are none. */
  #factored(): boolean {
    if (!this.#singular) this.#singular = !new Equations(this.#problem).factorAt(this.#volts);
    return !this.#singular;
  }

  #own(): Kept | null {
    if (this.#kept !== null) return this.#kept;
    if (!this.#factored()) return null;
    const size = this.#volts.length;
    const room = () => new Float64Array(size);
    const pair = new Int32Array([-1, -1]);
    const factors = keepFactors(this.#problem.frame.plan);
    this.#kept = { factors, volts: room(), column: room(), pair };
    return this.#kept;
  }
}

function across(array: Float64Array, from: number, to: number): number {
  const ground = array.length - 1;
  return array[from < 0 ? ground : from] - array[to < 0 ? ground : to];
}

/** The same of the vector in hand. */
function inHand(ground: number, from: number, to: number): number {
  return VECTOR[from < 0 ? ground : from] - VECTOR[to < 0 ? ground : to];
}

/** Makes the vector an amp put in at one net and taken out at another. */
function putPair(ground: number, plus: number, minus: number): void {
  VECTOR.fill(0, 0, ground + 1);
  if (plus >= 0) VECTOR[plus] += 1;
  if (minus >= 0) VECTOR[minus] -= 1;
}

/** LU of a matrix of a few rows, in place, pivots on the diagonal; false where one is as good as zero. */
function eliminate(rows: readonly number[][]): boolean {
  for (let k = 0; k < rows.length; k++) {
    if (!(Math.abs(rows[k][k]) > LEAST_PIVOT)) return false;
    for (let i = k + 1; i < rows.length; i++) {
      rows[i][k] /= rows[k][k];
      for (let j = k + 1; j < rows.length; j++) rows[i][j] -= rows[i][k] * rows[k][j];
    }
  }
  return true;
}

function substitute(rows: readonly number[][], rhs: number[]): void {
  for (let i = 0; i < rows.length; i++) for (let j = 0; j < i; j++) rhs[i] -= rows[i][j] * rhs[j];
  for (let i = rows.length - 1; i >= 0; i--) {
    for (let j = i + 1; j < rows.length; j++) rhs[i] -= rows[i][j] * rhs[j];
    rhs[i] /= rows[i][i];
  }
}
