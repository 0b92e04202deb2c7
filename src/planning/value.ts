import { bestOf, type Course } from "./decision.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { badChance, type RepairModel } from "./repair-model.ts";

/** One step of a repair plan: cure these, then power up. Empty: power up as it stands. */
export interface PlanStep {
  /** indices into `RepairModel.cures`, those not cured by an earlier step */
  readonly cures: readonly number[];
  /** money of those cures that the lots at hand do not cover, beyond what a part at hand costs */
  readonly overMoney: number;
  /** chance that the job is repaired after this step, given that it came this far */
  readonly success: number;
  /** indices into `RepairModel.groups` of what this step repairs */
  readonly covers: readonly number[];
}

export interface RepairPlan {
  /** expected margin of following it, in money times the weight of the belief */
  readonly value: number;
  readonly steps: readonly PlanStep[];
  /** chance that it ends repaired */
  readonly repaired: number;
  /** what follows where every step has failed */
  readonly after: "stop" | "find out";
}

const MOST_STEPS = 6;
const MOST_GROUPS = 16;

/**
 * The best repair sequence for a (not normalised) weighting of the groups: each step cures the group with most success per cost
 * (descending P over C: Kadane & Simon 1977, "seen, rule only"), with the costs of what is already cured taken off, and
 * the sequence ends where going on no longer pays. A failed try is charged per group: what power breaks of it that is not cured yet, and
 * nothing is ever earned where the dead part cannot be had.
 * @param minutesPerBit - what finding out costs after a try that failed, where the job may go on so; null: a failed plan ends the job
 */
export function repairPlan(
  weights: Float64Array,
  model: RepairModel,
  minutesPerBit: number | null = null,
): RepairPlan {
  const { groups, cures, testMoney, earned, stopMoney } = model;
  const open = leading(weights, model);
  const cured = new Uint8Array(cures.length);
  const left = Int32Array.from(model.lots);
  const rest = weights.slice();
  const breaks = new Breaks(weights, model);
  const steps: PlanStep[] = [];
  let alive = sum(weights);
  let value = 0;
  let repaired = 0;
  let best: RepairPlan = {
    value: alive * stopMoney,
    steps: [],
    repaired: 0,
    after: "stop",
  };
  while (steps.length < MOST_STEPS && open.length > 0) {
    const choice = bestStep(open, weights, cured, left, alive, breaks, model);
    if (choice === null) break;
    const stepCost = choice.cost - testMoney;
    const bad = badChance(cures, choice.added);
    value -= alive * choice.cost;
    for (const c of choice.added) {
      cured[c] = 1;
      if (cures[c].lot >= 0) left[cures[c].lot]--;
      breaks.cure(c);
    }
    let covered = 0;
    const covers: number[] = [];
    for (let i = open.length - 1; i >= 0; i--) {
      const g = open[i];
      if (!allCured(groups[g].cures, cured)) continue;
      covered += weights[g];
      covers.push(g);
      rest[g] = 0;
      breaks.cover(g);
      open.splice(i, 1);
    }
    const { added, overMoney } = choice;
    steps.push({ cures: added, overMoney, success: alive > 0 ? covered / alive : 0, covers });
    value += covered * (earned - bad * (testMoney + stepCost)) - breaks.total;
    alive -= covered;
    repaired += covered;
    const stop = alive * stopMoney;
    const onward = minutesPerBit === null ? stop : findingOut(rest, model, minutesPerBit, cured);
    const after = onward > stop ? "find out" : "stop";
    if (value + Math.max(stop, onward) > best.value)
      best = { value: value + Math.max(stop, onward), steps: [...steps], repaired, after };
  }
  return best;
}

/** Money times weight that the next power-up destroys, in what is neither cured nor repaired yet. */
class Breaks {
  total = 0;
  readonly #weights: Float64Array;
  readonly #groups: RepairModel["groups"];
  readonly #ofCure: Float64Array;

  constructor(weights: Float64Array, { groups, cures }: RepairModel) {
    this.#weights = weights;
    this.#groups = groups;
    this.#ofCure = new Float64Array(cures.length);
    for (let g = 0; g < groups.length; g++) {
      const weight = weights[g];
      if (weight === 0) continue;
      const { breakMoney, cures: own, breakMoneyOf } = groups[g];
      this.total += weight * breakMoney;
      for (let at = 0; at < own.length; at++) this.#ofCure[own[at]] += weight * breakMoneyOf[at];
    }
  }

  /** What curing this takes away. */
  ofCure(cure: number): number {
    return this.#ofCure[cure];
  }

  /** What of a repaired group no cure answers for. */
  uncharged(group: number): number {
    const { breakMoney, breakMoneyOf } = this.#groups[group];
    let all = 0;
    for (const money of breakMoneyOf) all += money;
    return this.#weights[group] * (breakMoney - all);
  }

