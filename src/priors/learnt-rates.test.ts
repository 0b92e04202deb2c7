import { describe, expect, it } from "vitest";
import { fixtureBoard } from "./drives.fixture.ts";
import { faultSorts, type LearntRates, NET_LEAK_SORT } from "./learnt-rates.ts";
import { MODE_SHARES } from "./mode-shares.ts";
import { priorTable } from "./prior-table.ts";
import { NOTHING_TOLD } from "./told.ts";

const board = fixtureBoard("module", {});
const NOTHING: LearntRates = { sorts: {}, parts: {}, shares: {}, knockOns: {} };
const table = (learnt: LearntRates | null) => priorTable(board, "surge", "dead", NOTHING_TOLD, learnt);
const plain = table(null);
const sorts = faultSorts(board, plain.faults);

describe("what was learnt enters the table", () => {
  it("not at all where nothing was: every figure is the same to the last bit", () => {
    expect(table(null)).toEqual(priorTable(board, "surge", "dead"));
    const [a, b] = [table(NOTHING), plain];
    a.faults.forEach((fault, at) => {
      expect(fault.rate).toBe(b.faults[at].rate);
    });
    expect(a.knockOns.map(({ rate }) => rate)).toEqual(b.knockOns.map(({ rate }) => rate));
    expect(a.breaksAtPower).toEqual(b.breaksAtPower);
  });

  it("as a factor on every fault of a sort, and on one part besides", () => {
    const learnt = table({ ...NOTHING, sorts: { electrolytic: 3, [NET_LEAK_SORT]: 0.5 }, parts: { C1: 2 } });
    learnt.faults.forEach(({ rate, part }, at) => {
      const sort = sorts[at].sort;
      const factor =
        (sort === "electrolytic" ? 3 : sort === NET_LEAK_SORT ? 0.5 : 1) * (part === "C1" ? 2 : 1);
      expect(rate).toBeCloseTo(plain.faults[at].rate * factor, 14);
    });
    expect(learnt.breaksAtPower).toEqual(plain.breaksAtPower);
  });

  it("as shares of the modes that take the place of the table's", () => {
    const shares = { short: 0.1, open: 0.2, drift: 0.6, leaky: 0.1 };
    const learnt = table({ ...NOTHING, shares: { electrolytic: shares } });
    const ofTable = MODE_SHARES.electrolytic.shares;
    let met = 0;
    learnt.faults.forEach(({ rate, fault }, at) => {
      if (sorts[at].shape !== "electrolytic") {
        expect(rate).toBe(plain.faults[at].rate);
        return;
      }
      met++;
      const factor = shares[fault.mode] / (ofTable[fault.mode] ?? Number.NaN);
      expect(rate).toBeCloseTo(plain.faults[at].rate * factor, 14);
    });
    expect(met).toBeGreaterThan(0);
  });

  it("as a factor on a rule's strength, and on no other rule", () => {
    const rule = plain.knockOns[0].rule;
    const learnt = table({ ...NOTHING, knockOns: { [rule]: 2 } });
    for (const knock of learnt.knockOns) {
      const was = plain.knockOns.find(
        (one) => one.parent === knock.parent && one.child === knock.child && one.rule === knock.rule,
      );
      // a knock-on too weak for a row may have become strong enough
      if (was !== undefined) expect(knock.rate).toBeCloseTo(was.rate * (knock.rule === rule ? 2 : 1), 14);
    }
  });
});
