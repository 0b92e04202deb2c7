/**
 * Parts that no cold check tells apart, on a board of 25 parts: what the few checks and the shortcut for silent faults leave
 * together is what every check on every pair of nets leaves together, each reading solved by itself.
 */
import { expect, test } from "vitest";
import { foldLog } from "../src/bench/fold.ts";
import type { Fault } from "../src/board/fault.ts";
import { faultName } from "../src/board/fault.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { TWENTY_FIVE_PARTS } from "../src/diagnosis/twenty-five-parts.fixture.ts";
import type { ColdCheck, Prediction } from "../src/meter/prediction.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { definiteFaults, leftTogether, toldApart } from "../src/review/ambiguity.ts";
import { reviewBoard } from "../src/review/board-review.ts";
import { tellingChecks } from "../src/review/telling-checks.ts";

const board = (() => {
  const parsed = parseBoard(TWENTY_FIVE_PARTS);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
})();
const bench = (() => {
  const folded = foldLog(board, [], []);
  if (!folded.ok) throw new Error(folded.problem);
  return folded.value.now;
})();
const predictor = makePredictor(board, bench, DEFAULT_METER);
const faults = definiteFaults(board);

/** Every pair of nets in every mode, every fault solved. */
function bruteForce(): { groups: string[][]; unseen: string[] } {
  const nets = [...board.nets.keys()];
  const checks: ColdCheck[] = [];
  for (const [i, one] of nets.entries())
    for (const other of nets.slice(i + 1))
      checks.push(
        { mode: "diode", red: one, black: other },
        { mode: "diode", red: other, black: one },
        { mode: "ohms", red: one, black: other },
        { mode: "farads", red: one, black: other },
      );
  const good = checks.map((check) => predictor.predict(check, []));
  const under = new Map(
    faults.map((fault) => [fault, checks.map((check) => predictor.predict(check, [fault]))] as const),
  );
  const apart = (one: readonly Prediction[], other: readonly Prediction[]) =>
    checks.some(({ mode }, i) => toldApart(mode, one[i], other[i]));
  const of = (fault: Fault) => under.get(fault) ?? [];
  const visible = faults.filter((fault) => apart(of(fault), good));
  const group = new Map(visible.map((fault, i) => [fault, i]));
  for (const one of visible)
    for (const other of visible) {
      const [a, b] = [group.get(one), group.get(other)];
      if (a === b || apart(of(one), of(other))) continue;
      for (const [fault, at] of group) if (at === b && a !== undefined) group.set(fault, a);
    }
  const groups = new Map<number, string[]>();
  for (const [fault, at] of group) groups.set(at, [...(groups.get(at) ?? []), faultName(fault)]);
  return {
    groups: [...groups.values()],
    unseen: faults.filter((fault) => !visible.includes(fault)).map(faultName),
  };
}

const sorted = (groups: readonly (readonly string[])[]) =>
  groups.map((group) => [...group].sort().join(" ")).sort();

test("the groups of a board of 25 parts are those of a brute force", () => {
  const found = leftTogether(predictor, tellingChecks(board), faults);
  const brute = bruteForce();
  expect(sorted(found.groups.map((group) => group.map(faultName)))).toEqual(sorted(brute.groups));
  expect(found.unseen.map(faultName).sort()).toEqual(brute.unseen.sort());
});

const review = reviewBoard(board, bench, DEFAULT_METER, makePredictor);

test("parts side by side on a rail are one group, and lifting a pin tells one of them from the rest", () => {
  const onV5 = review.ambiguous.find(({ parts }) => parts.includes("C5"));
  expect(onV5?.parts).toEqual(["U2", "C4", "C5", "U3"]);
  const alone = onV5?.split?.into.find((parts) => parts.length === 1) ?? [];
  expect(onV5?.split?.place.split(".")[0]).toBe(alone[0]);
  for (const { parts, split } of review.ambiguous)
    expect([...(split?.into.flat() ?? [])].sort()).toEqual([...parts].sort());
});

test("the parts of the gate are one group: resistor, clamp and the gate itself, until the gate is lifted", () => {
  const gate = review.ambiguous.find(({ parts }) => parts.includes("ZD1"));
  expect(gate?.parts).toEqual(["Q1", "R3", "ZD1"]);
  expect(gate?.split).toEqual({ place: "Q1.g", into: [["Q1"], ["R3", "ZD1"]] });
});

test("what can decide whether the repair pays is named where it has no price", () => {
  expect(review.unpriced.map(({ part }) => part)).toEqual(["Q1", "C2", "U3"]);
  expect(review.floatingNets).toEqual([]);
  expect(review.railsWithoutSource).toEqual([]);
});
