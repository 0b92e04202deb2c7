import type { BenchState } from "../bench/bench-state.ts";
import type { BenchMinutes, Board, Part } from "../board/board.ts";
import { benchMinutes } from "../money/minutes.ts";
import { fittedPrice, isObtainable, nextMoney, waitingMoney } from "../money/prices.ts";
import { earnedByRepair, lotOf, type Terms } from "../money/terms.ts";
import type { KnockOn, PriorTable } from "../priors/fault-prior.ts";
import { feedHarm, knockOnHarm } from "../priors/feed-harm.ts";
import { minutesOf } from "./action-minutes.ts";
import { faultsOf, type Hypotheses, type Hypothesis } from "./hypotheses.ts";
import { fittedWith } from "./part-at-hand.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";

/** One thing to cure: a part to replace, or dirt between two nets to clean away. */
interface Cure {
  readonly name: string;
  /** what it costs the job: what is paid, and waiting for what is not at hand */
  readonly money: number;
  /** what is paid for the part */
  readonly paid: number;
  readonly minutes: number;
  readonly possible: boolean;
  /** chance that what is fitted is bad or put in wrong; more for a pulled part */
  readonly bad: number;
  /** index into `RepairModel.lots` of the few parts at hand that several places share; -1: this place shares none */
  readonly lot: number;
  /** what one costs more once the lot is used up; infinite where none can be had */
  readonly overMoney: number;
}

/** All hypotheses that the same cures repair. */
export interface RepairGroup {
  /** indices into `RepairModel.cures` */
  readonly cures: readonly number[];
  /** names in one breath, for words and keys */
  readonly key: string;
  readonly possible: boolean;
  /** money of those of its parts that the lots at hand do not cover, beyond what a part at hand costs */
  readonly overMoney: number;
  /** stands for parts nobody has named: it can be found, but not replaced from here */
  readonly unlisted: boolean;
  /** money that a power-up with this left uncured destroys, on the average */
  readonly breakMoney: number;
  /** how much of that each of `cures` takes away */
  readonly breakMoneyOf: readonly number[];
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
  /** how many parts lie in each lot */
  readonly lots: readonly number[];
  readonly terms: Terms;
  /** what a repaired board counts for: its price less the share of comebacks and the least margin that the shop wants of a job */
  readonly earned: number;
  /** what giving the job up now leaves */
  readonly stopMoney: number;
  readonly perMinute: number;
  /** of what belongs to no part, as this bench takes them */
  readonly minutes: BenchMinutes;
  /** money of one power-up test, cold re-check and safe ending included */
  readonly testMoney: number;
  /** its minutes */
  readonly testMinutes: number;
  /** minutes of proving the stores of charge empty again after power */
  readonly proofMinutes: number;
}