  cure(cure: number): void {
    this.total = Math.max(0, this.total - this.#ofCure[cure]);
    this.#ofCure[cure] = 0;
  }

  cover(group: number): void {
    this.total = Math.max(0, this.total - this.uncharged(group));
  }
}

interface Choice {
  readonly added: readonly number[];
  /** the test included */
  readonly cost: number;
  readonly overMoney: number;
}

/**
 * What to cure next: the most success per money (what a failed try breaks included), counting every group the same cures finish. Null where
 * nothing open can be cured with what is left at hand.
 * @param left - what is left of each lot
 */
function bestStep(
  open: readonly number[],
  weights: Float64Array,
  cured: Uint8Array,
  left: Int32Array,
  alive: number,
  breaks: Breaks,
  { groups, cures, testMoney, perMinute }: RepairModel,
): Choice | null {
  let best: Choice | null = null;
  let ratio = -1;
  // loops and no closures: this is asked of every outcome of every step
  for (const g of open) {
    const added: number[] = [];
    let cost = testMoney;
    let overMoney = 0;
    let lost = breaks.total;
    for (const c of groups[g].cures) {
      if (cured[c] !== 0) continue;
      added.push(c);
      cost = cost + cures[c].money + cures[c].minutes * perMinute;
      lost -= breaks.ofCure(c);
      const { lot } = cures[c];
      if (lot >= 0 && left[lot]-- <= 0) overMoney += cures[c].overMoney;
    }
    for (const c of added) if (cures[c].lot >= 0) left[cures[c].lot]++;
    if (overMoney === Number.POSITIVE_INFINITY) continue;
    cost += overMoney;
    for (const c of added) cured[c] = 1;
    let gained = 0;
    for (const other of open) {
      if (!allCured(groups[other].cures, cured)) continue;
      gained += weights[other];
      lost -= breaks.uncharged(other);
    }
    for (const c of added) cured[c] = 0;
    const perMoney = gained / Math.max(alive * cost + Math.max(0, lost), 1e-9);
    if (perMoney <= ratio) continue;
    ratio = perMoney;
    best = { added, cost, overMoney };
  }
  return best;
}

function allCured(cures: readonly number[], cured: Uint8Array): boolean {
  for (const c of cures) if (cured[c] === 0) return false;
  return true;
}

/** The heaviest groups that can be repaired by name, heaviest first. */
function leading(weights: Float64Array, model: RepairModel): number[] {
  const open: number[] = [];
  model.groups.forEach((group, g) => {
    if (group.possible && !group.unlisted && weights[g] > 0) open.push(g);
  });
  open.sort((a, b) => weights[b] - weights[a] || a - b);
  return open.slice(0, MOST_GROUPS);
}

/**
 * Cost-to-go of going on finding out: each group's margin as if it were known, less what finding out costs per bit still
 * unknown about which repair (or stop) is right. An estimate of the kind Heckerman, Breese & Rommelse 1995 use; it lets rows
 * and later checks count that no single check pays for.
 * @param cured - what has been paid for already; absent: nothing
 */
export function findingOut(
  weights: Float64Array,
  { groups, cures, stopMoney, perMinute }: RepairModel,
  minutesPerBit: number,
  cured: Uint8Array | null = null,
): number {
  let known = 0;
  let total = 0;
  let stop = 0;
  let logs = 0;
  for (let g = 0; g < weights.length; g++) {
    const weight = weights[g];
    if (weight <= 0) continue;
    const group = groups[g];
    let margin = group.knownValue;
    if (cured !== null && group.possible)
      for (const c of group.cures)
        if (cured[c] === 1) margin += cures[c].money + cures[c].minutes * perMinute;
    known += weight * margin;
    total += weight;
    // every group whose answer is "stop" is one answer
    if (margin <= stopMoney) stop += weight;
    else logs += weight * Math.log2(weight);
  }
  if (stop > 0) logs += stop * Math.log2(stop);
  const bits = total > 0 ? total * Math.log2(total) - logs : 0;
  return known - bits * minutesPerBit * perMinute;
}

/** The best course and what the job is worth by it, in money times the weight given: end the job, follow the repair plan, or find out more first. */
export function bestCourse(
  weights: Float64Array,
  model: RepairModel,
  minutesPerBit: number,
): Course<"stop" | "repair" | "find out"> {
  return bestOf(
    { course: "stop", value: sum(weights) * model.stopMoney },
    { course: "repair", value: repairPlan(weights, model, minutesPerBit).value },
    { course: "find out", value: findingOut(weights, model, minutesPerBit) },
  );
}

/** What the job is worth from here: the best of stopping, repairing at once and finding out. Times the weight given. */
export function jobValue(weights: Float64Array, model: RepairModel, minutesPerBit: number): number {
  return bestCourse(weights, model, minutesPerBit).value;
}

/** Minutes-per-bit assumed when cheap ways are exhausted, tried one after another before giving up or guessing. From memory. */
export const FINDING_OUT_RATES = [PLANNING_RATES.minutesPerBit, 9, 25] as const;

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
