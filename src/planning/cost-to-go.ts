/** What going on costs from here, ending by ending, read off the very plan and estimate that the planner decides by (`value.ts`). */
import type { CostToGo, Ending } from "./cost-spread.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import { badChance, type RepairModel } from "./repair-model.ts";
import { findingOut, type PlanStep, repairPlan } from "./value.ts";

interface Spent {
  readonly minutes: number;
  readonly money: number;
}

/** @param minutesPerBit - what finding out is taken to cost: the planner's usual rate where cheap checks are left */
export function costToGo(model: RepairModel, minutesPerBit: number = PLANNING_RATES.minutesPerBit): CostToGo {
  const { weights, terms, perMinute, earned, stopMoney } = model;
  const plan = repairPlan(weights, model, minutesPerBit);
  const find = findingOut(weights, model, minutesPerBit);
  const repairs = plan.steps.length > 0 && plan.value >= find;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const nothing = { minutes: 0, money: 0 };
  return {
    course: repairs ? "repair" : "find out",
    endings: repairs
      ? planned(plan.steps, plan.after, model, minutesPerBit)
      : foundOut(weights, model, minutesPerBit, new Set(), nothing, 0),
    perMinute,
    value: repairs ? plan.value : find,
    stopValue: total * stopMoney,
    gain: earned - stopMoney,
    leastMargin: terms.minimumMargin,
  };
}

/** The endings of a plan: each step repairs what it covers; the rest pays for the try and what it breaks, and goes on. */
function planned(
  steps: readonly PlanStep[],
  after: "stop" | "find out",
  model: RepairModel,
  minutesPerBit: number,
): readonly Ending[] {
  const { weights, groups, cures, testMinutes } = model;
  const endings: Ending[] = [];
  const rest = weights.slice();
  const cured = new Set<number>();
  let brokenWeight = 0;
  let spent: Spent = { minutes: 0, money: 0 };
  for (const { cures: added, covers, overMoney } of steps) {
    for (const c of added) cured.add(c);
    const parts = added.reduce((sum, c) => sum + cures[c].money, overMoney);
    const handsOn = added.reduce((sum, c) => sum + cures[c].minutes, 0);
    spent = { minutes: spent.minutes + testMinutes + handsOn, money: spent.money + parts };
    // a fitted part that is bad is fitted and tried again
    const bad = badChance(cures, added);
    const broken = brokenWeight;
    for (const g of covers) {
      endings.push({
        chance: rest[g],
        repaired: true,
        minutes: spent.minutes + bad * (testMinutes + handsOn),
        partsMoney: spent.money + bad * parts,
        brokenMoney: broken,
      });
      rest[g] = 0;
    }
    const left = groups.reduce((sum, group, g) => sum + rest[g] * harmLeft(group, cured), 0);
    const alive = rest.reduce((sum, weight) => sum + weight, 0);
    brokenWeight = broken + (alive > 0 ? left / alive : 0);
  }
  return [
    ...endings,
    ...(after === "find out"
      ? foundOut(rest, model, minutesPerBit, cured, spent, brokenWeight)
      : [{ ...given(rest, spent), brokenMoney: brokenWeight }]),
  ];
}

/** Money that the next power-up destroys of what this group leaves uncured. */
function harmLeft(group: RepairModel["groups"][number], cured: ReadonlySet<number>): number {
  return group.cures.reduce(
    (left, c, at) => (cured.has(c) ? left - group.breakMoneyOf[at] : left),
    group.breakMoney,
  );
}

/** Given up after this much. */
function given(rest: Float64Array, spent: Spent): Omit<Ending, "brokenMoney"> {
  const chance = rest.reduce((sum, weight) => sum + weight, 0);
  return { chance, repaired: false, minutes: spent.minutes, partsMoney: spent.money };
}

/** The endings of finding out first: the bits that name a group cost their minutes, then the group is repaired or given up. */
function foundOut(
  weights: Float64Array,
  model: RepairModel,
  minutesPerBit: number,
  cured: ReadonlySet<number>,
  spent: Spent,
  brokenMoney: number,
): readonly Ending[] {
  const { groups, cures, stopMoney, testMinutes } = model;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const endings: Ending[] = [];
  let stops = 0;
  weights.forEach((weight, g) => {
    if (weight <= 0) return;
    const { cures: due, possible, unlisted, knownValue, overMoney } = groups[g];
    const open = due.filter((c) => !cured.has(c));
    if (!possible || (knownValue <= stopMoney && open.length === due.length)) {
      stops += weight;
      return;
    }
    // what was paid for already counts no more, but for the part that is fitted again where it was bad
    const parts = (of: readonly number[]) =>
      sumOf(of, (c) => cures[c].money) + overMoney + (unlisted ? PLANNING_RATES.unlistedMoney : 0);
    const work = (of: readonly number[]) =>
      sumOf(of, (c) => cures[c].minutes) + (unlisted ? PLANNING_RATES.unlistedMinutes : 0) + testMinutes;
    const bad = badChance(cures, due);
    const finding = Math.log2(total / weight) * minutesPerBit;
    endings.push({
      chance: weight,
      repaired: true,
      minutes: spent.minutes + finding + work(open) + bad * work(due),
      partsMoney: spent.money + parts(open) + bad * parts(due),
      brokenMoney,
    });
  });
  if (stops > 0)
    endings.push({
      chance: stops,
      repaired: false,
      minutes: spent.minutes + Math.log2(total / stops) * minutesPerBit,
      partsMoney: spent.money,
      brokenMoney,
    });
  return endings;
}

function sumOf(of: readonly number[], money: (index: number) => number): number {
  return of.reduce((sum, index) => sum + money(index), 0);
}
