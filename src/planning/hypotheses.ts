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
 * The planning hypotheses of a belief: each of the leading sets of faults alone, and with one fault more beside it: a silent one, or
 * one that makes an explanation of its own. Two silent faults at once are spread over the single ones in proportion. Deterministic; at
 * most `PLANNING_RATES.hypotheses`.
 * @param absent - parts that never came with the board: nothing of theirs is to be cured
 * @param harmless - faults that a board lives with: they make readings, and nothing of theirs is to be cured
 */
export function planningHypotheses(
  belief: Belief,
  absent: ReadonlySet<string>,
  harmless: (fault: FaultPrior) => boolean = () => false,
): Hypotheses {
  const { priors } = belief;
  const { stems, attached } = stemsOf(belief.explanations);
  const cores = stems.map(({ present }): Core => ({ present, faults: present.map((f) => priors[f].fault) }));
  const alone = new Float64Array(stems.length);
  const groups: SilentGroup[] = [];
  stems.forEach(({ own }, core) => {
    for (const one of own) alone[core] += splitSilent(one, core, priors, absent, groups);
  });
  groups.push(...attachedGroups(attached, priors));
  groups.sort((a, b) => b.weight - a.weight || a.core - b.core || a.fault - b.fault);
  const room = Math.max(0, PLANNING_RATES.hypotheses - 2 * stems.length);
  const unlisted = new Float64Array(stems.length);
  for (const group of groups.slice(room)) unlisted[group.core] += group.weight;
  const deadOf = (core: number, beside: number): readonly string[] =>
    [
      ...new Set(
        [...cores[core].present, ...(beside >= 0 ? [beside] : [])]
          .filter((f) => !harmless(priors[f]))
          .map((f) => priors[f].part),
      ),
    ].sort();
  const list: Hypothesis[] = [];
  stems.forEach((_, core) => {
    list.push({ core, beside: -1, unlisted: false, weight: alone[core], dead: deadOf(core, -1) });
    if (unlisted[core] > 0)
      list.push({ core, beside: -1, unlisted: true, weight: unlisted[core], dead: deadOf(core, -1) });
  });
  for (const { core, fault, weight } of groups.slice(0, room))
    list.push({ core, beside: fault, unlisted: false, weight, dead: deadOf(core, fault) });
  const covered = list.reduce((sum, hypothesis) => sum + hypothesis.weight, 0);
  return { priors, cores, list, remainder: Math.max(0, 1 - covered) };
}

/**
 * A set of faults that hypotheses share; `own` are the explanations that say just this of the board as it is now: several where they
 * differ in what has been cured.
 */
interface Stem {
  readonly present: readonly number[];
  readonly own: Explanation[];
}

/** An explanation that is a stem and one fault more. */
interface Attached {
  readonly core: number;
  readonly fault: number;
  readonly weight: number;
}

/**
 * The sets from which most of the belief is one fault away, most first (greedy cover). After a power-up that showed nothing, a hundred
 * single faults explain it about equally well: their stem is the board with none of them, and a check is then worth what it tells of
 * them all. An explanation that holds much by itself is a stem of its own, with what stands beside it unseen.
 */
