import { PLANNING_RATES } from "./planning-rates.ts";
import type { RepairModel } from "./repair-model.ts";

/** One step of a repair plan: cure these, then power up. Empty: power up as it stands. */
export interface PlanStep {
  /** indices into `RepairModel.cures`, those not cured by an earlier step */
  readonly cures: readonly number[];
  /** chance that the job is repaired after this step, given that it came this far */
  readonly success: number;
}

interface RepairPlan {
  /** expected margin of following it, in money times the weight of the belief */
  readonly value: number;
  readonly steps: readonly PlanStep[];
  /** chance that it ends repaired */
  readonly repaired: number;
}

const MOST_STEPS = 6;
const MOST_GROUPS = 16;

/**
 * The best repair sequence for a (not normalised) weighting of the groups: each step cures the group with most success per cost
 * (descending P over C: Kadane & Simon 1977, "seen, rule only"), with the costs of what is already cured taken off, and
 * the sequence ends where going on no longer pays. A failed try is charged per group: what power breaks there, and nothing is
 * ever earned where the dead part cannot be had.
 */
export function repairPlan(weights: Float64Array, model: RepairModel): RepairPlan {
  const { groups, cures, terms, testMoney, fittedBad } = model;
  const fee = terms.feeIfNotRepaired;
  const total = sum(weights);
  const open = leading(weights, model);
  const cured = new Uint8Array(cures.length);
  const steps: PlanStep[] = [];
  let alive = total;
  let value = 0;
  let repaired = 0;
  let breakable = 0;
  for (let g = 0; g < groups.length; g++) breakable += weights[g] * groups[g].breakMoney;
  let best: RepairPlan = { value: total * fee, steps: [], repaired: 0 };
  while (steps.length < MOST_STEPS && open.length > 0) {
    const choice = bestStep(open, weights, cured, alive, breakable, model);
    const stepCost = choice.cost - testMoney;
    const bad = 1 - (1 - fittedBad) ** choice.added.length;
    value -= alive * choice.cost;
    for (const c of choice.added) cured[c] = 1;
    let covered = 0;
    for (let i = open.length - 1; i >= 0; i--) {
      const g = open[i];
      if (!groups[g].cures.every((c) => cured[c] === 1)) continue;
      covered += weights[g];
      breakable -= weights[g] * groups[g].breakMoney;
      open.splice(i, 1);
    }
    steps.push({ cures: choice.added, success: alive > 0 ? covered / alive : 0 });
    value += covered * (terms.agreedPrice - bad * (testMoney + stepCost)) - Math.max(0, breakable);
    alive -= covered;
    repaired += covered;
    const stopped = value + alive * fee;
    if (stopped > best.value) best = { value: stopped, steps: [...steps], repaired };
  }
  return best;
}

/** What to cure next: the most success per money (what a failed try breaks included), counting every group the same cures finish. */
function bestStep(
  open: readonly number[],
  weights: Float64Array,
  cured: Uint8Array,
  alive: number,
  breakable: number,
  { groups, cures, testMoney, perMinute }: RepairModel,
): { readonly added: readonly number[]; readonly cost: number } {
  let best: { added: readonly number[]; cost: number } = { added: [], cost: testMoney };
  let ratio = -1;
  for (const g of open) {
    const added = groups[g].cures.filter((c) => cured[c] === 0);
    const cost = added.reduce((money, c) => money + cures[c].money + cures[c].minutes * perMinute, testMoney);
    let gained = 0;
    let lost = breakable;
    for (const other of open) {
      if (!groups[other].cures.every((c) => cured[c] === 1 || added.includes(c))) continue;
      gained += weights[other];
      lost -= weights[other] * groups[other].breakMoney;
    }
    const perMoney = gained / Math.max(alive * cost + Math.max(0, lost), 1e-9);
    if (perMoney <= ratio) continue;
    ratio = perMoney;
    best = { added, cost };
  }
  return best;
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
 */
function findingOut(weights: Float64Array, model: RepairModel, minutesPerBit: number): number {
  const fee = model.terms.feeIfNotRepaired;
  let known = 0;
  let total = 0;
  let stop = 0;
  let logs = 0;
  for (let g = 0; g < weights.length; g++) {
    const weight = weights[g];
    if (weight <= 0) continue;
    const { knownValue } = model.groups[g];
    known += weight * knownValue;
    total += weight;
    // every group whose answer is "stop" is one answer
    if (knownValue <= fee) stop += weight;
    else logs += weight * Math.log2(weight);
  }
  if (stop > 0) logs += stop * Math.log2(stop);
  const bits = total > 0 ? total * Math.log2(total) - logs : 0;
  return known - bits * minutesPerBit * model.perMinute;
}

/** What the job is worth from here: the best of stopping, repairing at once and finding out. Times the weight given. */
export function jobValue(weights: Float64Array, model: RepairModel, minutesPerBit: number): number {
  const stop = sum(weights) * model.terms.feeIfNotRepaired;
  return Math.max(stop, repairPlan(weights, model).value, findingOut(weights, model, minutesPerBit));
}

/** Minutes-per-bit assumed when cheap ways are exhausted, tried one after another before giving up or guessing. From memory. */
export const FINDING_OUT_RATES = [PLANNING_RATES.minutesPerBit, 9, 25] as const;

function sum(values: Float64Array): number {
  let total = 0;
  for (const value of values) total += value;
  return total;
}
