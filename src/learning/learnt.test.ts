import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { KNOCK_ON_RULES } from "../priors/knock-on-rules.ts";
import { HELD_TIMES } from "./held-by.ts";
import { figuresFor, type JobKind } from "./job-figures.ts";
import { learn } from "./learnt.ts";
import { learntView } from "./learnt-view.ts";
import { fuse, lessonWith, unbrought } from "./lessons.fixture.ts";
import { PSEUDO_COUNTS } from "./pseudo-counts.ts";
import { causeKey, familyKey, partKey } from "./rate-chain.ts";

const many = (count: number, changes: Parameters<typeof lessonWith>[0]) =>
  Array.from({ length: count }, () => lessonWith(changes));
const { bench, sort, cause, family, board, modes, knockOn } = PSEUDO_COUNTS;
/** Logarithm of the gamma function of a + n over that of a, for a whole n: the product a (a + 1) ... (a + n - 1). */
const logRising = (a: number, n: number) =>
  Array.from({ length: n }, (_, i) => Math.log(a + i)).reduce((sum, log) => sum + log, 0);
/** A figure weighed over how strongly what stood before may be held, each by how well it foretold what was counted. */
function weighed(
  worth: number,
  evidence: (held: number) => number,
  figure: (held: number) => number,
): number {
  const all = HELD_TIMES.map((times) => ({ w: Math.exp(evidence(times * worth)), x: figure(times * worth) }));
  return all.reduce((sum, { w, x }) => sum + w * x, 0) / all.reduce((sum, { w }) => sum + w, 0);
}
/** One key alone in its level. */
const alone = (worth: number, count: number, expected: number) =>
  weighed(
    worth,
    (held) => logRising(held, count) + held * Math.log(held) - (held + count) * Math.log(held + expected),
    (held) => (held + count) / (held + expected),
  );
/** The levels down to the family, multiplied. */
const product = ({ bench: all, sorts, causes, families }: ReturnType<typeof learn>) =>
  [sorts, causes, families]
    .flatMap((level) => [...level.values()])
    .reduce((factor, { mean }) => factor * mean, all?.mean ?? 1);

describe("rates in a chain", () => {
  it("start from the tables: what was found as often as expected changes nothing", () => {
    const learnt = learn(many(40, fuse(0.25, 0.25)));
    for (const level of [learnt.sorts, learnt.causes, learnt.families, learnt.parts])
      for (const { mean } of level.values()) expect(mean).toBeCloseTo(1, 12);
  });

  it("take each level's mean as the prior of the next", () => {
    // ten boards, one fault each where a half was expected
    const learnt = learn(many(10, fuse(1, 0.5)));
    const ofBench = alone(bench.worth, 10, 5);
    const ofSort = alone(sort.worth, 10, 5 * ofBench);
    const ofCause = alone(cause.worth, 10, 5 * ofBench * ofSort);
    const ofFamily = alone(family.worth, 10, 5 * ofBench * ofSort * ofCause);
    const ofPart = alone(board.worth, 10, 5 * ofBench * ofSort * ofCause * ofFamily);
    expect(learnt.bench?.mean).toBeCloseTo(ofBench, 12);
    expect(learnt.sorts.get("fuse")?.mean).toBeCloseTo(ofSort, 12);
    expect(learnt.causes.get(causeKey("surge", "fuse"))?.mean).toBeCloseTo(ofCause, 12);
    expect(learnt.families.get(familyKey("fan", "fuse"))?.mean).toBeCloseTo(ofFamily, 12);
    expect(learnt.parts.get(partKey("PCB 12", "F1"))?.mean).toBeCloseTo(ofPart, 12);
  });

  it("end at what was found over what was expected, however strong the pseudo-counts", () => {
    const learnt = learn(many(5000, fuse(0.3, 0.1)));
    const ofPart = learnt.parts.get(partKey("PCB 12", "F1"))?.mean ?? Number.NaN;
    expect(product(learnt) * ofPart).toBeCloseTo(3, 2);
  });

  it("tell a board that always fails so from its family: one at its own rate in the end, the other at none", () => {
    const learnt = learn([
      ...many(3000, { ...fuse(1, 0.2), boardName: "PCB 12" }),
      ...many(3000, { ...fuse(0, 0.2), boardName: "PCB 13" }),
    ]);
    const ofFamily = product(learnt);
    const whole = (name: string) => ofFamily * (learnt.parts.get(partKey(name, "F1"))?.mean ?? Number.NaN);
    expect(ofFamily).toBeCloseTo(2.5, 1);
    expect(whole("PCB 12")).toBeCloseTo(5, 1);
    expect(whole("PCB 13")).toBeLessThan(0.1);
  });

  it("count a board that came back once: what was found is added, its parts are not met again", () => {
    const [once, again] = [lessonWith(fuse(0.5, 0.5)), lessonWith({ ...fuse(1, 0.5), again: true })];
    const learnt = learn([once, again]);
    expect(learnt.bench).toMatchObject({ count: 1.5, expected: 0.5 });
    expect([learnt.jobs, learnt.boards, learnt.seen.get("fuse")]).toEqual([2, 1, 1]);
  });
});

describe("boards that are seen only where they are brought in", () => {
  /** One fault that alone brings a board in, at `rate` where the tables have 0.5: a board comes at all with 1 - exp(-rate). */
  const brought = (rate: number) => {
    const conditioned = (of: number) => of / -Math.expm1(-of);
    const tally = {
      ...unbrought(conditioned(rate), conditioned(0.5)),
      rate: 0.5,
      bringing: 0.5,
    };
    return lessonWith({
      stayedAway: Math.exp(-0.5),
      modes: [{ sort: "fuse", shape: "fuse", mode: "open", ...tally }],
      parts: [{ part: "F1", sort: "fuse", ...tally }],
    });
  };

  it.each([0.5, 1.5, 4])("teach the rate by which they fail, not the one by which they come: %f", (rate) => {
    const learnt = learn(Array.from({ length: 5000 }, () => brought(rate)));
    const ofPart = learnt.parts.get(partKey("PCB 12", "F1"))?.mean ?? Number.NaN;
    expect(0.5 * product(learnt) * ofPart).toBeCloseTo(rate, 1);
  });
});

