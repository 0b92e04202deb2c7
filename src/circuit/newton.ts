/** Newton's method on a circuit, with the factors kept while they are good enough. */
import { solveDense } from "../numeric/dense-lu.ts";
import { solve } from "../numeric/sparse-lu.ts";
import type { Equations } from "./equations.ts";

const MOST_STEPS = 100;
/** A step this small leaves no net wrong: one that hangs on leaks takes from rounding what the factors say of it. */
const STEP_VOLTS = 1e-6;
/** Laws that bend may leave nets wrong by this much in all: fifty thousand times finer than readings are compared ... */
const BENT_VOLTS = 2e-9;
/** ... and one of them may miss this much current: a junction of the meter's milliamp, by a ten-thousandth of a microvolt. */
const BENT_AMPS = 1e-12;
/** Currents are right when they miss by less than this share of the source's short-circuit current ... */
const CURRENT_SHARE = 1e-12;
/** ... and by what doubles can add up through the largest conductance. */
const ROUNDING = 2e-15;
/** Steps with right currents after which nets that still move are left: they tremble by rounding for ever. */
const PATIENCE = 15;
/** Beyond this many n kT/q a tangent's end is no place to linearise at. */
const NEAR = 0.3;
/** Steps with factors that are kept, for one with new ones: about what they cost. */
const CHORD_STEPS = 1;
/** Factors made within this many n kT/q of the answer are its own. */
const SAME = 1e-4;

export interface Attempt {
  readonly ok: boolean;
  readonly steps: number;
}

function tolerance(equations: Equations, volts: Float64Array): number {
  let most = 0;
  for (const volt of volts) if (Math.abs(volt) > most) most = Math.abs(volt);
  return CURRENT_SHARE * equations.problem.source.amps + ROUNDING * equations.mostSiemens * most + 1e-18;
}

/** The unfactored matrix written out row by row. */
function denseMatrix({ problem, matrix }: Equations): Float64Array {
  const { size, program } = problem.frame.plan;
  const dense = new Float64Array(size * size);
  let at = 0;
  for (let k = 0; k < size; k++) {
    dense[k * size + k] = matrix[k];
    const count = program[at];
    for (let r = 1; r <= count; r++) {
      const other = program[at + r];
      dense[other * size + k] = matrix[program[at + count + r]];
      dense[k * size + other] = matrix[program[at + 2 * count + r]];
    }
    at += 1 + 3 * count + count * count;
  }
  return dense;
}

/** Makes `leaving` a step; with `anew`, from the slopes at the junctions' points. False where the matrix is singular. */
function step(equations: Equations, anew: boolean, dense: boolean): boolean {
  const { change, leaving, problem } = equations;
  const { plan } = problem.frame;
  for (let i = 0; i < plan.size; i++) change[i] = -leaving[i];
  if (anew || dense) {
    equations.stamp();
    equations.points.factored();
  }
  if (dense) return solveDense(plan.size, denseMatrix(equations), change);
  if (anew && !equations.factorIn()) return false;
  solve(plan, equations.matrix, change);
  return true;
}

/** Would a few steps with the factors in hand end it? Each leaves about the share `farthest` of it. */
function chordsWillDo(bent: number, farthest: number): boolean {
  return farthest < 1 && bent * farthest ** CHORD_STEPS <= 1;
}

/**
 * Newton's method from `volts`, which becomes the answer; the equations stand at its start.
 * @param dense - by the slow and safe factorization
 * @param factored - the matrix holds factors of a circuit that differs little
 */
export function newton(
  equations: Equations,
  volts: Float64Array,
  { dense = false, factored = false } = {},
): Attempt {
  const { change, points, junctions } = equations;
  const { bjts } = equations.problem.netlist;
  const gain = 1 + bjts.forwardGain;
  let patience = 0;
  let anew = true;
  for (let steps = 1; steps <= MOST_STEPS; steps++) {
    equations.currents(volts);
    if (!step(equations, anew, dense)) return { ok: false, steps };
    let moved = 0;
    for (let i = 0; i < volts.length - 1; i++) {
      volts[i] += change[i];
      const size = Math.abs(change[i]);
      if (!(size <= moved)) moved = size;
    }
    if (!Number.isFinite(moved)) return { ok: false, steps };
    points.judge(junctions, volts, gain);
    const { error, missing, farthest } = points;
    // Of all that is allowed, how much do laws still miss?
    const bent = Math.max(error / BENT_VOLTS, missing / BENT_AMPS);
    if (bent <= 1) {
      if (moved <= STEP_VOLTS) return { ok: true, steps };
      if (equations.worst().amps <= tolerance(equations, volts) && ++patience >= PATIENCE)
        return { ok: true, steps };
    }
    // Factors from before that did not do at once are renewed: in a sweep, the points to come have them too.
    anew = (factored && steps === 1) || !chordsWillDo(bent, farthest);
    if (anew && farthest > NEAR) points.hold(junctions);
    else points.follow(junctions);
  }
  return { ok: false, steps: MOST_STEPS };
}

/** Are the factors in hand those of the answer? */
export function ownFactors({ points }: Equations): boolean {
  return points.farthest <= SAME;
}
