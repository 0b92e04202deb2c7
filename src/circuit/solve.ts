/**
 * Newton's method on a circuit, and the ladder of ways to start it. Every rung ends with a plain solve, so that whichever
 * worked, the answer satisfies the same equations; a solve that fails is a value, never a number.
 */
import { DESK } from "./desk.ts";
import { Equations, type Problem } from "./equations.ts";
import { JUNCTION_LEAK_SIEMENS } from "./junction.ts";
import { follow, settle } from "./junction-points.ts";
import { type Attempt, newton, ownFactors } from "./newton.ts";

export type Rung = "warm newton" | "cold newton" | "gmin stepping" | "source ramp" | "dense newton";

export interface Solved {
  readonly solved: true;
  /** per net, and one more place for the reference (0 V) */
  readonly volts: Float64Array;
  readonly rung: Rung;
  readonly iterations: number;
  /** the most current that any branch can still miss of its law */
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
function staged(equations: Equations, stages: readonly (readonly [number, number])[]): Attempt {
  let steps = 0;
  for (const [gmin, ramp] of stages) {
    equations.gmin = gmin;
    equations.ramp = ramp;
    const attempt = newton(equations);
    steps += attempt.steps;
    if (!attempt.ok) return { ok: false, steps };
    follow(equations.junctions);
  }
  return { ok: true, steps };
}

const PLAIN = [JUNCTION_LEAK_SIEMENS, 1] as const;
const GMIN_STAGES = [1e-2, 1e-3, 1e-4, 1e-5, 1e-6, 1e-8, 1e-10].map((gmin) => [gmin, 1] as const);
const RAMP_STAGES = Array.from({ length: 20 }, (_, i) => [JUNCTION_LEAK_SIEMENS, (i + 1) / 20] as const);

const RUNGS: readonly Rung[] = ["warm newton", "cold newton", "gmin stepping", "source ramp", "dense newton"];

function climbRung(equations: Equations, rung: Rung): Attempt {
  if (rung === "gmin stepping") return staged(equations, [...GMIN_STAGES, PLAIN]);
  if (rung === "source ramp") return staged(equations, RAMP_STAGES);
  [equations.gmin, equations.ramp] = PLAIN;
  return newton(equations, rung === "dense newton");
}

/** Solves the settled circuit. `warm` is a solution of a similar problem (same nets), or null to start from 0 V; it must not change any more. */
export function solveCircuit(problem: Problem, warm: Float64Array | null): Solved | Unsolved {
  const equations = new Equations(problem);
  const size = problem.netlist.nets + 1;
  let iterations = 0;
  let last: Rung = "cold newton";
  for (const rung of RUNGS) {
    if (rung === "warm newton" && warm === null) continue;
    equations.startAt((rung === "warm newton" ? warm : null) ?? new Float64Array(size));
    const attempt = climbRung(equations, rung);
    iterations += attempt.steps;
    last = rung;
    if (!attempt.ok) continue;
    const volts = DESK.netVolts.slice(0, size);
    settle(equations.junctions);
    equations.settledAt(volts, rung !== "dense newton" && ownFactors(equations));
    return { solved: true, volts, rung, iterations, residualAmps: equations.judgement.missing };
  }
  equations.currents();
  const { net, amps } = equations.worst();
  return {
    solved: false,
    rung: last,
    iterations,
    worstNet: problem.netlist.names[net] ?? "",
    residualAmps: amps,
  };
}
