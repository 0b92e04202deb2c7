/**
 * From scored sets to probabilities. A core is a set in which no member is silent given the others; the silent faults stand
 * beside it as a product, so that they need not be listed: the weight of a core is P(core, readings) times the product over
 * silent sites of (1 + odds).
 */
import { logSumExp } from "../numeric/log-space.ts";
import { readingRatios } from "./beside-likelihood.ts";
import { type Evidence, overCommon } from "./evidence.ts";
import type { ScoredSet } from "./scored-set.ts";
import { ExplanationSearch } from "./search.ts";
import type { SearchLimits } from "./search-limits.ts";
import { byScore } from "./set-order.ts";
import { type SilentBeside, silentBeside } from "./silent-beside.ts";
import { presentAt, type Universe } from "./universe.ts";

export interface Core {
  readonly set: readonly number[];
  readonly presentNow: readonly number[];
  /** share of all the mass found */
  readonly probability: number;
  /** per element: probability that it is present beside this core, unseen (0 for members and for those that the readings rule out) */
  readonly beside: Float64Array; // (elements)
  /** probability that one at least of these elements is present beside this core, unseen */
  readonly anyBeside: SilentBeside["any"];
  /** probability that nothing stands beside it now, given this core */
  readonly nothingBeside: number;
  readonly scored: ScoredSet;
}

/** Most cores weighed; the rest of the found mass is the remainder. */
const CORES_WEIGHED = 160;

/** Cores whose neighbours of one fault more are weighed by asking the circuit: the first few, within so many nats of the best. */
const EXACT_CORES = 3;
const EXACT_WITHIN = 4;

/** Searches and weighs. `now` is an index behind the last event of the log. Cores come most probable first and sum to one. */
export function posteriorCores(
  universe: Universe,
  evidence: readonly Evidence[],
  commonLogWeights: Float64Array,
  limits: SearchLimits,
  now: number,
  bringsIn: ArrayLike<number>,
): Core[] {
  const search = new ExplanationSearch(universe, evidence, commonLogWeights, limits);
  const stripped = new Map<string, ScoredSet>();
  for (const scored of search.run().slice(0, 2 * CORES_WEIGHED)) {
    const core = search.coreOf(scored);
    stripped.set(core.set.join(","), core);
  }
  const cores = [...stripped.values()].sort(byScore).slice(0, CORES_WEIGHED);
  const best = cores[0]?.score ?? 0;
  const accounts = Float64Array.from(universe.fault, (fault, e) =>
    universe.from[e] < 0 ? bringsIn[fault] : 0,
  );
  const silent = search.hearingAlone().silent();
  const drafts = cores.map((scored, rank) => {
    const exact = rank < EXACT_CORES && scored.score > best - EXACT_WITHIN;
    const ratios = exact
      ? readingRatios(universe, commonLogWeights, scored, search.hearingBeside(scored), (set) =>
          search.holds(set),
        )
      : silent;
    return weighCore(universe, scored, ratios, now, accounts);
  });
  const total = logSumExp(drafts.map((draft) => draft.logWeight));
  return drafts
    .map(({ logWeight, ...core }) => ({ ...core, probability: Math.exp(logWeight - total) }))
    .sort(
      (a, b) => b.probability - a.probability || a.set.length - b.set.length || compareSets(a.set, b.set),
    );
}

function compareSets(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) if (a[i] !== b[i]) return a[i] - b[i];
  return 0;
}

function weighCore(
  universe: Universe,
  scored: ScoredSet,
  ratios: Float64Array,
  now: number,
  accounts: Float64Array,
) {
  const silent = silentBeside(universe, scored.set, ratios, accounts, now);
  const presentNow = scored.set.filter((element) => presentAt(universe, element, now));
  return {
    set: scored.set,
    presentNow,
    beside: silent.each,
    anyBeside: silent.any,
    nothingBeside: silent.noneNow,
    scored,
    logWeight: scored.score + silent.logWeight + Math.log(silent.symptom),
  };
}

/** ln likelihood of each piece of evidence under a core. */
export function pieceLogLikelihoods(core: Core, commonLogWeights: Float64Array): number[] {
  return core.scored.hearings.map((hearing) => overCommon(hearing.vector, commonLogWeights));
}
