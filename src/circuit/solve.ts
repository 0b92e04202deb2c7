/**
 * Newton's method on a circuit, and the ladder of ways to start it. Every rung ends with a plain solve, so that whichever
 * worked, the answer satisfies the same equations; a solve that fails is a value, never a number.
 */
import { Equations, type Problem, type Settled } from "./equations.ts";
import { JUNCTION_LEAK_SIEMENS } from "./junction.ts";
import { type Attempt, newton, ownFactors } from "./newton.ts";

export type Rung = "warm newton" | "cold newton" | "gmin stepping" | "source ramp" | "dense newton";

export interface Solved extends Settled {
  readonly solved: true;
  readonly rung: Rung;
  readonly iterations: number;
  /** the current that Kirchhoff's law missed at the worst net before the last step */
  readonly residualAmps: number;
}

export interface Unsolved {
  readonly solved: false;
  readonly rung: Rung;
  readonly iterations: number;
  readonly worstNet: string;
  readonly residualAmps: number;
}

/** Runs a list of (gmin, ramp) stages, each from where the last ended. */
function staged(
  equations: Equations,
  volts: Float64Array,
  stages: readonly (readonly [number, number])[],
): Attempt {
  let steps = 0;
  for (const [gmin, ramp] of stages) {
    equations.gmin = gmin;
    equations.ramp = ramp;
    const attempt = newton(equations, volts);
    steps += attempt.steps;
    if (!attempt.ok) return { ok: false, steps };
    equations.points.follow(equations.junctions);
  }
  return { ok: true, steps };
}

const PLAIN = [JUNCTION_LEAK_SIEMENS, 1] as const;
const GMIN_STAGES = [1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-8, 1e-10].map((gmin) => [gmin, 1] as const);
const RAMP_STAGES = Array.from({ length: 20 }, (_, i) => [JUNCTION_LEAK_SIEMENS, (i + 1) / 20] as const);

const RUNGS: readonly Rung[] = ["warm newton", "cold newton", "gmin stepping", "source ramp", "dense newton"];

function climbRung(equations: Equations, volts: Float64Array, rung: Rung): Attempt {
  if (rung === "gmin stepping") return staged(equations, volts, [...GMIN_STAGES, PLAIN]);
  if (rung === "source ramp") return staged(equations, volts, RAMP_STAGES);
  [equations.gmin, equations.ramp] = PLAIN;
  return newton(equations, volts, rung === "dense newton");
}

/** Solves the settled circuit. `warm` is a solution of a similar problem (same netlist), or null to start from 0 V. */
export function solveCircuit(problem: Problem, warm: Settled | null): Solved | Unsolved {
  const equations = new Equations(problem);
  const size = problem.netlist.nets + 1;
  let iterations = 0;
  let last: Rung = "cold newton";
  for (const rung of RUNGS) {
    if (rung === "warm newton" && warm === null) continue;
    const start = rung === "warm newton" ? warm : null;
    const volts = start === null ? new Float64Array(size) : start.volts.slice();
    equations.startAt(volts, start === null ? null : start.junctionAmps);
    const attempt = climbRung(equations, volts, rung);
    iterations += attempt.steps;
    last = rung;
    if (!attempt.ok) continue;
    const junctionAmps = new Float64Array(equations.points.at.length);
    equations.points.ampsAtEnd(equations.junctions, junctionAmps);
    equations.settledAt(volts, ownFactors(equations, rung === "dense newton"));
    return { solved: true, volts, junctionAmps, rung, iterations, residualAmps: equations.worst().amps };
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
