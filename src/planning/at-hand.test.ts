/** What lies in the drawer, before what has to be ordered. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { plain } from "../messages/said.ts";
import { isObtainable } from "../money/prices.ts";
import { type AtHand, DEFAULT_TERMS, type Terms } from "../money/terms.ts";
import { priorTable } from "../priors/prior-table.ts";
import { prior } from "./one-fault.fixture.ts";
import { whereFrom } from "./part-at-hand.ts";
import { repairModel } from "./repair-model.ts";
import { bestCourse, repairPlan } from "./value.ts";

const told = (...given: Parameters<typeof whereFrom>) => plain(whereFrom(...given).join(" "));

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

function terms(atHand: Readonly<Record<string, AtHand>>, more: Partial<Terms> = {}): Terms {
  return { ...DEFAULT_TERMS, atHand: new Map(Object.entries(atHand)), ...more };
}

/** Each named part is equally likely to be the one dead thing on the board. */
function modelOf(dead: readonly string[], by: Terms, stop?: number) {
  return modelOfSets(
    dead.map((name) => [name]),
    by,
    stop,
  );
}

/** Two parts are dead together. */
function pairModel(by: Terms, dead: readonly string[] = ["Q1", "Q2"]) {
  return modelOfSets([dead], by);
}

function modelOfSets(sets: readonly (readonly string[])[], by: Terms, stop?: number) {
  const list = sets.map((dead) => ({
    core: 0,
    beside: -1,
    unlisted: false,
    weight: 1 / sets.length,
    dead,
  }));
  const hypotheses = {
    priors: [prior("Q1", "ce", "short")],
    cores: [{ present: [], faults: [] }],
    list,
    remainder: 0,
  };
  return repairModel(hypotheses, board, BARE, by, priorTable(board, "surge", "dead"), 1, stop);
}

function first(dead: readonly string[], by: Terms): string | undefined {
  const model = modelOf(dead, by);
  const [step] = repairPlan(model.weights, model).steps;
  return step?.cures.map((c) => model.cures[c]?.name).join(" ");
}

describe("of two repairs that are alike in everything", () => {
  it("the one whose part lies in the drawer comes first, whichever it is, once waiting costs something", () => {
    const wait = { waitCost: 5 };
    expect(first(["Q1", "Q2"], terms({ Q2: {} }, wait))).toBe("Q2");
    expect(first(["Q2", "Q1"], terms({ Q1: {} }, wait))).toBe("Q1");
  });

  it("the one whose part is cheaper at hand comes first, waiting or not", () => {
    expect(first(["Q1", "Q2"], terms({ Q2: { price: 0.5, used: true } }))).toBe("Q2");
    expect(first(["Q2", "Q1"], terms({ Q1: { price: 0.5, used: true } }))).toBe("Q1");
  });
});

describe("waiting for an ordered part", () => {
  it("weighs on what the job is worth and is no price of the part", () => {
    const [plain, waiting, lying] = [
      terms({}),
      terms({}, { waitCost: 5 }),
      terms({ Q1: { price: 2 } }, { waitCost: 5 }),
    ].map((by) => modelOf(["Q1"], by));
    expect(waiting?.cures[0]).toMatchObject({ paid: 6.5, money: 11.5 });
    expect(plain?.cures[0]).toMatchObject({ paid: 6.5, money: 6.5 });
    expect(lying?.cures[0]).toMatchObject({ paid: 2, money: 2 });
    const known = [plain, waiting, lying].map((model) => model?.groups[0]?.knownValue ?? 0);
    expect(known[1]).toBeLessThan(known[0] ?? 0);
    expect(known[2]).toBeGreaterThan(known[0] ?? 0);
  });

  it("is said in the reason, and so is what lies at hand", () => {
    expect(told(["Q1"], terms({}))).toBe("");
    expect(told(["Q1"], terms({}, { waitCost: 5 }))).toBe("Q1 has to be ordered.");
    expect(told(["Q1"], terms({ Q1: { with: "K40", used: true } }))).toBe(
      "For Q1 K40 lies at hand, pulled: read it in the hand before it goes in.",
    );
  });
});

