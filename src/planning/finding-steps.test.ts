import { expect, test } from "vitest";
import { foldLog } from "../bench/fold.ts";
import type { Belief } from "../diagnosis/belief.ts";
import { makePredictor } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import { weighSteps } from "./finding-steps.ts";
import { handModel } from "./hand-model.fixture.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { provenEmpty, smallDriveBoard } from "./scene.fixture.ts";
import { separations } from "./separations.ts";
import type { FindingStep } from "./steps.ts";

function step(name: string, classes: readonly number[], minutes: number): FindingStep {
  const outcomes = [...new Set(classes)].sort();
  return {
    action: { do: "measure", mode: "diode", red: name, black: "NBUS" },
    row: [],
    minutes: 0.4,
    allMinutes: minutes,
    outcomes: outcomes.map((o) => ({ word: `outcome ${o}`, low: null, high: null })),
    shares: outcomes.map((o) => Float64Array.from(classes, (c) => (c === o ? 1 : 0))),
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
}

/** Four equally likely states of two hidden things; one repair is right when both agree, another when they differ. */
const AGREE_OR_DIFFER: Hypotheses = {
  priors: [],
  cores: [{ present: [], faults: [] }],
  list: ["A", "B", "B", "A"].map((part) => ({
    core: 0,
    beside: -1,
    unlisted: false,
    weight: 0.25,
    dead: [part],
  })),
  remainder: 0,
};

test("a row is worth taking where no single check of it tells which repair is right", () => {
  const model = {
    ...handModel(
      [
        { p: 0.5, cost: 40 },
        { p: 0.5, cost: 40 },
      ],
      140,
    ),
    groupOf: Int16Array.of(0, 1, 1, 0),
  };
  const first = step("X", [0, 0, 1, 1], 0.4);
  const second = step("Y", [0, 1, 0, 1], 0.4);
  const row = step("X and Y", [0, 1, 2, 3], 0.8);
  const weighed = weighSteps([first, second, row], AGREE_OR_DIFFER, model, 3);
  const net = (of: FindingStep) => weighed.find((each) => each.step === of)?.net ?? Number.NaN;
  expect(weighed[0]?.step).toBe(row);
  expect(net(row)).toBeGreaterThan(1);
  expect(net(first)).toBeCloseTo(-0.2, 6); // its 0.4 minutes at 0.5 a minute, and nothing learnt
  expect(net(second)).toBeCloseTo(-0.2, 6);
});

test("a check that gains the same for less money goes first", () => {
  const model = handModel(
    [
      { p: 0.5, cost: 40 },
      { p: 0.5, cost: 40 },
    ],
    140,
  );
  const hypotheses: Hypotheses = {
    ...AGREE_OR_DIFFER,
    list: ["A", "B"].map((part) => ({ core: 0, beside: -1, unlisted: false, weight: 0.5, dead: [part] })),
  };
  const lift = { ...step("lift", [0, 1], 5.8), lead: "lift" };
  const probe = step("probe", [0, 1], 0.4);
  expect(weighSteps([lift, probe], hypotheses, model, 3)[0]?.step).toBe(probe);
});

test("with the motor plugged in one shorted switch shows on all three phases; pulling its plug tells which", () => {
  // three sensors on plugs stand before the motor in the file: the motor is pulled first all the same
  const board = smallDriveBoard((raw) => {
    const { M1, ...rest } = raw.parts;
    const sensors = ["TH7", "TH8", "TH9"].map((ref) => [
      ref,
      { kind: "ntc", pins: { 1: "V5", 2: "NBUS" }, value: { ohms: 10_000 }, plugged: true },
    ]);
    raw.parts = { ...Object.fromEntries(sensors), ...rest, ...(M1 === undefined ? {} : { M1 }) };
  });
  const timeline = foldLog(board, [], provenEmpty(board));
  if (!timeline.ok) throw new Error(timeline.problem);
  const priors = ["Q1", "Q2", "Q3"].map((part) => ({
    fault: { of: "part", part, junction: "ce", mode: "short", value: null } as const,
    reportAs: `${part}.ce:short`,
    part,
    site: `${part}.ce`,
    rate: 0.01,
    spreadLn: 0,
  }));
  const hypotheses: Hypotheses = {
    priors,
    cores: priors.map(({ fault }, f) => ({ present: [f], faults: [fault] })),
    list: priors.map(({ part }, f) => ({
      core: f,
      beside: -1,
      unlisted: false,
      weight: 1 / 3,
      dead: [part],
    })),
    remainder: 0,
  };
  const belief: Belief = {
    priors,
    suspects: [],
    healthyProbability: 0,
    explanations: [],
    remainder: 0,
    unexplained: [],
    notSolved: [],
  };
  const [pull] = separations(
    {
      board,
      bench: timeline.value.now,
      timeline: timeline.value,
      terms: DEFAULT_TERMS,
      equipment: [],
    },
    belief,
    hypotheses,
    (bench) => makePredictor(board, bench, DEFAULT_METER),
  );
  expect(pull?.action).toEqual({ do: "lift", place: "M1.u" });
  expect(pull?.minutes).toBe(0.5);
  expect(pull?.outcomes).toHaveLength(3);
});