function stemsOf(explanations: readonly Explanation[]): { stems: Stem[]; attached: Attached[] } {
  const rest = new Map<Explanation, readonly number[]>(
    explanations.map((one) => [one, [...one.presentNow].sort((a, b) => a - b)]),
  );
  const total = explanations.reduce((sum, { probability }) => sum + probability, 0);
  const stems: Stem[] = [];
  const attached: Attached[] = [];
  let covered = 0;
  while (stems.length < PLANNING_RATES.cores && covered < PLANNING_RATES.coreShare * total) {
    const near = new Map<string, { present: readonly number[]; weight: number }>();
    for (const [{ probability }, present] of rest)
      for (const key of [present, ...present.map((fault) => present.filter((other) => other !== fault))]) {
        const name = key.join(",");
        const seen = near.get(name) ?? { present: key, weight: 0 };
        near.set(name, { ...seen, weight: seen.weight + probability });
      }
    const [strong] = [...rest].filter(([{ probability }]) => probability >= PLANNING_RATES.stemShare * total);
    let best: { present: readonly number[]; weight: number } | null = null;
    for (const one of near.values()) if (best === null || one.weight > best.weight * ALIKE) best = one;
    if (strong !== undefined) best = { present: strong[1], weight: strong[0].probability };
    if (best === null) break;
    const stem: Stem = { present: best.present, own: [] };
    for (const [explanation, present] of rest) {
      const more = present.filter((fault) => !stem.present.includes(fault));
      if (more.length > 1 || present.length !== stem.present.length + more.length) continue;
      if (more.length === 0) stem.own.push(explanation);
      else attached.push({ core: stems.length, fault: more[0], weight: explanation.probability });
      covered += explanation.probability;
      rest.delete(explanation);
    }
    stems.push(stem);
  }
  return { stems, attached };
}

/** A set is the better stem only by more than rounding: sets that explain as much stand in the order of the belief. */
const ALIKE = 1 + 1e-9;

/** Several modes of one place that pull a reading the same way stand for each other, as the silent ones do. */
function attachedGroups(attached: readonly Attached[], priors: readonly FaultPrior[]): SilentGroup[] {
  const byKey = new Map<string, { core: number; fault: number; weight: number; best: number }>();
  for (const { core, fault, weight } of attached) {
    const key = `${core}|${wayOf(priors[fault])}`;
    const seen = byKey.get(key);
    if (seen === undefined) byKey.set(key, { core, fault, weight, best: weight });
    else {
      seen.weight += weight;
      if (weight > seen.best) Object.assign(seen, { fault, best: weight });
    }
  }
  return [...byKey.values()];
}

/** The place of a fault and the way it pulls a reading. */
function wayOf({ site, fault }: FaultPrior): string {
  return `${site}|${fault.mode === "short" || fault.mode === "leaky" ? "low" : "high"}`;
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
  let logSkipped = 0;
  explanation.silent.forEach((q, f) => {
    const prior = priors[f];
    if (q <= 0) return;
    const bounded = Math.min(q, 0.999);
    if (absent.has(prior.part) || dead.has(prior.part)) {
      logSkipped += Math.log1p(-bounded);
      return;
    }
    const key = wayOf(prior);
    const odds = bounded / (1 - bounded);
    const seen = byKey.get(key);
    if (seen === undefined) byKey.set(key, { fault: f, best: q, odds });
    else {
      seen.odds += odds;
      if (q > seen.best) Object.assign(seen, { fault: f, best: q });
    }
  });
  const found = [...byKey.values()];
  const aloneShare = Math.min(1, explanation.nothingBeside / Math.exp(logSkipped));
  const oddsSum = found.reduce((sum, group) => sum + group.odds, 0);
  // what is not "alone" has one silent fault or more: more than one is spread over the single ones
  const perOdds = oddsSum > 0 ? (1 - aloneShare) / oddsSum : 0;
  for (const { fault, odds } of found)
    groups.push({ core, fault, weight: explanation.probability * perOdds * odds });
  return explanation.probability * (oddsSum > 0 ? aloneShare : 1);
}

/** The same with the heaviest hypotheses alone, in their order. */
export function heaviest(hypotheses: Hypotheses, count: number): Hypotheses {
  if (hypotheses.list.length <= count) return hypotheses;
  const byWeight = hypotheses.list
    .map((_, h) => h)
    .sort((a, b) => hypotheses.list[b].weight - hypotheses.list[a].weight || a - b);
  const kept = new Set(byWeight.slice(0, count));
  return { ...hypotheses, list: hypotheses.list.filter((_, h) => kept.has(h)) };
}

/** Indices into the prior table of every fault present under a hypothesis. */
export function faultsOf({ core, beside }: Hypothesis, { cores }: Hypotheses): readonly number[] {
  return beside >= 0 ? [...cores[core].present, beside] : cores[core].present;
}
