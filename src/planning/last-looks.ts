/**
 * The board has run. Handed back with something weak left in it, it comes back: that costs the price and the comeback. So what is still
 * doubted is weighed against the minutes that a last look takes, and only then is the job closed.
 */
import { earnedByRepair } from "../money/terms.ts";
import type { Outcome } from "./check-outcomes.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { RepairModel } from "./repair-model.ts";
import type { FindingStep } from "./steps.ts";

/** Repairs weighed against handing back, the heaviest first: a bound on work. */
const MOST_CURES = 5;
/** A step sees a fault where its outcome on a good board keeps less than this share of it. */
const SEEN_BELOW = 0.1;

/** What is best for a board that has run: hand it back, cure what is still accused, or look once more. */
export type AfterRun =
  | { readonly do: "hand back" | "cure"; readonly doubt: number }
  | { readonly do: "look"; readonly doubt: number; readonly step: FindingStep };

/**
 * @param steps - all that could be found out from here
 * @param proofMinutes - minutes until a hand may go inside again, once for all looks together; 0: it may already
 * @param least - money that a look has to gain at least
 */
export function afterRun(
  model: RepairModel,
  { list }: Pick<Hypotheses, "list">,
  steps: readonly FindingStep[],
  proofMinutes: number,
  least: number,
): AfterRun {
  const { weights } = model;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const doubt = total > 0 ? 1 - healthy(weights, model) / total : 0;
  const now = worth(weights, model);
  const paying = steps
    .map((step) => ({ step, cost: costOf(step, model), net: netGain(step, model, { list }) }))
    .filter(({ net }) => net > least)
    .sort((a, b) => b.net / b.cost - a.net / a.cost);
  const [best] = paying;
  const without: AfterRun = { do: now.cured ? "cure" : "hand back", doubt };
  if (best === undefined) return without;
  const seen = new Set(paying.flatMap(({ step }) => seenBy(step, model, list)));
  const saved = [...seen].reduce((sum, g) => sum + weights[g] * savedBy(model, g), 0);
  const spent = paying.reduce((sum, { cost }) => sum + cost, 0);
  const worthTheProof = saved - spent > proofMinutes * model.perMinute;
  return worthTheProof ? { do: "look", doubt, step: best.step } : without;
}

function costOf({ allMinutes, lossMoney }: FindingStep, model: RepairModel): number {
  return allMinutes * model.perMinute + lossMoney;
}

/**
 * Money that a last look is worth, its own cost taken off.
 * @param onward - what follows on a board that does not hold; left out: the look shows no such thing
 */
export function netGain(
  step: FindingStep,
  model: RepairModel,
  { list }: Pick<Hypotheses, "list">,
  onward: Onward | null = null,
): number {
  const weights = new Float64Array(model.groups.length);
  const after = step.shares.reduce((sum, share, o) => {
    weights.fill(0);
    for (let h = 0; h < share.length; h++) weights[model.groupOf[h]] += share[h] * list[h].weight;
    const goesOn = onward?.after(step.outcomes[o]) === true;
    return sum + (goesOn ? goneOn(weights, model, onward.minutes) : worth(weights, model).money);
  }, 0);
  return after - worth(model.weights, model).money - costOf(step, model);
}

/** A board that does not hold is not handed back: what is wrong with it has to be found first. */
export interface Onward {
  /** minutes of finding it */
  readonly minutes: number;
  /** does this outcome show it? */
  after(outcome: Outcome): boolean;
}

/** Money times weight of a board with which the repair goes on. */
function goneOn(weights: Float64Array, model: RepairModel, minutes: number): number {
  const earned = earnedByRepair(model.terms);
  return weights.reduce((sum, weight, g) => {
    const ends = isWhole(model, g)
      ? earned
      : model.groups[g].unlisted
        ? model.stopMoney
        : marginKnown(model, g);
    return sum + weight * (ends - minutes * model.perMinute);
  }, 0);
}

/** Margin of a job known to be this one: nobody weighs here whether the shop would rather stop. */
function marginKnown({ groups, terms, stopMoney }: RepairModel, g: number): number {
  const { knownValue } = groups[g];
  return knownValue > stopMoney ? knownValue + terms.minimumMargin : stopMoney;
}

function isWhole({ groups }: RepairModel, g: number): boolean {
  return groups[g].cures.length === 0 && !groups[g].unlisted;
}

function healthy(weights: Float64Array, model: RepairModel): number {
  return weights.reduce((sum, weight, g) => (isWhole(model, g) ? sum + weight : sum), 0);
}

/** Money times weight of handing back now, or of the best repair first. */
function worth(
  weights: Float64Array,
  model: RepairModel,
): { readonly money: number; readonly cured: boolean } {
  const { terms, groups, cures, perMinute, testMoney } = model;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const handedBack = (whole: number) => whole * earnedByRepair(terms) - (total - whole) * terms.comebackCost;
  let money = handedBack(healthy(weights, model));
  let cured = false;
  const doubted = [...groups.keys()]
    .filter(
      (g) =>
        weights[g] > PLANNING_RATES.cureAt * total &&
        groups[g].possible &&
        !groups[g].unlisted &&
        !isWhole(model, g),
    )
    .sort((a, b) => weights[b] - weights[a] || a - b);
  for (const g of doubted.slice(0, MOST_CURES)) {
    const own = new Set(groups[g].cures);
    const whole = weights.reduce(
      (sum, weight, other) =>
        !groups[other].unlisted && groups[other].cures.every((c) => own.has(c)) ? sum + weight : sum,
      0,
    );
    const cost = groups[g].cures.reduce(
      (sum, c) => sum + cures[c].money + cures[c].minutes * perMinute,
      testMoney,
    );
    const after = handedBack(whole) - total * cost;
    if (after > money) [money, cured] = [after, true];
  }
  return { money, cured };
}

/** What is saved where a fault is found and cured before the board goes back. */
function savedBy(model: RepairModel, g: number): number {
  return Math.max(0, marginKnown(model, g) + model.terms.comebackCost);
}

/** The doubted groups that this step would show: its outcome on a good board keeps hardly any of them. */
function seenBy({ shares }: FindingStep, model: RepairModel, list: Hypotheses["list"]): readonly number[] {
  const whole = shares.map((share) =>
    share.reduce((sum, p, h) => (isWhole(model, model.groupOf[h]) ? sum + p * list[h].weight : sum), 0),
  );
  const good = shares[whole.indexOf(Math.max(...whole))];
  const kept = new Float64Array(model.groups.length);
  good?.forEach((p, h) => {
    kept[model.groupOf[h]] += p * list[h].weight;
  });
  return [...model.weights.keys()].filter(
    (g) => model.weights[g] > 0 && !isWhole(model, g) && kept[g] < SEEN_BELOW * model.weights[g],
  );
}
