import type { BenchState } from "../bench/bench-state.ts";
import type { Board, Part } from "../board/board.ts";
import { MINUTES } from "../money/minutes.ts";
import { isObtainable, partPrice } from "../money/prices.ts";
import type { Terms } from "../money/terms.ts";
import type { KnockOn, PriorTable } from "../priors/fault-prior.ts";
import { minutesOf } from "./action-minutes.ts";
import { faultsOf, type Hypotheses, type Hypothesis } from "./hypotheses.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";

/** One thing to cure: a part to replace, or dirt between two nets to clean away. */
interface Cure {
  readonly name: string;
  readonly money: number;
  readonly minutes: number;
  readonly possible: boolean;
}

/** All hypotheses that the same cures repair. */
export interface RepairGroup {
  /** indices into `RepairModel.cures` */
  readonly cures: readonly number[];
  /** names in one breath, for words and keys */
  readonly key: string;
  readonly possible: boolean;
  /** stands for parts nobody has named: it can be found, but not replaced from here */
  readonly unlisted: boolean;
  /** money that a power-up with this left uncured destroys, on the average */
  readonly breakMoney: number;
  /** margin of a job known from the start to be this */
  readonly knownValue: number;
}

/** What every hypothesis costs to repair. Made once per proposal. */
export interface RepairModel {
  readonly cures: readonly Cure[];
  readonly groups: readonly RepairGroup[];
  /** group of each hypothesis */
  readonly groupOf: Int16Array;
  /** groups' weights with everything still possible */
  readonly weights: Float64Array;
  readonly terms: Terms;
  readonly perMinute: number;
  /** money of one power-up test, cold re-check and safe ending included */
  readonly testMoney: number;
  /** minutes of proving the stores of charge empty again after power */
  readonly proofMinutes: number;
  /** chance that one fitted part is bad or put in wrong */
  readonly fittedBad: number;
}

/** What curing one name (a part's reference, or `NET1~NET2`) takes from the bench as it stands. */
export function cureAction(board: Board, name: string): Action | null {
  if (board.parts.has(name)) return { do: "replace", part: name };
  const spot = dirtySpot(board, name);
  return spot === null ? null : { do: "clean", part: spot };
}

/**
 * The part around which the dirt between two nets is cleaned away: of those with both nets at their pins the one with the most pins, so
 * that what lies between its other pins goes with it; else one with one of them.
 */
function dirtySpot(board: Board, name: string): string | null {
  const nets = name.split("~");
  const carrying = (net: string) =>
    [...board.parts.values()].filter((part) => [...part.pins.values()].includes(net));
  const [one, other] = nets.map(carrying);
  const both = one.filter((part) => other.includes(part));
  const most = (parts: readonly Part[]): Part | undefined =>
    parts.reduce<Part | undefined>(
      (best, part) => (best === undefined || part.pins.size > best.pins.size ? part : best),
      undefined,
    );
  return (most(both) ?? most(one))?.ref ?? null;
}

/** Groups the hypotheses by what repairs them and prices each group. */
export function repairModel(
  hypotheses: Hypotheses,
  board: Board,
  bench: BenchState,
  terms: Terms,
  priors: PriorTable,
  storeCount: number,
): RepairModel {
  const perMinute = terms.ratePerHour / 60;
  const cures: Cure[] = [];
  const cureIndex = new Map<string, number>();
  const cureAt = (name: string): number => {
    // one cleaning takes away all that lies around the same part
    const key = board.parts.has(name) ? name : `around ${dirtySpot(board, name)}`;
    const known = cureIndex.get(key);
    if (known !== undefined) return known;
    cureIndex.set(key, cures.push(priceCure(board, bench, name, terms)) - 1);
    return cures.length - 1;
  };
  // two repeated readings, power with its ending, and the proof that it is discharged again
  const proofMinutes = MINUTES.measure * storeCount;
  const testMinutes = 2 * MINUTES.measure + MINUTES.power + MINUTES.unpower + proofMinutes;
  const fittedBad = priors.fittedBad.new + priors.fittedBad.fittedWrong;
  const base = { terms, perMinute, testMoney: testMinutes * perMinute, proofMinutes, fittedBad };
  const breakMoney = breakMoneyByFault(priors, breakingCost(board, bench, terms));
  const curesOf = ({ dead }: Hypothesis): readonly number[] =>
    [...new Set(dead.map(cureAt))].sort((a, b) => a - b);
  const built = new Map<string, { members: number[]; weight: number; lost: number }>();
  hypotheses.list.forEach((hypothesis, h) => {
    const curing = curesOf(hypothesis);
    const key = `${curing.join(",")}${hypothesis.unlisted ? "*" : ""}`;
    const group = built.get(key) ?? { members: [], weight: 0, lost: 0 };
    const faults = faultsOf(hypothesis, hypotheses);
    const lost = Math.min(
      terms.agreedPrice,
      faults.reduce((sum, f) => sum + breakMoney[f], 0),
    );
    group.members.push(h);
    group.weight += hypothesis.weight;
    group.lost += hypothesis.weight * lost;
    built.set(key, group);
  });
  const groupOf = new Int16Array(hypotheses.list.length);
  const weights = new Float64Array(built.size);
  const groups = [...built.values()].map((group, g): RepairGroup => {
    const first = hypotheses.list[group.members[0]];
    for (const h of group.members) groupOf[h] = g;
    weights[g] = group.weight;
    const cureList = curesOf(first);
    const lost = group.weight > 0 ? group.lost / group.weight : 0;
    return priceGroup(cureList, first, lost, cures, base);
  });
  return { cures, groups, groupOf, weights, ...base };
}

