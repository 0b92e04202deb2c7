/**
 * Solves of one compiled board with the probes on it. Keeps the elimination plan of each pair of probes, and the healthy
 * answer of each check as the start for every faulted one.
 */

import type { Problem } from "../circuit/equations.ts";
import { type Frame, frameOf } from "../circuit/frame.ts";
import { Linearised } from "../circuit/linearised.ts";
import type { Values } from "../circuit/netlist.ts";
import { type Solved, solveCircuit, type Unsolved } from "../circuit/solve.ts";
import type { ColdCircuit } from "../cold/cold-circuit.ts";
import type { ColdCheck } from "./prediction.ts";
import { type Range, rangesOf, rawAt } from "./ranges.ts";
import type { MeterSettings } from "./settings.ts";

/** Plans kept; each is some tens of kilobytes. */
const MOST_FRAMES = 200;

/** Junctions carry less in a higher range and read more ohms: this far above a range's limit, the range hardly fits. */
const WELL_ABOVE = 3;
/** From one range to the next the current falls tenfold and no more, so no junction reads more than this many times as much. */
const JUNCTIONS_READ_MORE = 10;
/** A reading is of ohms, and the same in every range, where a small signal sees at least this share of it. */
const STRAIGHT_SHARE = 0.7;

/** The settled circuit with the meter on it, in the range that fits (or the last one). */
export interface Probed {
  readonly solved: true;
  readonly problem: Problem;
  readonly range: Range;
  readonly answer: Solved;
  /** volts between the probes */
  readonly volts: number;
  /** volts in diode mode, else ohms; before the OL rule */
  readonly raw: number;
}

export class Probing {
  readonly circuit: ColdCircuit;
  readonly meter: MeterSettings;
  /** insulation of the board: no part of the circuit, it only blurs readings of megohms */
  readonly boardOhms: number;
  readonly #frames = new Map<string, Frame>();
  /** check and range -> net voltages of the healthy board */
  readonly #healthy = new Map<string, Float64Array>();

  constructor(circuit: ColdCircuit, meter: MeterSettings, boardOhms = Number.POSITIVE_INFINITY) {
    this.circuit = circuit;
    this.meter = meter;
    this.boardOhms = boardOhms;
  }

  /** The plan for probes on `red` and `black` with the leaks of `values`. */
  frame(red: number, black: number, values: Values): Frame {
    // swapped leads join the same nets
    const [low, high] = red < black ? [red, black] : [black, red];
    let key = `${low},${high}`;
    for (const one of values.extra) key += `,${one.from},${one.to}`;
    const known = this.#frames.get(key);
    if (known !== undefined) return known;
    const oldest = this.#frames.keys().next();
    if (this.#frames.size >= MOST_FRAMES && !oldest.done) this.#frames.delete(oldest.value);
    const pairs = [low, high, ...values.extra.flatMap((one) => [one.from, one.to])];
    const frame = frameOf(this.circuit.netlist, pairs);
    this.#frames.set(key, frame);
    return frame;
  }

  /** The problem of one range: the meter as a Norton source between the probes. */
  problem(check: ColdCheck, range: Range, values: Values): Problem {
    const plus = this.circuit.netOf(check.red);
    const minus = this.circuit.netOf(check.black);
    return {
      netlist: this.circuit.netlist,
      frame: this.frame(plus, minus, values),
      values,
      source: { plus, minus, amps: range.openVolts / range.ohms, siemens: 1 / range.ohms },
      companions: null,
    };
  }

  /**
   * Tries the ranges of the check's mode in order until the reading fits; each is its own solve.
   * @param near - the same check in a circuit that differs little: its range is tried first, since mostly it fits again, and its
   * answer is the start
   */
  settle(check: ColdCheck, values: Values, near: Probed | null = null): Probed | Unsolved {
    const ranges = rangesOf(check.mode, this.meter);
    if (near !== null && near.range !== ranges[0]) {
      const again = this.inRange(check, near, values);
      if (again.solved && this.holdsRange(check, again)) return again;
    }
    let last: Probed | null = null;
    for (const [index, range] of ranges.entries()) {
      const key = `${check.mode === "diode" ? "d" : "o"}${index},${check.red},${check.black}`;
      const problem = this.problem(check, range, values);
      const start = near !== null && near.range === range ? near.answer.volts : this.#healthy.get(key);
      const answer = solveCircuit(problem, start ?? null);
      if (!answer.solved) return answer;
      if (values === this.circuit.healthy) this.#remember(key, answer.volts);
      last = probed(check, problem, range, answer);
      if (last.raw <= range.limit) return last;
    }
    if (last === null) throw new Error(`the mode ${check.mode} has no range`);
    return last;
  }

  /** The circuit with other values in the range that `near` was read in, started from there. */
  inRange(check: ColdCheck, near: Probed, values: Values): Probed | Unsolved {
    const problem = this.problem(check, near.range, values);
    const answer = solveCircuit(problem, near.answer.volts);
    return answer.solved ? probed(check, problem, near.range, answer) : answer;
  }

  /** The quantity that the meter of `probed` would show at these net voltages, in the same range. */
  rawOf(check: ColdCheck, { problem, range }: Probed, volts: Float64Array): number {
    return rawAt(check.mode, range, voltsAtProbes(problem, volts));
  }

  /** Would the meter surely read `raw` in the range of `probed` too: it fits, and is well above the range before? */
  staysInRange(check: ColdCheck, { range }: Probed, raw: number): boolean {
    const ranges = rangesOf(check.mode, this.meter);
    const at = ranges.indexOf(range);
    const fits = raw <= range.limit || at === ranges.length - 1;
    return fits && (at === 0 || raw > WELL_ABOVE * ranges[at - 1].limit);
  }

  /** The same of a circuit that is solved: where the range below is near, the reading has to be ohms, not a junction. */
  holdsRange(check: ColdCheck, found: Probed): boolean {
    if (!this.staysInRange(check, found, found.raw)) return false;
    const ranges = rangesOf(check.mode, this.meter);
    const below = ranges[ranges.indexOf(found.range) - 1];
    if (below === undefined || found.raw > JUNCTIONS_READ_MORE * below.limit) return true;
    const { problem, answer, raw } = found;
    const { plus, minus, siemens } = problem.source;
    const seen = new Linearised(problem, answer.volts).impedance(plus, minus);
    // the meter stands beside what it measures
    return 1 / (1 / seen - siemens) > STRAIGHT_SHARE * raw;
  }

  #remember(key: string, volts: Float64Array): void {
    if (this.#healthy.size >= 4 * MOST_FRAMES) this.#healthy.clear();
    this.#healthy.set(key, volts);
  }
}

function probed(check: ColdCheck, problem: Problem, range: Range, answer: Solved): Probed {
  const volts = voltsAtProbes(problem, answer.volts);
  return { solved: true, problem, range, answer, volts, raw: rawAt(check.mode, range, volts) };
}

function voltsAtProbes(problem: Problem, volts: Float64Array): number {
  const { plus, minus } = problem.source;
  const ground = problem.netlist.nets;
  return volts[plus < 0 ? ground : plus] - volts[minus < 0 ? ground : minus];
}

/** Why a solve gave no answer, in one sentence. */
export function whyUnsolved(unsolved: Unsolved): string {
  const amps = unsolved.residualAmps.toExponential(1);
  return `no solution: ${unsolved.rung} was the last of the ways tried, after ${unsolved.iterations} iterations; at net ${unsolved.worstNet} the currents still miss by ${amps} A`;
}
