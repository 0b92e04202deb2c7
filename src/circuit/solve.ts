/**
 * Newton's method on a circuit, and the ladder of ways to start it. Every rung ends with a plain solve, so that whichever
 * worked, the answer satisfies the same equations; a solve that fails is a value, never a number.
 */
import { solveDense } from "../numeric/dense-lu.ts";
import { factor, solve } from "../numeric/sparse-lu.ts";
import { Equations, type Problem } from "./equations.ts";
import { JUNCTION_LEAK_SIEMENS } from "./junction.ts";

export type Rung = "warm newton" | "cold newton" | "gmin stepping" | "source ramp" | "dense newton";

export interface Solved {
  readonly solved: true;
  /** per net, and one more place for the reference (0 V) */
  readonly volts: Float64Array;
  readonly rung: Rung;
  readonly iterations: number;
  /** the current that Kirchhoff's law misses at the worst net */
  readonly residualAmps: number;
}

export interface Unsolved {
  readonly solved: false;
  readonly rung: Rung;
  readonly iterations: number;
  readonly worstNet: string;
  readonly residualAmps: number;
}

const MOST_ITERATIONS = 100;
/** A step this small, with the currents right, ends the iteration. */
const STEP_VOLTS = 1e-6;
/** Currents are right when they miss by less than this share of the source's short-circuit current ... */
const CURRENT_SHARE = 1e-12;
/** ... and by what doubles can add up through the largest conductance. */
const ROUNDING = 2e-15;
/** Share of rounding above which the sparse factors are not believed, in units of the tolerance. */
const PATIENCE = 15;

interface Attempt {
  readonly ok: boolean;
  readonly iterations: number;
}

function tolerance(equations: Equations, volts: Float64Array): number {
  let most = 0;
  for (const volt of volts) if (Math.abs(volt) > most) most = Math.abs(volt);
  return CURRENT_SHARE * equations.problem.source.amps + ROUNDING * equations.mostSiemens * most + 1e-18;
}

function step(equations: Equations, dense: boolean): boolean {
  const { plan } = equations.problem.frame;
  const { change } = equations;
  for (let i = 0; i < plan.size; i++) change[i] = -equations.leaving[i];
  if (!dense) {
    if (!factor(plan, equations.matrix)) return false;
    solve(plan, equations.matrix, change);
    return true;
  }
  return solveDense(plan.size, denseMatrix(equations), change);
}

/** The unfactored matrix written out row by row. */
function denseMatrix(equations: Equations): Float64Array {
  const { plan } = equations.problem.frame;
  const { size, program, order } = plan;
  const dense = new Float64Array(size * size);
  for (let i = 0; i < size; i++) dense[i * size + i] = equations.matrix[i];
  let at = 0;
  for (let k = 0; k < size; k++) {
    const count = program[at];
    for (let r = 1; r <= count; r++) {
      const other = program[at + r];
      dense[other * size + order[k]] = equations.matrix[program[at + count + r]];
      dense[order[k] * size + other] = equations.matrix[program[at + 2 * count + r]];
    }
    at += 1 + 3 * count + count * count;
  }
  return dense;
}

/** Newton from `volts`, which becomes the answer. */
function newton(
  equations: Equations,
  volts: Float64Array,
  gmin: number,
  ramp: number,
  dense = false,
): Attempt {
  const { change } = equations;
  // At least one step: a start whose currents are right to within the tolerance may still be far off at a floating net.
  let moved = Number.POSITIVE_INFINITY;
  let patience = 0;
  for (let iteration = 0; iteration <= MOST_ITERATIONS; iteration++) {
    equations.evaluate(volts, gmin, ramp);
    const { amps } = equations.worst();
    if (!Number.isFinite(amps)) return { ok: false, iterations: iteration };
    if (!equations.limited && amps <= tolerance(equations, volts)) {
      // A floating net may tremble by rounding for ever without any current being wrong.
      if (moved <= STEP_VOLTS || ++patience >= PATIENCE) return { ok: true, iterations: iteration };
    }
    if (!step(equations, dense)) return { ok: false, iterations: iteration };
    moved = 0;
    for (let i = 0; i < volts.length - 1; i++) {
      volts[i] += change[i];
      const size = Math.abs(change[i]);
      if (!(size <= moved)) moved = size;
    }
    if (!Number.isFinite(moved)) return { ok: false, iterations: iteration };
  }
  return { ok: false, iterations: MOST_ITERATIONS };
}

/** Runs a list of (gmin, ramp) stages, each from where the last ended. */
function staged(
  equations: Equations,
  volts: Float64Array,
  stages: readonly (readonly [number, number])[],
): Attempt {
  let iterations = 0;
  for (const [gmin, ramp] of stages) {
    const attempt = newton(equations, volts, gmin, ramp);
    iterations += attempt.iterations;
    if (!attempt.ok) return { ok: false, iterations };
  }
  return { ok: true, iterations };
}

const PLAIN = [JUNCTION_LEAK_SIEMENS, 1] as const;
const GMIN_STAGES = [1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-8, 1e-10].map((gmin) => [gmin, 1] as const);
const RAMP_STAGES = Array.from({ length: 20 }, (_, i) => [JUNCTION_LEAK_SIEMENS, (i + 1) / 20] as const);

const RUNGS: readonly Rung[] = ["warm newton", "cold newton", "gmin stepping", "source ramp", "dense newton"];

function climbRung(equations: Equations, volts: Float64Array, rung: Rung): Attempt {
  if (rung === "gmin stepping") return staged(equations, volts, [...GMIN_STAGES, PLAIN]);
  if (rung === "source ramp") return staged(equations, volts, RAMP_STAGES);
  return newton(equations, volts, ...PLAIN, rung === "dense newton");
}

/** Solves the settled circuit. `warm` is a solution of a similar problem (same nets), or null to start from 0 V. */
export function solveCircuit(problem: Problem, warm: Float64Array | null): Solved | Unsolved {
  const equations = new Equations(problem);
  const size = problem.netlist.nets + 1;
  let iterations = 0;
  let last: Rung = "cold newton";
  for (const rung of RUNGS) {
    if (rung === "warm newton" && warm === null) continue;
    const volts = rung === "warm newton" && warm !== null ? warm.slice() : new Float64Array(size);
    equations.adopt(volts);
    const attempt = climbRung(equations, volts, rung);
    iterations += attempt.iterations;
    last = rung;
    if (!attempt.ok) continue;
    if (!equations.limited) equations.settledAt(volts);
    return { solved: true, volts, rung, iterations, residualAmps: equations.worst().amps };
  }
  const { net, amps } = equations.worst();
  return {
    solved: false,
    rung: last,
    iterations,
    worstNet: problem.netlist.names[net] ?? "",
    residualAmps: amps,
  };
}