function groupKey(hypothesis: Hypothesis): string {
  return hypothesis.dead.join("+") + (hypothesis.unlisted ? "+*" : "");
}

function priceCure(board: Board, bench: BenchState, name: string, terms: Terms): Cure {
  const part = board.parts.get(name);
  const action = cureAction(board, name);
  return {
    name,
    money: part === undefined ? 0 : partPrice(part, terms.newBoardPrice),
    minutes:
      action === null
        ? 0
        : action.do === "clean"
          ? PLANNING_RATES.cleanMinutes
          : minutesOf(board, bench, action),
    possible: part === undefined ? action !== null : isObtainable(part),
  };
}

type Base = Pick<RepairModel, "terms" | "perMinute" | "testMoney" | "fittedBad">;

function priceGroup(
  cureList: readonly number[],
  first: Hypothesis,
  breakMoney: number,
  cures: readonly Cure[],
  { terms, perMinute, testMoney, fittedBad }: Base,
): RepairGroup {
  const possible = cureList.every((c) => cures[c].possible);
  const unlistedMoney = first.unlisted
    ? PLANNING_RATES.unlistedMoney + PLANNING_RATES.unlistedMinutes * perMinute
    : 0;
  const cost = cureList.reduce(
    (sum, c) => sum + cures[c].money + cures[c].minutes * perMinute,
    unlistedMoney,
  );
  const bad = 1 - (1 - fittedBad) ** cureList.length;
  const known = terms.agreedPrice - cost - testMoney - bad * (testMoney + cost);
  return {
    cures: cureList,
    key: groupKey(first),
    possible,
    unlisted: first.unlisted,
    breakMoney,
    knownValue: possible ? Math.max(known, terms.feeIfNotRepaired) : terms.feeIfNotRepaired,
  };
}

/** What it costs when a part breaks: buying and fitting it, or the job where nobody sells it; nothing where it is no part of the board. */
export function breakingCost(board: Board, bench: BenchState, terms: Terms): (name: string) => number {
  const known = new Map<string, number>();
  return (name) => {
    const before = known.get(name);
    if (before !== undefined) return before;
    const part = board.parts.get(name);
    const { money: price, minutes } = priceCure(board, bench, name, terms);
    const whole = part === undefined || bench.off.has(name) ? 0 : price + (minutes * terms.ratePerHour) / 60;
    const cost = part === undefined || isObtainable(part) ? whole : terms.agreedPrice;
    known.set(name, cost);
    return cost;
  };
}

/**
 * For each fault of the table, the money that one power-up with it still present destroys on the average.
 * @param harm - share of a knock-on's strength that the feed leaves
 */
export function breakMoneyByFault(
  priors: PriorTable,
  cost: (name: string) => number,
  harm: (knock: KnockOn) => number = () => 1,
): Float64Array {
  const money = new Float64Array(priors.faults.length);
  for (const knock of priors.knockOns) {
    const loss = cost(priors.faults[knock.child].part);
    if (loss > 0) money[knock.parent] += -Math.expm1(-knock.rate * harm(knock)) * loss;
  }
  return money;
}
