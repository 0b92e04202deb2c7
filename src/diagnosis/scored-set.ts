/** A set of faults with its joint score: how likely it is before the readings, and how it explains each of them. */
import { COMMON_POINTS, type Evidence, overCommon } from "./evidence.ts";
import { type HeardSet, heardSets } from "./heard-set.ts";
import { logPrior } from "./set-prior.ts";
import { presentAt, type Universe } from "./universe.ts";

/** How one piece of evidence sees a set: the faults present then, and its answer, which may be that of fewer where the rest is silent. */
interface Hearing {
  readonly heard: HeardSet;
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
    let heard = heardSets(piece).none;
    for (const element of sorted)
      if (presentAt(universe, element, piece.logIndex)) heard = heard.with(universe.fault[element]);
    return { heard, vector: heard.vector };
  });
  return finish(commonLogWeights, sorted, logPrior(universe, sorted), hearings);
}

/** A set from its prior and hearings. */
export function finish(
  commonLogWeights: Float64Array,
  set: readonly number[],
  prior: number,
  hearings: readonly Hearing[],
): ScoredSet {
  const logLikelihood = jointLog(
    hearings.map(({ vector }) => vector),
    commonLogWeights,
  );
  return { set, logPrior: prior, logLikelihood, score: prior + logLikelihood, hearings };
}

/** ln P of all answers together: they share the common unknown. */
export function jointLog(vectors: readonly Float64Array[], commonLogWeights: Float64Array): number {
  const total = new Float64Array(COMMON_POINTS.length);
  for (const vector of vectors) for (let z = 0; z < total.length; z++) total[z] += vector[z];
  return overCommon(total, commonLogWeights);
}
