/**
 * The first seconds after the probes touch: capacitors empty at the start, charged by the meter. Backward Euler with the step
 * doubled and compared (Richardson), so that the step follows the error that it makes.
 */
import { type Companions, Equations, type Problem } from "./equations.ts";
import { type Solved, solveCircuit, type Unsolved } from "./solve.ts";

/** The step's error is held below this, in volts at any capacitor. */
const STEP_ERROR_VOLTS = 5e-4;
/**
 * Where the current at the probes is what is read, its error in one step is held below this share of it as well: nearly charged,
 * a hundred microvolts are all of the current. A step is then a twentieth of a time constant, good to 0.04 % of the current.
 */
const STEP_ERROR_SHARE = 5e-4;
/** Share of the short-circuit current below which no meter tells one current from another. */
const LEAST_CURRENT_SHARE = 1e-9;
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

/** What drives the meter's current: the source's open volts less the volts at the probes. */
function dropAt({ source, netlist }: Problem, volts: Float64Array): number {
  const at = (net: number) => volts[net < 0 ? netlist.nets : net];
  return source.amps / source.siemens - (at(source.plus) - at(source.minus));
}

/** How much one step's current at the probes depends on whether it was taken whole or in halves, as a part of what is allowed. */
function currentError(problem: Problem, whole: Float64Array, halves: Float64Array): number {
  const [coarse, fine] = [dropAt(problem, whole), dropAt(problem, halves)];
  const least = (LEAST_CURRENT_SHARE * problem.source.amps) / problem.source.siemens;
  return Math.abs(coarse - fine) / (STEP_ERROR_SHARE * Math.max(Math.abs(fine), least));
}

/**
 * Net voltages at each of `times` (ascending, seconds after touching). `reads` is what the meter makes of them: volts at the
 * probes, or ohms from the current there.
 */
export function climb(
  problem: Problem,
  times: readonly number[],
  reads: "volts" | "ohms",
): Climbed | Unsolved {
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
      const error = Math.max(
        worstDifference(coarse, fine, farads) / STEP_ERROR_VOLTS,
        reads === "ohms" ? currentError(problem, whole.volts, second.volts) : 0,
      );
      const scale = Math.min(2.5, Math.max(0.2, 0.9 / Math.sqrt(Math.max(error, 1e-8))));
      if (error > 2) {
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
  equations.currents();
  return {
    solved: false,
    rung: "warm newton",
    iterations,
    worstNet: problem.netlist.names[0] ?? "",
    residualAmps: equations.worst().amps,
  };
}
