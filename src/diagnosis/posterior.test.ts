import { describe, expect, it } from "vitest";
import { logSumExp } from "../numeric/log-space.ts";
import { COMMON_POINTS, type Evidence } from "./evidence.ts";
import { posteriorCores } from "./posterior.ts";
import type { SearchLimits } from "./search-limits.ts";
import { logPrior } from "./set-prior.ts";
import { makeUniverse, type Universe } from "./universe.ts";

/** One yes-or-no reading: `likely` where any fault of `group` is present, else `unlikely`; the rest is silent to it. */
function reading(faults: number, group: readonly number[], likely: number, unlikely: number): Evidence {
  const heard = (present: readonly number[]) => present.some((fault) => group.includes(fault));
  const audible = (present: readonly number[]) =>
    Uint8Array.from({ length: faults }, (_, fault) => (!heard(present) && group.includes(fault) ? 1 : 0));
  return {
    logIndex: 0,
    best: Math.log(Math.max(likely, unlikely)),
    slip: Math.log(1e-6),
    logLikelihood: (present) =>
      new Float64Array(COMMON_POINTS.length).fill(Math.log(heard(present) ? likely : unlikely)),
    audible,
    hears: (present, fault) => audible(present)[fault] === 1,
    wouldShow: () => "",
  };
}

/** Twelve parts, one fault each; `knockOns` as [cause, followed, rate]. */
function twelve(knockOns: readonly (readonly [number, number, number])[]): Universe {
  const twelveTimes = <T>(value: (i: number) => T): T[] => Array.from({ length: 12 }, (_, i) => value(i));
  return makeUniverse({
    fault: twelveTimes((i) => i),
    site: twelveTimes((i) => i),
    rate: twelveTimes((i) => 0.002 * (1 + (i % 4))),
    from: twelveTimes(() => -1),
    until: twelveTimes(() => 1000),
    knockOns: knockOns.map(([from, to, rate]) => ({ from, to, rate })),
  });
}

const WEIGHTS = new Float64Array(COMMON_POINTS.length).fill(-Math.log(COMMON_POINTS.length));
const ACCOUNTS_FOR_ALL: ArrayLike<number> = new Uint8Array(12).fill(1);

/** Chance that any of each group of faults is there, by every one of the 4,096 sets; the board was brought in as dead, so the empty set is rare. */
function byEverySet(
  universe: Universe,
  evidence: readonly Evidence[],
  accounts: ArrayLike<number>,
  wanted: readonly (readonly number[])[],
): number[] {
  const logs: number[] = [];
  for (let bits = 0; bits < 1 << 12; bits++) {
    const set = Array.from({ length: 12 }, (_, i) => i).filter((i) => (bits & (1 << i)) !== 0);
    const symptom = Math.log(1 - set.reduce((missed, i) => missed * (1 - accounts[i]), 0.98));
    logs.push(
      evidence.reduce((sum, piece) => sum + piece.logLikelihood(set)[0], logPrior(universe, set) + symptom),
    );
  }
  const total = logSumExp(logs);
  return wanted.map((some) =>
    logs.reduce(
      (sum, log, bits) => sum + (some.some((i) => (bits & (1 << i)) !== 0) ? Math.exp(log - total) : 0),
      0,
    ),
  );
}

function byCores(
  universe: Universe,
  evidence: readonly Evidence[],
  accounts: ArrayLike<number>,
  wanted: readonly (readonly number[])[],
  limits: SearchLimits,
): number[] {
  const cores = posteriorCores(universe, evidence, WEIGHTS, limits, 999, accounts);
  return wanted.map((some) =>
    cores.reduce((sum, core) => {
      const there = some.some((i) => core.set.includes(i));
      const unseen = some.length === 1 ? core.beside[some[0]] : core.anyBeside(some);
      return sum + core.probability * (there ? 1 : unseen);
    }, 0),
  );
}

const EACH = Array.from({ length: 12 }, (_, i) => [i]);

function worstDifference(
  universe: Universe,
  evidence: readonly Evidence[],
  accounts = ACCOUNTS_FOR_ALL,
  wanted: readonly (readonly number[])[] = EACH,
  limits: SearchLimits = { expansions: 60, width: 14, size: 6 },
): number {
  const exact = byEverySet(universe, evidence, accounts, wanted);
  const found = byCores(universe, evidence, accounts, wanted, limits);
  return Math.max(...found.map((chance, i) => Math.abs(chance - exact[i])));
}

