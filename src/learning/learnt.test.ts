import { describe, expect, it } from "vitest";
import { KNOCK_ON_RULES } from "../priors/knock-on-rules.ts";
import { figuresFor, type JobKind } from "./job-figures.ts";
import { causeKey, familyKey, learn, partKey } from "./learnt.ts";
import { fuse, lessonWith } from "./lessons.fixture.ts";
import { PSEUDO_COUNTS } from "./pseudo-counts.ts";

const many = (count: number, changes: Parameters<typeof lessonWith>[0]) =>
  Array.from({ length: count }, () => lessonWith(changes));
const { sort, cause, family, board, modes, knockOn } = PSEUDO_COUNTS;

describe("rates in a chain", () => {
  it("start from the tables: what was found as often as expected changes nothing", () => {
    const learnt = learn(many(40, fuse(0.25, 0.25)));
    for (const level of [learnt.sorts, learnt.causes, learnt.families, learnt.parts])
      for (const { mean } of level.values()) expect(mean).toBeCloseTo(1, 12);
  });

  it("take each level's mean as the prior of the next", () => {
    // ten boards, one fault each where a half was expected
    const learnt = learn(many(10, fuse(1, 0.5)));
    const ofSort = (sort.worth + 10) / (sort.worth + 5);
    const ofCause = (cause.worth + 10) / (cause.worth + 5 * ofSort);
    const ofFamily = (family.worth + 10) / (family.worth + 5 * ofSort * ofCause);
    const ofPart = (board.worth + 10) / (board.worth + 5 * ofSort * ofCause * ofFamily);
    expect(learnt.sorts.get("fuse")?.mean).toBeCloseTo(ofSort, 12);
    expect(learnt.causes.get(causeKey("surge", "fuse"))?.mean).toBeCloseTo(ofCause, 12);
    expect(learnt.families.get(familyKey("fan", "fuse"))?.mean).toBeCloseTo(ofFamily, 12);
    expect(learnt.parts.get(partKey("PCB 12", "F1"))?.mean).toBeCloseTo(ofPart, 12);
  });

  it("end at what was found over what was expected, however strong the pseudo-counts", () => {
    const learnt = learn(many(5000, fuse(0.3, 0.1)));
    const product = [learnt.sorts, learnt.causes, learnt.families, learnt.parts]
      .flatMap((level) => [...level.values()])
      .reduce((factor, { mean }) => factor * mean, 1);
    expect(product).toBeCloseTo(3, 2);
  });

  it("tell a board that always fails so from its family: one at its own rate in the end, the other at none", () => {
    const learnt = learn([
      ...many(3000, { ...fuse(1, 0.2), boardName: "PCB 12" }),
      ...many(3000, { ...fuse(0, 0.2), boardName: "PCB 13" }),
    ]);
    const ofFamily = [learnt.sorts, learnt.causes, learnt.families]
      .flatMap((level) => [...level.values()])
      .reduce((factor, { mean }) => factor * mean, 1);
    const whole = (name: string) => ofFamily * (learnt.parts.get(partKey(name, "F1"))?.mean ?? Number.NaN);
    expect(ofFamily).toBeCloseTo(2.5, 1);
    expect(whole("PCB 12")).toBeCloseTo(5, 1);
    expect(whole("PCB 13")).toBeLessThan(0.1);
  });

  it("count a board that came back once: what was found is added, its parts are not met again", () => {
    const [once, again] = [lessonWith(fuse(0.5, 0.5)), lessonWith({ ...fuse(1, 0.5), again: true })];
    const learnt = learn([once, again]);
    expect(learnt.sorts.get("fuse")).toMatchObject({ count: 1.5, expected: 0.5 });
    expect([learnt.jobs, learnt.boards, learnt.seen.get("fuse")]).toEqual([2, 1, 1]);
  });
});

describe("modes and knock-ons", () => {
  it("are a Dirichlet and a Beta on the tables' figures", () => {
    // fuses fail open 95, leaky 5 by the table; twenty found, half of each, all after one cause that weighs neither
    const found = (mode: "open" | "leaky", share: number) => ({
      sort: "fuse",
      shape: "fuse",
      mode,
      count: 10,
      expected: 20 * share,
    });
    const rule = { rule: "K-x", trials: 1, expected: 0.5, count: 1 };
    const learnt = learn([
      lessonWith({ modes: [found("open", 0.95), found("leaky", 0.05)], knockOns: [rule] }),
    ]);
    const [open, leaky] = learnt.shares.get("fuse")?.shares ?? [];
    expect(open).toBeCloseTo((modes.worth * 0.95 + 10) / (modes.worth + 20), 12);
    expect(leaky).toBeCloseTo((modes.worth * 0.05 + 10) / (modes.worth + 20), 12);
    expect(learnt.knockOns.size).toBe(0); // no such rule here
  });

  it("raise a rule's strength by what a chance of one minus exp(-strength) makes of the Beta's mean", () => {
    const trials = 30;
    const expected = trials * (1 - Math.exp(-0.4));
    const rule = KNOCK_ON_RULES[0]?.id ?? "";
    const learnt = learn([lessonWith({ knockOns: [{ rule, trials, expected, count: 24 }] })]).knockOns.get(
      rule,
    );
    const mean = (knockOn.worth * (1 - Math.exp(-0.4)) + 24) / (knockOn.worth + trials);
    expect(learnt?.mean).toBeCloseTo(mean, 12);
    expect(learnt?.factor).toBeCloseTo(-Math.log(1 - mean) / 0.4, 12);
  });
});

describe("the figures of one job", () => {
  const kind: JobKind = {
    cause: "surge",
    family: "fan",
    boardName: "PCB 12",
    sorts: new Map([["F1", "fuse"]]),
    nets: new Set<string>(),
    shapes: new Set(["fuse"]),
  };

  it("are the product of the levels that bear on it, and none where nothing was learnt", () => {
    expect(figuresFor(learn([]), kind, [])).toBeNull();
    const learnt = learn(many(10, fuse(1, 0.5)));
    const figures = figuresFor(learnt, kind, []);
    const product = [...learnt.sorts.values(), ...learnt.causes.values(), ...learnt.families.values()].reduce(
      (factor, { mean }) => factor * mean,
      1,
    );
    expect(figures?.sorts.fuse).toBeCloseTo(product, 3);
    expect(figuresFor(learnt, { ...kind, boardName: "PCB 99", family: "pump" }, [])?.parts).toEqual({});
  });
});
