/** What lies in the drawer, before what has to be ordered. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { isObtainable } from "../money/prices.ts";
import { type AtHand, DEFAULT_TERMS, type Terms } from "../money/terms.ts";
import { priorTable } from "../priors/prior-table.ts";
import { prior } from "./one-fault.fixture.ts";
import { repairModel } from "./repair-model.ts";
import { repairPlan } from "./value.ts";
import { whereFrom } from "./why.ts";

const parsed = parseBoard(smallDrive());
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const BARE = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };

function terms(atHand: Readonly<Record<string, AtHand>>, more: Partial<Terms> = {}): Terms {
  return { ...DEFAULT_TERMS, atHand: new Map(Object.entries(atHand)), ...more };
}

/** Each named part is equally likely to be the one dead thing on the board. */
function modelOf(dead: readonly string[], by: Terms) {
  const list = dead.map((name) => ({
    core: 0,
    beside: -1,
    unlisted: false,
    weight: 1 / dead.length,
    dead: [name],
  }));
  const hypotheses = {
    priors: [prior("Q1", "ce", "short")],
    cores: [{ present: [], faults: [] }],
    list,
    remainder: 0,
  };
  return repairModel(hypotheses, board, BARE, by, priorTable(board, "surge", "dead"), 1);
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
    expect(whereFrom("Q1", terms({}))).toBe("");
    expect(whereFrom("Q1", terms({}, { waitCost: 5 }))).toBe(" Q1 has to be ordered.");
    expect(whereFrom("Q1", terms({ Q1: { with: "K40", used: true } }))).toBe(
      " For Q1 K40 lies at hand, pulled.",
    );
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