describe("the chance of each fault, silent ones included, against the sum over every set", () => {
  it("where nothing knocks anything on", () => {
    const evidence = [reading(12, [0, 1, 2], 0.95, 0.05), reading(12, [2, 3], 0.03, 0.97)];
    expect(worstDifference(twelve([]), evidence)).toBeLessThan(0.005);
  });

  it("where a dead part takes silent ones with it", () => {
    const knockOns = [5, 6, 7].map((to) => [0, to, 0.8] as const);
    expect(worstDifference(twelve(knockOns), [reading(12, [0, 1], 0.95, 0.05)])).toBeLessThan(0.01);
  });

  it("where any of ten silent parts could have killed the one that is heard: one cause is enough", () => {
    const knockOns = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11].flatMap((from) => [
      [from, 0, 0.6] as const,
      [from, 1, 0.6] as const,
    ]);
    const evidence = [reading(12, [0], 0.98, 0.001), reading(12, [1], 0.98, 0.001)];
    expect(worstDifference(twelve(knockOns), evidence)).toBeLessThan(0.02);
  });

  it("where a clamp that kills nothing by itself takes with it, unseen, the bridge that makes the board dead", () => {
    const knockOns = [4, 5, 6, 7].map((clamp) => [clamp, 8, 0.5] as const);
    const onlyTheBridge = Uint8Array.from({ length: 12 }, (_, i) => (i === 8 || i === 9 ? 1 : 0));
    const evidence = [reading(12, [0], 0.001, 0.98)];
    expect(worstDifference(twelve(knockOns), evidence, onlyTheBridge)).toBeLessThan(0.01);
  });

  it("where some faults bring a board in only now and then, those are believed by their share", () => {
    const shares = Float64Array.from({ length: 12 }, (_, i) => [0.93, 0.6, 0.1, 0][i % 4]);
    const evidence = [reading(12, [0], 0.001, 0.98)];
    expect(worstDifference(twelve([]), evidence, shares)).toBeLessThan(0.01);
    const knockOns = [2, 3, 6].map((from) => [from, 9, 0.5] as const);
    expect(worstDifference(twelve(knockOns), evidence, shares)).toBeLessThan(0.02);
    // one that seldom does is seen: it leaves room for another beside it
    const seen = [reading(12, [2], 0.98, 0.001)];
    expect(worstDifference(twelve([]), seen, shares)).toBeLessThan(0.01);
  });

  it("where a board stays quiet three times over and a reading besides points at one of the causes: the others are its alternatives", () => {
    const quiet = [0, 1, 2].map(() => reading(12, EACH.flat(), 0.9, 0.02));
    const evidence = [...quiet, reading(12, [0], 0.5, 0.005)];
    // the search follows what explains the odd reading and looks no further than that
    const limits = { expansions: 1, width: 14, size: 6 };
    expect(worstDifference(twelve([]), evidence, ACCOUNTS_FOR_ALL, EACH, limits)).toBeLessThan(0.02);
  });

  it("where three parts are dead for sure and one of four like ones besides: each of the four keeps its share", () => {
    const sure = [0, 1, 2].map((fault) => reading(12, [fault], 0.98, 0.00001));
    const legs = reading(12, [3, 4, 5, 6, 7], 0.98, 0.00001);
    const evidence = [...sure, legs, reading(12, [8, 9, 10, 11], 0.98, 0.00001)];
    const limits = { expansions: 8, width: 8, size: 6 };
    expect(worstDifference(twelve([]), evidence, ACCOUNTS_FOR_ALL, EACH, limits)).toBeLessThan(0.02);
  });

  it("where one of several must have made the board dead: as a group they are alternatives, not independent", () => {
    const evidence = [reading(12, [0], 0.001, 0.98)];
    const groups = [
      [1, 2, 3, 4, 5],
      [6, 7],
      [8, 9, 10, 11],
      [1, 11],
    ];
    expect(worstDifference(twelve([]), evidence, ACCOUNTS_FOR_ALL, groups)).toBeLessThan(0.005);
    const knockOns = [2, 3, 6].flatMap((from) => [[from, 10, 0.6] as const, [from, 11, 0.4] as const]);
    expect(worstDifference(twelve(knockOns), evidence, ACCOUNTS_FOR_ALL, groups)).toBeLessThan(0.01);
  });
});