describe("one part in the drawer that would do in two places", () => {
  const one = { with: "K40", price: 1, from: { place: "drawer 4" }, count: 1 } as const;
  const both = (lying: AtHand) => terms({ Q1: lying, Q2: lying }, { waitCost: 5 });

  it("serves either where one is dead, and where both are the second is bought and waited for", () => {
    const alone = modelOf(["Q1", "Q2"], both(one));
    expect(alone.groups.map(({ overMoney }) => overMoney)).toEqual([0, 0]);
    const pair = pairModel(both(one));
    // 6.5 for a new one and 5 for waiting, less the one that lies there for 1
    expect(pair.groups[0]?.overMoney).toBeCloseTo(6.5 + 5 - 1, 9);
    expect(pairModel(both({ ...one, count: 2 })).groups[0]?.overMoney).toBe(0);
    const dearer =
      (pairModel(both({ ...one, count: 2 })).groups[0]?.knownValue ?? 0) - (pair.groups[0]?.knownValue ?? 0);
    expect(dearer).toBeGreaterThan(10.5);
    expect(dearer).toBeLessThan(10.5 * 1.1);
  });

  it("leaves the other place what lies in the next drawer, where that is cheaper than ordering", () => {
    const next = { with: "K50", price: 3, from: { place: "drawer 9" }, count: 4 } as const;
    expect(pairModel(both({ ...one, next })).groups[0]?.overMoney).toBeCloseTo(3 - 1, 9);
    expect(pairModel(both({ ...one, next: { ...next, count: 0 } })).groups[0]?.overMoney).toBeCloseTo(
      10.5,
      9,
    );
    expect(pairModel(both({ ...one, next: { ...next, price: 40 } })).groups[0]?.overMoney).toBeCloseTo(
      10.5,
      9,
    );
    expect(told(["Q1", "Q2"], both({ ...one, next }))).toBe(
      "For Q1 K40 lies at hand. There is one; for Q2 K50 lies at hand.",
    );
  });

  it("is not counted on again by a later step of the same plan", () => {
    const steps = (count: number) => {
      const model = modelOf(["Q1", "Q2"], both({ ...one, count }));
      return repairPlan(model.weights, model).steps.map(({ overMoney }) => overMoney);
    };
    expect(steps(1)).toEqual([0, 10.5]);
    expect(steps(2)).toEqual([0, 0]);
  });

  it("leaves a pair of controllers beyond repair where one donor carries one", () => {
    const donor = { with: "its chip", used: true, from: { donor: "another" }, count: 1 } as const;
    const lots = (count: number) => terms({ U3: { ...donor, count }, Q1: { ...donor, count } });
    // Q1 can be bought beside it: dear, and possible
    expect(pairModel(lots(1), ["Q1", "U3"]).groups[0]?.possible).toBe(false);
    expect(pairModel(lots(2), ["Q1", "U3"]).groups[0]?.possible).toBe(true);
  });

  it("is told of in the reason, with the place that it does not serve", () => {
    expect(told(["Q1", "Q2"], both(one))).toBe("For Q1 K40 lies at hand. There is one: Q2 needs another.");
    expect(told(["Q1", "Q2"], both({ ...one, count: 2 }))).toBe("For Q1 K40 lies at hand.");
  });
});

describe("a pulled part", () => {
  const rates = priorTable(board, "surge", "dead").fittedBad;

  it("is bad more often than a new one, and the plan counts on fitting it twice so often", () => {
    const [fresh, pulled] = [{ price: 2 }, { price: 2, used: true } as const].map((lying) =>
      modelOf(["Q1"], terms({ Q1: lying })),
    );
    expect(fresh?.cures[0]?.bad).toBeCloseTo(rates.new + rates.fittedWrong, 12);
    expect(pulled?.cures[0]?.bad).toBeCloseTo(rates.used + rates.fittedWrong, 12);
    const once = (fresh?.cures[0]?.money ?? 0) + (fresh?.cures[0]?.minutes ?? 0) * (fresh?.perMinute ?? 0);
    const lost = (fresh?.groups[0]?.knownValue ?? 0) - (pulled?.groups[0]?.knownValue ?? 0);
    expect(lost).toBeCloseTo((rates.used - rates.new) * (once + (fresh?.testMoney ?? 0)), 9);
  });

  it("comes after a new one of the same price", () => {
    const chance = { Q1: { price: 2, used: true }, Q2: { price: 2 } } as const;
    const [pulled, fresh] = ["Q1", "Q2"].map(
      (dead) => modelOf([dead], terms(chance)).groups[0]?.knownValue ?? 0,
    );
    expect(fresh).toBeGreaterThan(pulled ?? 0);
  });
});

describe("a part that still sits on a donor board", () => {
  it("takes the minutes of taking it off there as well, and comes after one that lies loose", () => {
    const from = { donor: "heat pump 12" };
    const [loose, sitting] = [{ ...from, place: "shelf" }, from].map((where) =>
      modelOf(["Q1"], terms({ Q1: { with: "K40", price: 2, used: true, from: where } })),
    );
    expect((sitting?.cures[0]?.minutes ?? 0) - (loose?.cures[0]?.minutes ?? 0)).toBe(5);
    expect(sitting?.groups[0]?.knownValue).toBeLessThan(loose?.groups[0]?.knownValue ?? 0);
  });
});

describe("the least margin that the shop wants", () => {
  it("is taken off what a repair counts for, so that a dear repair is given up and a cheap one is not", () => {
    const at = (minimumMargin: number) => modelOf(["Q1"], terms({}, { minimumMargin }));
    const spare = at(0).groups[0]?.knownValue ?? 0;
    expect(at(20).groups[0]?.knownValue).toBeCloseTo(spare - 20, 9);
    const course = (model: ReturnType<typeof modelOf>) => bestCourse(model.weights, model, 3).course;
    expect(course(at(spare - 1))).not.toBe("stop");
    expect(course(at(spare + 1))).toBe("stop");
  });
});

describe("what remains of a board that stays with the shop", () => {
  it("counts for stopping: a repair that leaves less is not begun", () => {
    const by = terms({});
    const left = (stop: number) => modelOf(["Q1"], by, stop);
    const spare = left(0).groups[0]?.knownValue ?? 0;
    const course = (model: ReturnType<typeof modelOf>) => bestCourse(model.weights, model, 3);
    expect(course(left(spare - 1)).course).not.toBe("stop");
    expect(course(left(spare + 1))).toEqual({ course: "stop", value: spare + 1 });
  });
});

describe("a part that nobody sells", () => {
  it("can be had where a donor board carries it, and a job on it is worth repairing again", () => {
    const controller = board.parts.get("U3");
    if (controller === undefined) throw new Error("U3");
    const donor = terms({ U3: { price: 10, used: true } });
    expect([isObtainable(controller), isObtainable(controller, donor)]).toEqual([false, true]);
    const [without, carried] = [modelOf(["U3"], DEFAULT_TERMS), modelOf(["U3"], donor)];
    expect(without.groups[0]).toMatchObject({ possible: false, knownValue: DEFAULT_TERMS.feeIfNotRepaired });
    expect(carried.groups[0]?.possible).toBe(true);
    expect(carried.groups[0]?.knownValue).toBeGreaterThan(90);
  });
});
