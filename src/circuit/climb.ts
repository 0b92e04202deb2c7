/**
 * The first seconds after the probes touch: capacitors empty at the start, charged by the meter. Backward Euler with the step
 * doubled and compared (Richardson), so that the step follows the error that it makes.
 */
import { type Companions, Equations, type Problem } from "./equations.ts";
import { type Solved, solveCircuit, type Unsolved } from "./solve.ts";

/** The step's error is held below this, in volts at any capacitor. */
const STEP_ERROR_VOLTS = 5e-4;
const FIRST_STEP_SECONDS = 1e-6;
const MOST_STEPS = 4000;

export interface Climbed {
  readonly solved: true;
  /** volts of all nets at each of the times asked for */
  readonly volts: readonly Float64Array[];
  readonly steps: number;
}

function step(
  problem: Problem,
  charge: Float64Array,
  seconds: number,
  warm: Float64Array | null,
): Solved | Unsolved {
  const { farads } = problem.values;
  const companions: Companions = {
    siemens: farads.map((farad) => farad / seconds),
    amps: farads.map((farad, i) => (farad / seconds) * charge[i]),
  };
  return solveCircuit({ ...problem, companions }, warm);
}

function chargeAt(problem: Problem, volts: Float64Array): Float64Array {
  const { from, to } = problem.netlist.capacitors;
  const ground = problem.netlist.nets;
  const charge = new Float64Array(from.length);
  for (let i = 0; i < from.length; i++)
    charge[i] = volts[from[i] < 0 ? ground : from[i]] - volts[to[i] < 0 ? ground : to[i]];
  return charge;
}

function worstDifference(one: Float64Array, other: Float64Array, farads: Float64Array): number {
  let worst = 0;
  for (let i = 0; i < one.length; i++)
    if (farads[i] > 0) worst = Math.max(worst, Math.abs(one[i] - other[i]));
  return worst;
}

/** Net voltages at each of `times` (ascending, seconds after touching). */
export function climb(problem: Problem, times: readonly number[]): Climbed | Unsolved {
  const { farads } = problem.values;
  let charge: Float64Array = new Float64Array(farads.length);
  let warm: Float64Array | null = null;
  let now = 0;
  let seconds = FIRST_STEP_SECONDS;
  let steps = 0;
  const found: Float64Array[] = [];
  for (const time of times) {
    while (now < time) {
      if (++steps > MOST_STEPS) return failure(problem, steps);
      const h = Math.min(seconds, time - now);
      const whole = step(problem, charge, h, warm);
      if (!whole.solved) return whole;
      const half = step(problem, charge, h / 2, whole.volts);
      if (!half.solved) return half;
      const second = step(problem, chargeAt(problem, half.volts), h / 2, half.volts);
      if (!second.solved) return second;
      const coarse = chargeAt(problem, whole.volts);
      const fine = chargeAt(problem, second.volts);
      const error = worstDifference(coarse, fine, farads);
      const scale = Math.min(2.5, Math.max(0.2, 0.9 * Math.sqrt(STEP_ERROR_VOLTS / Math.max(error, 1e-12))));
      if (error > 2 * STEP_ERROR_VOLTS) {
        seconds = h * scale;
        continue;
      }
      now = time - now - h < 1e-12 * time ? time : now + h;
      charge = fine.map((volts, i) => 2 * volts - coarse[i]);
      warm = second.volts;
      seconds = h === seconds || scale < 1 ? h * scale : seconds;
    }
    const end = step(problem, charge, FIRST_STEP_SECONDS, warm);
    if (!end.solved) return end;
    found.push(end.volts);
  }
  return { solved: true, volts: found, steps };
}

function failure(problem: Problem, iterations: number): Unsolved {
  const equations = new Equations(problem);
  return {
    solved: false,
    rung: "warm newton",
    iterations,
    worstNet: problem.netlist.names[0] ?? "",
    residualAmps: equations.worst().amps,
  };
}
