import type { Fault } from "../board/fault.ts";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { PLANNING_RATES } from "./planning-rates.ts";

/** What may be wrong with the board, as the planner weighs it: an explanation alone, or with one silent fault beside it. */
export interface Hypothesis {
  /** index into `Hypotheses.cores` */
  readonly core: number;
  /** index into the prior table of the silent fault beside the core; -1 for the core alone */
  readonly beside: number;
  /** stands for all silent faults too improbable to be listed one by one */
  readonly unlisted: boolean;
  readonly weight: number;
  /** parts (or `NET1~NET2`) that must be cured, sorted */
  readonly dead: readonly string[];
}

export interface Core {
  /** indices into the prior table of the faults present now */
  readonly present: readonly number[];
  readonly faults: readonly Fault[];
}

/** Weights sum to one less what no explanation covers. */
export interface Hypotheses {
  readonly priors: readonly FaultPrior[];
  readonly cores: readonly Core[];
  readonly list: readonly Hypothesis[];
  readonly remainder: number;
}

/** Several modes of one part that pull a reading the same way stand for each other. */
interface SilentGroup {
  readonly core: number;
  readonly fault: number;
  readonly weight: number;
}

/**
 * The planning hypotheses of a belief: each of the most probable explanations alone, and with one silent fault beside it. Two
 * silent faults at once are spread over the single ones in proportion. Deterministic; at most `PLANNING_RATES.hypotheses`.
 * @param absent - parts that never came with the board: nothing of theirs is to be cured
 */
export function planningHypotheses(belief: Belief, absent: ReadonlySet<string>): Hypotheses {
  const { priors } = belief;
  const kept = leadingExplanations(belief.explanations);
  const cores = kept.map((explanation): Core => {
    const present = explanation.presentNow;
    return { present, faults: present.map((f) => priors[f].fault) };
  });
  const alone = new Float64Array(kept.length);
  const groups: SilentGroup[] = [];
  kept.forEach((explanation, core) => {
    alone[core] = splitSilent(explanation, core, priors, absent, groups);
  });
  groups.sort((a, b) => b.weight - a.weight || a.core - b.core || a.fault - b.fault);
  const room = Math.max(0, PLANNING_RATES.hypotheses - 2 * kept.length);
  const unlisted = new Float64Array(kept.length);
  for (const group of groups.slice(room)) unlisted[group.core] += group.weight;
  const deadOf = (core: number, beside: number): readonly string[] =>
    [
      ...new Set([...cores[core].present, ...(beside >= 0 ? [beside] : [])].map((f) => priors[f].part)),
    ].sort();
  const list: Hypothesis[] = [];
  kept.forEach((_, core) => {
    list.push({ core, beside: -1, unlisted: false, weight: alone[core], dead: deadOf(core, -1) });
    if (unlisted[core] > 0)
      list.push({ core, beside: -1, unlisted: true, weight: unlisted[core], dead: deadOf(core, -1) });
  });
  for (const { core, fault, weight } of groups.slice(0, room))
    list.push({ core, beside: fault, unlisted: false, weight, dead: deadOf(core, fault) });
  const covered = list.reduce((sum, hypothesis) => sum + hypothesis.weight, 0);
  return { priors, cores, list, remainder: Math.max(0, 1 - covered) };
}

function leadingExplanations(explanations: readonly Explanation[]): readonly Explanation[] {
  const total = explanations.reduce((sum, explanation) => sum + explanation.probability, 0);
  const kept: Explanation[] = [];
  let covered = 0;
  for (const explanation of explanations) {
    if (kept.length >= PLANNING_RATES.cores || covered >= PLANNING_RATES.coreShare * total) break;
    kept.push(explanation);
    covered += explanation.probability;
  }
  return kept;
}

/** Adds the silent groups of one explanation to `groups` and returns the weight of the explanation alone. */
function splitSilent(
  explanation: Explanation,
  core: number,
  priors: readonly FaultPrior[],
  absent: ReadonlySet<string>,
  groups: SilentGroup[],
): number {
  const dead = new Set(explanation.presentNow.map((f) => priors[f].part));
  const byKey = new Map<string, { fault: number; best: number; odds: number }>();
  let logAlone = 0;
  explanation.silent.forEach((q, f) => {
    const prior = priors[f];
    if (q <= 0 || absent.has(prior.part) || dead.has(prior.part)) return;
    const bounded = Math.min(q, 0.999);
    logAlone += Math.log1p(-bounded);
    const low = prior.fault.mode === "short" || prior.fault.mode === "leaky";
    const key = `${prior.site}|${low ? "low" : "high"}`;
    const odds = bounded / (1 - bounded);
    const seen = byKey.get(key);
    if (seen === undefined) byKey.set(key, { fault: f, best: q, odds });
    else {
      seen.odds += odds;
      if (q > seen.best) Object.assign(seen, { fault: f, best: q });
    }
  });
  const found = [...byKey.values()];
  const aloneShare = Math.exp(logAlone);
  const oddsSum = found.reduce((sum, group) => sum + group.odds, 0);
  // what is not "alone" has one silent fault or more: more than one is spread over the single ones
  const perOdds = oddsSum > 0 ? (1 - aloneShare) / oddsSum : 0;
  for (const { fault, odds } of found)
    groups.push({ core, fault, weight: explanation.probability * perOdds * odds });
  return explanation.probability * (oddsSum > 0 ? aloneShare : 1);
}

/** Indices into the prior table of every fault present under a hypothesis. */
export function faultsOf({ core, beside }: Hypothesis, { cores }: Hypotheses): readonly number[] {
  return beside >= 0 ? [...cores[core].present, beside] : cores[core].present;
}
