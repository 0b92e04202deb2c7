import { expect, test } from "vitest";
import { handModel, type Row } from "./hand-model.fixture.ts";
import { bestCourse, jobValue, repairPlan } from "./value.ts";

test("independent repairs go by chance over cost: d, b, then a and c tied, at an expected cost of 11.6 (constructed, not published)", () => {
  const four = handModel(
    [
      { p: 0.4, cost: 10 },
      { p: 0.3, cost: 4 },
      { p: 0.2, cost: 5 },
      { p: 0.1, cost: 1 },
    ],
    1000,
  );
  const plan = repairPlan(four.weights, four);
  expect(plan.steps.map(({ cures }) => cures[0])).toSatisfy(
    ([first, second]: number[]) => first === 3 && second === 1,
  );
  expect(1000 - plan.value).toBeCloseTo(11.6, 9);
  expect(plan.repaired).toBeCloseTo(1, 12);
});

test("a try is worth nothing where the part that nobody sells is dead: the plan stops before it pays for that", () => {
  const dead = handModel(
    [
      { p: 0.1, cost: 30 },
      { p: 0.9, cost: 0, possible: false },
    ],
    140,
  );
  expect(repairPlan(dead.weights, dead).steps).toEqual([]);
  expect(repairPlan(dead.weights, dead).value).toBe(0);
  const alive = handModel(
    [
      { p: 0.9, cost: 30 },
      { p: 0.1, cost: 0, possible: false },
    ],
    140,
  );
  expect(repairPlan(alive.weights, alive).value).toBeCloseTo(0.9 * 140 - 30, 9);
});

test("what a failed try breaks is charged to the explanations under which it fails", () => {
  const rows: readonly Row[] = [
    { p: 0.6, cost: 10 },
    { p: 0.4, cost: 10, breaks: 50 },
  ];
  const plan = repairPlan(handModel(rows, 140).weights, handModel(rows, 140));
  // the likelier first would fail in 40 % of the jobs and break 50 each time: 140 - 10 - 0.4 * (10 + 50) = 106
  expect(plan.steps.map(({ cures }) => cures[0])).toEqual([1, 0]);
  expect(plan.value).toBeCloseTo(140 - 10 - 0.6 * 10, 9);
});

test("what power would break is charged only while its cause is not cured", () => {
  const rows: readonly Row[] = [
    { p: 0.6, cost: 10, breaks: 80 },
    { p: 0.4, cost: 60 },
  ];
  const plain = handModel(rows, 140);
  // both explanations hold the first fault; the second holds the other as well: curing the first takes its harm out of both
  const [first, second] = plain.groups;
  if (first === undefined || second === undefined) throw new Error("two rows");
  const both = { ...second, cures: [0, 1], breakMoney: 80, breakMoneyOf: [80, 0], knownValue: 70 };
  const plan = repairPlan(plain.weights, { ...plain, groups: [first, both] });
  expect(plan.steps.map(({ cures }) => cures)).toEqual([[0], [1]]);
  expect(plan.value).toBeCloseTo(140 - 10 - 0.4 * 60, 9);
});

test("a try that may fail is worth more where the job can go on finding out, by what that earns less its bits", () => {
  const rows: readonly Row[] = [
    { p: 0.5, cost: 10 },
    ...Array.from({ length: 4 }, (): Row => ({ p: 0.125, cost: 100 })),
  ];
  const model = handModel(rows, 140);
  const ends = repairPlan(model.weights, model);
  const goesOn = repairPlan(model.weights, model, 3);
  // four ways are left, each 40 when known: half of 40, less two bits at 3 minutes of 0.5 on that half
  expect(ends.value).toBeCloseTo(0.5 * 140 - 10, 9);
  expect(goesOn.value).toBeCloseTo(0.5 * 140 - 10 + 0.5 * (40 - 2 * 3 * 0.5), 9);
  expect(repairPlan(model.weights, model, 1000).value).toBeCloseTo(ends.value, 9);
});

test("finding out is the best course while its bits are cheap, the repair once they are dear", () => {
  const two = handModel(
    [
      { p: 0.6, cost: 10 },
      { p: 0.4, cost: 60 },
    ],
    140,
  );
  expect(bestCourse(two.weights, two, 3).course).toBe("find out");
  expect(bestCourse(two.weights, two, 100).course).toBe("repair");
});

test("the value of a belief grows in proportion to its weight", () => {
  const two = handModel(
    [
      { p: 0.5, cost: 10 },
      { p: 0.5, cost: 60 },
    ],
    140,
  );
  const half = two.weights.map((weight) => weight / 2);
  expect(jobValue(half, two, 3)).toBeCloseTo(jobValue(two.weights, two, 3) / 2, 9);
});
