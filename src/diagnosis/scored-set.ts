/** A set of faults with its joint score: how likely it is before the readings, and how it explains each of them. */
import { COMMON_POINTS, type Evidence, overCommon } from "./evidence.ts";
import { logPrior } from "./set-prior.ts";
import { presentAt, type Universe } from "./universe.ts";

/** How one piece of evidence sees a set: the faults present then, and its answer. */
interface Hearing {
  readonly faults: readonly number[];
  readonly vector: Float64Array;
}

export interface ScoredSet {
  /** elements, ascending */
  readonly set: readonly number[];
  readonly logPrior: number;
  readonly logLikelihood: number;
  readonly score: number;
  readonly hearings: readonly Hearing[];
}

/** ln P(set, readings) from scratch, silent members included: the joint score that any set has. */
export function scoreSet(
  universe: Universe,
  evidence: readonly Evidence[],
  commonLogWeights: Float64Array,
  set: readonly number[],
): ScoredSet {
  const sorted = [...set].sort((a, b) => a - b);
  const hearings = evidence.map((piece) => {
    const faults = faultsAt(universe, sorted, piece.logIndex);
    return { faults, vector: piece.logLikelihood(faults) };
  });
  return finish(commonLogWeights, sorted, logPrior(universe, sorted), hearings);
}

function faultsAt(universe: Universe, set: readonly number[], logIndex: number): number[] {
  return set
    .filter((element) => presentAt(universe, element, logIndex))
    .map((element) => universe.fault[element])
    .sort((a, b) => a - b);
}

/** A set from its prior and hearings. */
export function finish(
  commonLogWeights: Float64Array,
  set: readonly number[],
  prior: number,
  hearings: readonly Hearing[],
): ScoredSet {
  const total = new Float64Array(COMMON_POINTS.length);
  for (const hearing of hearings) for (let z = 0; z < total.length; z++) total[z] += hearing.vector[z];
  const logLikelihood = overCommon(total, commonLogWeights);
  return { set, logPrior: prior, logLikelihood, score: prior + logLikelihood, hearings };
}
