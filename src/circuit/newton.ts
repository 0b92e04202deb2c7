/** Newton's method on a circuit, with the factors kept while they are good enough. */
import { solveDense } from "../numeric/dense-lu.ts";
import type { EliminationPlan } from "../numeric/elimination-plan.ts";
import { factor, MATRIX, solve, VECTOR } from "../numeric/sparse-lu.ts";
import { DESK } from "./desk.ts";
import type { Equations } from "./equations.ts";
import { follow, hold, type Judgement, judge, markFactored } from "./junction-points.ts";
import { takeStep } from "./kirchhoff.ts";

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
/** Factors made within this many n kT/q of the answer are its own. */
const SAME = 1e-4;

export interface Attempt {
  readonly ok: boolean;
  readonly steps: number;
}

function tolerance({ problem, mostSiemens }: Equations): number {
  let most = 0;
  for (let net = 0; net < problem.netlist.nets; net++) most = Math.max(most, Math.abs(DESK.netVolts[net]));
  return CURRENT_SHARE * problem.source.amps + ROUNDING * mostSiemens * most + 1e-18;
}

/** The unfactored matrix written out row by row. */
function denseMatrix({ size, program }: EliminationPlan): Float64Array {
  const dense = new Float64Array(size * size);
  let at = 0;
  for (let k = 0; k < size; k++) {
    dense[k * size + k] = MATRIX[k];
    const count = program[at];
    for (let r = 1; r <= count; r++) {
      const other = program[at + r];
      dense[other * size + k] = MATRIX[program[at + count + r]];
      dense[k * size + other] = MATRIX[program[at + 2 * count + r]];
    }
    at += 1 + 3 * count + count * count;
  }
  return dense;
}

/** Makes the currents in the vector the step that would stop them; with `anew`, by new factors. False where these are singular. */
function step(equations: Equations, anew: boolean, dense: boolean): boolean {
  const { plan } = equations.problem.frame;
  if (anew || dense) {
    equations.stamp();
    markFactored(equations.junctions);
  }
  if (dense) {
    const vector = VECTOR.slice(0, plan.size);
    const regular = solveDense(plan.size, denseMatrix(plan), vector);
    VECTOR.set(vector);
    return regular;
  }
  if (anew && !factor(plan)) return false;
  solve(plan);
  return true;
}

/** Newton's method from the voltages in hand, which become the answer. `dense`: by the slow and safe factorization. */
export function newton(equations: Equations, dense = false): Attempt {
  const { junctions, judgement } = equations;
  const { netlist } = equations.problem;
  const gain = 1 + netlist.bjts.forwardGain;
  const { nets } = netlist;
  let patience = 0;
  let anew = true;
  for (let steps = 1; steps <= MOST_STEPS; steps++) {
    equations.currents();
    const right = trembles(judgement, steps) && equations.worst().amps <= tolerance(equations);
    if (!step(equations, anew, dense)) return { ok: false, steps };
    const moved = takeStep(nets);
    if (!Number.isFinite(moved)) return { ok: false, steps };
    judge(junctions, gain, judgement);
    const bent = bentBy(judgement);
    if (bent <= 1 && (moved <= STEP_VOLTS || (right && ++patience >= PATIENCE))) return { ok: true, steps };
    anew = !chordWillDo(bent, judgement.farthest);
    if (anew && judgement.farthest > NEAR) hold(junctions);
    else follow(junctions);
  }
  return { ok: false, steps: MOST_STEPS };
}

/** Of all that laws may miss, how much do they? */
function bentBy({ error, missing }: Judgement): number {
  return Math.max(error / BENT_VOLTS, missing / BENT_AMPS);
}

/** Was the last step right for every law, and yet not the last? */
function trembles(judgement: Judgement, steps: number): boolean {
  return steps > 1 && bentBy(judgement) <= 1;
}

/** Would one more step with the factors in hand end it? It leaves about the share `farthest` of what is missed. */
function chordWillDo(bent: number, farthest: number): boolean {
  return bent * farthest <= 1;
}

/** Are the factors in hand those of the answer? */
export function ownFactors({ judgement }: Equations): boolean {
  return judgement.farthest <= SAME;
}
