import { describe, expect, it } from "vitest";
import type { FaultPrior, KnockOn, PriorTable } from "../priors/fault-prior.ts";
import { firstFaults, knockOnIndex } from "./first-faults.ts";
import { softCounts } from "./soft-counts.ts";

const fault = (part: string, rate: number): FaultPrior => ({
  fault: { of: "part", part, junction: null, mode: "short", value: null },
  reportAs: `${part}:short`,
  part,
  site: part,
  rate,
  spreadLn: 0,
});

function tableOf(rates: readonly number[], knockOns: readonly KnockOn[]): PriorTable {
  return {
    faults: rates.map((rate, at) => fault(`R${at}`, rate)),
    knockOns,
    breaksAtPower: rates.map(() => 0),
    fittedBad: { new: 0, used: 0, fittedWrong: 0 },
  };
}

const knock = (parent: number, child: number, rate: number): KnockOn => ({
  parent,
  child,
  rate,
  arrivalRate: rate,
  rule: "K",
});
const NONE = [0, 0, 0];

describe("which of two faults came first", () => {
  const [a, b, k] = [0.02, 0.05, 0.7];

  it("where one can bring the other, that one did; the other was first too as often as chance has it", () => {
    const table = tableOf([a, b, 0.01], [knock(0, 1, k)]);
    const { first, brought, tried } = firstFaults(table, knockOnIndex(table), [0, 1]);
    // both first: a b; the first alone and the second brought: a (1 - exp(-k))
    const own = b / (b - Math.expm1(-k));
    expect(first[0]).toBeCloseTo(1, 12);
    expect(first[1]).toBeCloseTo(own, 12);
    expect(brought[0][1]).toBeCloseTo(1 - own, 12);
    expect(tried[0][1]).toBeCloseTo(1 - own, 12);
  });

  it("where each can bring the other, one of them was first at least", () => {
    const table = tableOf([a, b], [knock(0, 1, k), knock(1, 0, 2 * k)]);
    const { first } = firstFaults(table, knockOnIndex(table), [0, 1]);
    const ways = [a * b, a * -Math.expm1(-k), b * -Math.expm1(-2 * k)];
    const total = ways[0] + ways[1] + ways[2];
    expect(first[0]).toBeCloseTo((ways[0] + ways[1]) / total, 12);
    expect(first[1]).toBeCloseTo((ways[0] + ways[2]) / total, 12);
  });
});

describe("expected counts", () => {
  it("are shares over what the board may have been, made to sum to one", () => {
    const table = tableOf([0.02, 0.05, 0.01], []);
    const counts = softCounts(table, [
      { probability: 0.3, faults: [0], beside: NONE },
      { probability: 0.1, faults: [1, 2], beside: NONE },
    ]);
    expect([...counts.first]).toEqual([0.75, 0.25, 0.25].map((share) => expect.closeTo(share, 12)));
  });

  it("of what stands unseen count as first what the others have not brought", () => {
    const table = tableOf([0.02, 0.05, 0.01], [knock(0, 1, 0.45)]);
    const { first, rules } = softCounts(table, [{ probability: 1, faults: [0], beside: [0, 0.4, 0.3] }]);
    expect(first[1]).toBeCloseTo((0.4 * 0.05) / 0.5, 12);
    expect(first[2]).toBeCloseTo(0.3, 12);
    expect(rules.get("K")?.trials).toBeCloseTo(1, 12);
    expect(rules.get("K")?.count).toBeCloseTo((0.4 * 0.45) / 0.5, 12);
    expect(rules.get("K")?.expected).toBeCloseTo(-Math.expm1(-0.45), 12);
  });
});