/** Chance that one at least of what is fitted is bad. */
export function badChance(cures: RepairModel["cures"], fitted: readonly number[]): number {
  let good = 1;
  for (const c of fitted) good *= 1 - cures[c].bad;
  return 1 - good;
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

/**
 * Groups the hypotheses by what repairs them and prices each group.
 * @param stopMoney - what giving the job up now leaves; left out: the diagnosis fee
 */
export function repairModel(
  hypotheses: Hypotheses,
  board: Board,
  bench: BenchState,
  terms: Terms,
  priors: PriorTable,
  storeCount: number,
  stopMoney: number = terms.feeIfNotRepaired,
): RepairModel {
  const perMinute = terms.ratePerHour / 60;
  const cures: Cure[] = [];
  const cureIndex = new Map<string, number>();
  const lots = new Lots();
  const cureAt = (name: string): number => {
    // one cleaning takes away all that lies around the same part
    const key = board.parts.has(name) ? name : `around ${dirtySpot(board, name)}`;
    const known = cureIndex.get(key);
    if (known !== undefined) return known;
    cureIndex.set(key, cures.push(priceCure(board, bench, name, terms, priors, lots)) - 1);
    return cures.length - 1;
  };
  // two repeated readings, power with its ending, and the proof that it is discharged again
  const minutes = benchMinutes(board);
  const proofMinutes = minutes.measure * storeCount;
  const testMinutes = 2 * minutes.measure + minutes.power + minutes.unpower + proofMinutes;
  const testMoney = testMinutes * perMinute;
  const earned = earnedByRepair(terms) - terms.minimumMargin;
  const base = { terms, perMinute, minutes, testMoney, testMinutes, proofMinutes, earned, stopMoney };
  const breakMoney = breakMoneyByFault(board, bench, terms, priors);
  const curesOf = ({ dead }: Hypothesis): readonly number[] =>
    [...new Set(dead.map(cureAt))].sort((a, b) => a - b);
  const built = new Map<
    string,
    { members: number[]; weight: number; lost: number; lostBy: Map<number, number> }
  >();
  hypotheses.list.forEach((hypothesis, h) => {
    const curing = curesOf(hypothesis);
    const key = `${curing.join(",")}${hypothesis.unlisted ? "*" : ""}`;
    const group = built.get(key) ?? { members: [], weight: 0, lost: 0, lostBy: new Map<number, number>() };
    const faults = faultsOf(hypothesis, hypotheses);
    const all = faults.reduce((sum, f) => sum + breakMoney[f], 0);
    const bounded = all > 0 ? hypothesis.weight * Math.min(1, terms.agreedPrice / all) : 0;
    group.members.push(h);
    group.weight += hypothesis.weight;
    group.lost += bounded * all;
    for (const f of faults) {
      const { part } = priors.faults[f];
      if (!hypothesis.dead.includes(part)) continue;
      const c = cureAt(part);
      group.lostBy.set(c, (group.lostBy.get(c) ?? 0) + bounded * breakMoney[f]);
    }
    built.set(key, group);
  });
  const groupOf = new Int16Array(hypotheses.list.length);
  const weights = new Float64Array(built.size);
  const groups = [...built.values()].map((group, g): RepairGroup => {
    const first = hypotheses.list[group.members[0]];
    for (const h of group.members) groupOf[h] = g;
    weights[g] = group.weight;
    const cureList = curesOf(first);
    const perWeight = (money: number) => (group.weight > 0 ? money / group.weight : 0);
    return {
      ...priceGroup(cureList, first, cures, lots.counts, base),
      breakMoney: perWeight(group.lost),
      breakMoneyOf: cureList.map((c) => perWeight(group.lostBy.get(c) ?? 0)),
    };
  });
  return { cures, groups, groupOf, weights, lots: lots.counts, ...base };
}

function groupKey(hypothesis: Hypothesis): string {
  return hypothesis.dead.join("+") + (hypothesis.unlisted ? "+*" : "");
}

/** The lots at hand, numbered as they are met. */
class Lots {
  readonly counts: number[] = [];
  readonly #index = new Map<string, number>();

  /** -1 where the place shares none. */
  of(part: Part | undefined, { atHand }: Terms): number {
    const lying = part === undefined ? undefined : atHand.get(part.ref);
    const lot = lying === undefined ? null : lotOf(lying);
    if (lot === null) return -1;
    const known = this.#index.get(lot.key);
    if (known !== undefined) return known;
    this.#index.set(lot.key, this.counts.push(lot.count) - 1);
    return this.counts.length - 1;
  }
}

function priceCure(
  board: Board,
  bench: BenchState,
  name: string,
  terms: Terms,
  { fittedBad }: PriorTable,
  lots: Lots,
): Cure {
  const part = board.parts.get(name);
  const action = cureAction(board, name);
  const paid = part === undefined ? 0 : fittedPrice(part, terms);
  const money = paid + (part === undefined ? 0 : waitingMoney(part, terms));
  const pulled = terms.atHand.get(name)?.used === true;
  const lot = lots.of(part, terms);
  return {
    name,
    money,
    paid,
    bad: (pulled ? fittedBad.used : fittedBad.new) + fittedBad.fittedWrong,
    lot,
    overMoney:
      part === undefined || lot === -1 ? 0 : (nextMoney(part, terms) ?? Number.POSITIVE_INFINITY) - money,
    minutes:
      action === null
        ? 0
        : action.do === "clean"
          ? PLANNING_RATES.cleanMinutes
          : minutesOf(board, bench, { ...action, ...fittedWith(name, terms) }),
    possible: part === undefined ? action !== null : isObtainable(part, terms),
  };
}

type Base = Pick<RepairModel, "perMinute" | "testMoney" | "earned" | "stopMoney">;

/** What the parts of one repair cost beyond a part at hand, where the lots do not go round. */
function beyondLots(cureList: readonly number[], cures: readonly Cure[], lots: readonly number[]): number {
  const left = [...lots];
  return cureList.reduce((sum, c) => {
    const { lot, overMoney } = cures[c];
    return lot === -1 || left[lot]-- > 0 ? sum : sum + overMoney;
  }, 0);
}

function priceGroup(
  cureList: readonly number[],
  first: Hypothesis,
  cures: readonly Cure[],
  lots: readonly number[],
  { perMinute, testMoney, earned, stopMoney }: Base,
): Omit<RepairGroup, "breakMoney" | "breakMoneyOf"> {
  const overMoney = beyondLots(cureList, cures, lots);
  const possible = overMoney < Number.POSITIVE_INFINITY && cureList.every((c) => cures[c].possible);
  const unlistedMoney = first.unlisted
    ? PLANNING_RATES.unlistedMoney + PLANNING_RATES.unlistedMinutes * perMinute
    : 0;
  const cost = cureList.reduce(
    (sum, c) => sum + cures[c].money + cures[c].minutes * perMinute,
    unlistedMoney + (possible ? overMoney : 0),
  );
  const bad = badChance(cures, cureList);
  const known = earned - cost - testMoney - bad * (testMoney + cost);
  return {
    cures: cureList,
    key: groupKey(first),
    possible,
    overMoney: possible ? overMoney : 0,
    unlisted: first.unlisted,
    knownValue: possible ? Math.max(known, stopMoney) : stopMoney,
  };
}

/** What it costs that this part breaks: buying and fitting it again; one that nobody sells costs the job. Dirt breaks nothing. */
export function lossMoney(board: Board, bench: BenchState, name: string, terms: Terms): number {
  const part = board.parts.get(name);
  if (part === undefined) return 0;
  if (!isObtainable(part, terms)) return terms.agreedPrice;
  const minutes = minutesOf(board, bench, { do: "replace", part: name });
  return fittedPrice(part, terms) + waitingMoney(part, terms) + (minutes * terms.ratePerHour) / 60;
}

/** Of a switch-on at full mains, nothing told to run. */
function onTheMains(board: Board, { faults }: PriorTable): (knock: KnockOn) => number {
  const mains = feedHarm(board, { feed: "mains" });
  return (knock) => knockOnHarm(mains, knock, faults);
}

/**
 * For each fault of the table, the money that one power-up with it still present destroys on the average.
 * @param harm - share of a knock-on's strength that the feed leaves; left out: full mains
 */
export function breakMoneyByFault(
  board: Board,
  bench: BenchState,
  terms: Terms,
  priors: PriorTable,
  harm: (knock: KnockOn) => number = onTheMains(board, priors),
): Float64Array {
  const money = new Float64Array(priors.faults.length);
  const childMoney = new Map<string, number>();
  for (const knock of priors.knockOns) {
    const name = priors.faults[knock.child].part;
    const part = board.parts.get(name);
    if (part === undefined || bench.off.has(name)) continue;
    const loss = childMoney.get(name) ?? lossMoney(board, bench, name, terms);
    childMoney.set(name, loss);
    money[knock.parent] += -Math.expm1(-knock.rate * harm(knock)) * loss;
  }
  return money;
}