it("what no reading has shown teaches nothing: boards that were given up unread do not hold a rate where the tables have it", () => {
  const squares = { expectedSquares: 0.05 ** 2, unseenSquares: 0.05 ** 2 };
  const unread = { ...unbrought(0.05, 0.05), unseen: 0.05, ...squares };
  const job = (tally: ReturnType<typeof unbrought>) =>
    lessonWith({
      modes: [{ sort: "fuse", shape: "fuse", mode: "open", ...tally }],
      parts: [{ part: "F1", sort: "fuse", ...tally }],
    });
  const read = Array.from({ length: 6000 }, () => job(unbrought(0.2, 0.05)));
  const given = Array.from({ length: 6000 }, () => job(unread));
  const [few, all] = [learn(read), learn([...read, ...given])];
  expect(product(few)).toBeGreaterThan(3);
  expect(product(all)).toBeCloseTo(product(few), 9);
});

describe("modes and knock-ons", () => {
  it("are a Dirichlet and a Beta on the tables' figures", () => {
    // fuses fail open 95, leaky 5 by the table; twenty found, half of each, all after one cause that weighs neither
    const found = (mode: "open" | "leaky", share: number) => ({
      sort: "fuse",
      shape: "fuse",
      mode,
      ...unbrought(10, 20 * share),
    });
    const rule = { rule: "K-x", trials: 1, expected: 0.5, count: 1 };
    const learnt = learn([
      lessonWith({ modes: [found("open", 0.95), found("leaky", 0.05)], knockOns: [rule] }),
    ]);
    const [open, leaky] = learnt.shares.get("fuse")?.shares ?? [];
    const gammaOf = (held: number, share: number) =>
      logRising(held * share, 10) + held * share * Math.log(held) - (held * share + 10) * Math.log(held + 20);
    const ofModes = (share: number) =>
      weighed(
        modes.worth,
        (held) => gammaOf(held, 0.95) + gammaOf(held, 0.05),
        (held) => (held * share + 10) / (held + 20),
      );
    expect(open).toBeCloseTo(ofModes(0.95), 12);
    expect(leaky).toBeCloseTo(ofModes(0.05), 12);
    expect(learnt.knockOns.size).toBe(0); // no such rule here
  });

  it("raise a rule's strength by what a chance of one minus exp(-strength) makes of the Beta's mean", () => {
    const trials = 30;
    const expected = trials * (1 - Math.exp(-0.4));
    const rule = KNOCK_ON_RULES[0]?.id ?? "";
    const learnt = learn([lessonWith({ knockOns: [{ rule, trials, expected, count: 24 }] })]).knockOns.get(
      rule,
    );
    const before = 1 - Math.exp(-0.4);
    const mean = weighed(
      knockOn.worth,
      (held) =>
        logRising(held * before, 24) + logRising(held * (1 - before), trials - 24) - logRising(held, trials),
      (held) => (held * before + 24) / (held + trials),
    );
    expect(learnt?.mean).toBeCloseTo(mean, 12);
    expect(learnt?.factor).toBeCloseTo(-Math.log(1 - mean) / 0.4, 12);
  });
});

describe("the figures of one job", () => {
  const kind: JobKind = {
    cause: "surge",
    family: "fan",
    identity: "PCB 12",
    sorts: new Map([["F1", "fuse"]]),
    nets: new Set<string>(),
    shapes: new Set(["fuse"]),
  };

  it("are the product of the levels that bear on it, and none where nothing was learnt", () => {
    expect(figuresFor(learn([]), kind, [])).toBeNull();
    const learnt = learn(many(10, fuse(1, 0.5)));
    const figures = figuresFor(learnt, kind, []);
    expect(figures?.sorts.fuse).toBeCloseTo(product(learnt), 3);
    expect(figuresFor(learnt, { ...kind, identity: "PCB 99", family: "pump" }, [])?.parts).toEqual({});
  });

  it("are those of the board under both of its names, shown under the later", () => {
    const good = [{ mode: "ohms" as const, red: "A", black: "B", reading: 100 }];
    const prices = [{ part: "F1", kind: "fuse", paid: 4, usual: 1 }];
    const taught = { ...fuse(1, 0.1), identity: "own-7", prices, good };
    const learnt = learn([
      ...many(20, { ...taught, boardName: "own board" }),
      ...many(20, { ...taught, boardName: "GF-12-A" }),
    ]);
    const renamed = { ...kind, identity: "own-7", nets: new Set(["A", "B"]) };
    const figures = figuresFor(learnt, renamed, []);
    const twice = learn(many(40, fuse(1, 0.1))).parts.get(partKey("PCB 12", "F1"))?.mean;
    expect(figures?.parts.F1).toBeCloseTo(twice ?? Number.NaN, 3);
    expect(figures?.references).toMatchObject([{ reading: 100, count: 40 }]);
    // forty purchases at 4 beside two pseudo-purchases at 1
    expect(figures?.prices.F1).toBeCloseTo(4 ** (40 / 42), 2);
    const rows = learntView(learnt, String).sections.flatMap((section) =>
      section.rows.map(({ what }) => plain(what)),
    );
    expect(rows.filter((what) => what.startsWith("GF-12-A: "))).toHaveLength(3);
    expect(rows.some((what) => /own/.test(what))).toBe(false);
  });
});
