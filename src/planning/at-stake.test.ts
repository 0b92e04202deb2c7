import { expect, test } from "vitest";
import { plain } from "../messages/said.ts";
import { DEFAULT_TERMS } from "../money/terms.ts";
import type { FaultPrior, PriorTable } from "../priors/fault-prior.ts";
import { atStake, mustShowStakes } from "./at-stake.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { repairModel } from "./repair-model.ts";
import { smallDriveBoard } from "./scene.fixture.ts";
import type { FindingStep } from "./steps.ts";

const BOARD = smallDriveBoard();
const prior = (part: string, junction: string | null): FaultPrior => ({
  fault: { of: "part", part, junction, mode: "short", value: null },
  reportAs: `${part}:short`,
  part,
  site: part,
  rate: 0.01,
  spreadLn: 0,
});
/** Q1 is surely shorted; beside it the controller (5 %) or its gate clamp (10 %) may be too. */
const HYPOTHESES: Hypotheses = {
  priors: [prior("Q1", "ce"), prior("U3", "supply"), prior("DZ1", null)],
  cores: [{ present: [0], faults: [] }],
  list: [
    { core: 0, beside: -1, unlisted: false, weight: 0.85, dead: ["Q1"] },
    { core: 0, beside: 1, unlisted: false, weight: 0.05, dead: ["Q1", "U3"] },
    { core: 0, beside: 2, unlisted: false, weight: 0.1, dead: ["DZ1", "Q1"] },
  ],
  remainder: 0,
};
const PRIORS: PriorTable = {
  faults: HYPOTHESES.priors,
  knockOns: [{ parent: 2, child: 0, rate: 0.5, arrivalRate: 0.5, rule: "clamp-takes-switch" }],
  breaksAtPower: [0, 0, 0],
  fittedBad: { new: 0.01, used: 0.1, fittedWrong: 0.02 },
};
const BENCH = { lifted: new Set<string>(), off: new Set<string>(), clips: [], powered: false };
const MODEL = repairModel(HYPOTHESES, BOARD, BENCH, DEFAULT_TERMS, PRIORS, 4);
const RAIL: FindingStep = {
  action: { do: "measure", mode: "ohms", red: "V5", black: "NBUS" },
  row: [],
  minutes: 0.4,
  allMinutes: 0.4,
  outcomes: [
    { word: null, low: 0, high: 1 },
    { word: "OL", low: null, high: null },
  ],
  shares: [Float64Array.of(0, 1, 0), Float64Array.of(1, 0, 1)],
  inHand: null,
  lossMoney: 0,
  lead: null,
};

test("the stakes name what nobody sells and what would take the new part, with the minutes that rule it out", () => {
  const { money, risks, priceNote } = atStake("Q1", 16, HYPOTHESES, PRIORS, MODEL, [RAIL], BOARD);
  expect(money).toBe(16);
  expect(risks.map(({ probability, minutesToRuleOut }) => [probability, minutesToRuleOut])).toEqual([
    [expect.closeTo(0.1, 12), null],
    [expect.closeTo(0.05, 12), 0.4],
  ]);
  expect(plain(risks[0]?.what ?? "")).toContain("DZ1");
  expect(plain(risks[1]?.what ?? "")).toContain("U3");
  expect(plain(priceNote ?? "")).toContain("usual 140 EUR");
});

test("a killer that is changed in the same go takes nothing new with it", () => {
  const { risks } = atStake("Q1", 16, HYPOTHESES, PRIORS, MODEL, [RAIL], BOARD, ["Q1", "DZ1"]);
  expect(plain(risks.map(({ what }) => what).join(" "))).not.toContain("DZ1");
});

test("a tenth of the price shows the stakes, less does not", () => {
  expect(mustShowStakes("Q1", 14, BOARD, MODEL)).toBe(true);
  expect(mustShowStakes("Q1", 13.9, BOARD, MODEL)).toBe(false);
});

test("no repair is priced for the controller, and what power would break is charged to the clamp's explanation", () => {
  const group = (key: string) => MODEL.groups.find((each) => each.key === key);
  expect(group("Q1+U3")?.possible).toBe(false);
  expect(group("Q1+U3")?.knownValue).toBe(0);
  // Q1 again: its price and its ten minutes at 30 an hour, times the chance of 1 - e^-0.4: one switch-on has 0.8 of the strength
  const q1 = MODEL.cures.find(({ name }) => name === "Q1");
  expect(group("DZ1+Q1")?.breakMoney).toBeCloseTo((1 - Math.exp(-0.4)) * ((q1?.money ?? 0) + 5), 9);
  expect(q1?.minutes).toBe(10);
});
