/** One solved question: a check with the faults that matter to it, and what is worked out from the solution only when asked for. */
import { Linearised } from "../circuit/linearised.ts";
import type { Values } from "../circuit/netlist.ts";
import type { ComplexValues } from "../numeric/sparse-lu-complex.ts";
import { assumedCharge } from "./assumed-spread.ts";
import { readFarads } from "./capacitance.ts";
import { climbAt } from "./climbing.ts";
import type { ColdCheck, Prediction } from "./prediction.ts";
import { type Probed, type Probing, whyUnsolved } from "./probing.ts";
import { rangesOf } from "./ranges.ts";
import { readingOf } from "./shown.ts";
import { climbingSpread, sensitivityOf } from "./spread.ts";

/** A settled circuit with how it answers to small changes. */
export interface Settled extends Probed {
  readonly linearised: Linearised;
}

export interface State {
  /** what the meter shows, with its spread: that costs as much as the solve, so it is worked out when first asked for */
  prediction(): Prediction;
  /** settled circuit behind it; null for farads, climbing readings and failures */
  readonly settled: Settled | null;
  /** effect of a further fault -> would the technician see it in this reading */
  readonly heard: Map<number, boolean>;
  /** effect of a further fault -> what the meter would then show; null where the technician would see no other reading */
  readonly beside: Map<number, Prediction | null>;
  /** farads only: the branch values, and net voltages for 1 V at the probes */
  readonly alternating: { readonly values: Values; readonly perVolt: ComplexValues } | null;
  /** asked for since it was solved, or since it last could have made place for another */
  askedAgain: boolean;
}

function stateOf(prediction: () => Prediction, rest: Partial<State> = {}): State {
  const blank = { settled: null, alternating: null, heard: new Map(), beside: new Map(), askedAgain: false };
  return { ...blank, ...rest, prediction };
}

/** Solves `check` on a circuit with these values. `near`: the same check in a circuit that differs little, or null. */
export function solveState(probing: Probing, check: ColdCheck, values: Values, near: Probed | null): State {
  if (check.mode === "farads") {
    const reading = readFarads(probing, check, values);
    if (!reading.solved || reading.perVolt === null) return stateOf(() => reading);
    const { perVolt, ...prediction } = reading;
    return stateOf(() => prediction, { alternating: { values, perVolt } });
  }
  if (check.seconds !== undefined) {
    const climbed = climbingPrediction(probing, check, climbAt(probing, check, values, [check.seconds]));
    return stateOf(() => climbed);
  }
  const probed = probing.settle(check, values, near);
  if (probed.solved) return settledState(probing, check, probed);
  const unsolved = { solved: false, why: whyUnsolved(probed) } as const;
  return stateOf(() => unsolved);
}

/** The state of a circuit that has been solved in the range that the meter would choose. */
export function settledState(probing: Probing, check: ColdCheck, probed: Probed): State {
  const linearised = new Linearised(probed.problem, probed.answer.volts);
  let known: Prediction | null = null;
  const predict = (): Prediction => {
    const spread = sensitivityOf(
      probing.circuit,
      check.mode,
      probed,
      linearised,
      rangesOf(check.mode, probing.meter),
      probing.boardOhms,
    );
    return readingOf(check, probing.meter, probed, spread);
  };
  return stateOf(
    () => {
      known ??= predict();
      return known;
    },
    { settled: { ...probed, linearised } },
  );
}

function climbingPrediction(
  probing: Probing,
  check: ColdCheck,
  found: ReturnType<typeof climbAt>,
): Prediction {
  if ("solved" in found) return { solved: false, why: whyUnsolved(found) };
  const [probed] = found;
  const { problem, answer } = probed;
  const settled = sensitivityOf(
    probing.circuit,
    check.mode,
    probed,
    new Linearised(problem, answer.volts),
    rangesOf(check.mode, probing.meter),
    probing.boardOhms,
  );
  return readingOf(
    check,
    probing.meter,
    probed,
    climbingSpread(check.mode, probed, settled, assumedCharge(probing.circuit, probed)),
  );
}
