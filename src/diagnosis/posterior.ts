/**
 * From scored sets to probabilities. A core is a set in which no member is silent given the others; the silent faults stand
 * beside it as a product, so that they need not be listed: the weight of a core is P(core, readings) times the product over
 * silent sites of (1 + odds).
 */
import { logSumExp } from "../numeric/log-space.ts";
import { silentOdds } from "./beside-odds.ts";
import { type Evidence, overCommon } from "./evidence.ts";
import { ExplanationSearch, type ScoredSet, type SearchLimits } from "./search.ts";
import { presentAt, type Universe } from "./universe.ts";

/** Chance that a board with nothing wrong is brought in as dead (a fault elsewhere in the unit; from memory). */
export const DEAD_THOUGH_HEALTHY = 0.02;

export interface Core {
  readonly set: readonly number[];
  readonly presentNow: readonly number[];
  /** share of all the mass found */
  readonly probability: number;
  /** per element: probability that it is present beside this core, unseen (0 for members and for those a reading would show) */
  readonly beside: Float64Array; // (elements)
  /** probability that nothing at all is faulty now, given this core */
  readonly healthyNow: number;
  readonly scored: ScoredSet;
}

/** Most cores weighed; the rest of the found mass is the remainder. */
const CORES_WEIGHED = 60;

/** Cores whose silent faults are found by asking the circuit: the first few, within so many nats of the best. */
const EXACT_CORES = 3;
const EXACT_WITHIN = 4;

/** Searches and weighs. `now` is an index behind the last event of the log. Cores come most probable first and sum to one. */
export function posteriorCores(
  universe: Universe,
  evidence: readonly Evidence[],
  commonLogWeights: Float64Array,
  limits: SearchLimits,
  now: number,
  bringsIn: Uint8Array,
): Core[] {
  const search = new ExplanationSearch(universe, evidence, commonLogWeights, limits);
  const cores = search
    .run()
    .slice(0, 2 * CORES_WEIGHED)
    .filter((scored) => search.isCore(scored))
    .slice(0, CORES_WEIGHED);
  const best = cores[0]?.score ?? 0;
  const drafts = cores.map((scored, rank) => {
    const exact = rank < EXACT_CORES && scored.score > best - EXACT_WITHIN;
    return weighCore(universe, scored, search.audibleElements(scored, exact), now, bringsIn);
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

interface SilentSums {
  /**
   * sums over silent sites of ln(1 + odds), all of them and those present now; and of -ln P(nothing there accounts for the
   * symptom), all of them and those cured since
   */
  all: number;
  arrivalCured: number;
  arrival: number;
  now: number;
}

function weighCore(
  universe: Universe,
  scored: ScoredSet,
  audible: Uint8Array,
  now: number,
  bringsIn: Uint8Array,
) {
  const { alone: odds, explaining: share } = silentOdds(universe, scored.set, audible);
  const siteOdds = new Float64Array(universe.siteRate.length);
  for (let e = 0; e < odds.length; e++) siteOdds[universe.site[e]] += odds[e];
  let explained = 0;
  for (let e = 0; e < share.length; e++) {
    share[e] /= 1 + siteOdds[universe.site[e]];
    explained += share[e];
  }
  for (let e = 0; e < share.length; e++) share[e] /= 1 + explained;
  const accounts = (element: number): boolean =>
    universe.from[element] < 0 && bringsIn[universe.fault[element]] === 1;
  const sums = silentSums(universe, odds, siteOdds, share, now, accounts);
  sums.all += Math.log1p(explained);
  const hasArrival = scored.set.some(accounts);
  // The symptom speaks of the board as it arrived: without a fault in the core that accounts for it, a
  // silent one must.
  const symptom = hasArrival ? 1 : 1 - Math.exp(-sums.arrival) * (1 - DEAD_THOUGH_HEALTHY);
  const beside = new Float64Array(odds.length);
  for (let e = 0; e < odds.length; e++) {
    if (odds[e] <= 0 && share[e] <= 0) continue;
    const alone = odds[e] / (1 + siteOdds[universe.site[e]]);
    const plain = alone + share[e] * (1 - alone);
    beside[e] = accounts(e) ? Math.min(1, plain / symptom) : plain;
  }
  const presentNow = scored.set.filter((element) => presentAt(universe, element, now));
  const curedMakesDead = hasArrival ? 1 : 1 - Math.exp(-sums.arrivalCured) * (1 - DEAD_THOUGH_HEALTHY);
  return {
    set: scored.set,
    presentNow,
    beside,
    healthyNow: presentNow.length > 0 ? 0 : (Math.exp(-sums.now) * curedMakesDead) / symptom,
    scored,
    logWeight: scored.score + sums.all + Math.log(symptom),
  };
}

function silentSums(
  universe: Universe,
  odds: Float64Array,
  siteOdds: Float64Array,
  share: Float64Array,
  now: number,
  accounts: (element: number) => boolean,
): SilentSums {
  const sums: SilentSums = { all: 0, arrivalCured: 0, arrival: 0, now: 0 };
  const done = new Uint8Array(siteOdds.length);
  const accounting = new Float64Array(siteOdds.length);
  const explaining = { arrivalCured: 0, arrival: 0, now: 0 };
  for (let e = 0; e < odds.length; e++) {
    if (accounts(e)) accounting[universe.site[e]] += odds[e];
    if (share[e] === 0) continue;
    const present = presentAt(universe, e, now);
    if (present) explaining.now += share[e];
    if (!accounts(e)) continue;
    explaining.arrival += share[e];
    if (!present) explaining.arrivalCured += share[e];
  }
  for (let e = 0; e < odds.length; e++) {
    const site = universe.site[e];
    if (odds[e] === 0 || done[site] === 1) continue;
    done[site] = 1;
    const log = Math.log1p(siteOdds[site]);
    const present = presentAt(universe, e, now);
    sums.all += log;
    if (present) sums.now += log;
    const without = -Math.log1p(-accounting[site] / (1 + siteOdds[site]));
    sums.arrival += without;
    if (!present) sums.arrivalCured += without;
  }
  sums.now -= Math.log1p(-explaining.now);
  sums.arrival -= Math.log1p(-explaining.arrival);
  sums.arrivalCured -= Math.log1p(-explaining.arrivalCured);
  return sums;
}

/** ln likelihood of each piece of evidence under a core. */
export function pieceLogLikelihoods(core: Core, commonLogWeights: Float64Array): number[] {
  return core.scored.hearings.map((hearing) => overCommon(hearing.vector, commonLogWeights));
}
