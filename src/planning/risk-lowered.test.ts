import { expect, it } from "vitest";
import type { Hypotheses } from "./hypotheses.ts";
import { riskLowered } from "./risk-lowered.ts";
import type { FindingStep } from "./steps.ts";

/** Three sets of faults: only the first would lose anything under power. */
const HYPOTHESES: Hypotheses = {
  priors: [],
  cores: [{ present: [], faults: [] }],
  list: [0.1, 0.1, 0.8].map((weight) => ({ core: 0, beside: -1, unlisted: false, weight, dead: [] })),
  remainder: 0,
};
const LOSSES = Float64Array.of(40, 0, 0);

function check(red: string, allMinutes: number, ...shares: readonly (readonly number[])[]): FindingStep {
  return {
    action: { do: "measure", mode: "diode", red, black: "NBUS" },
    row: [],
    minutes: allMinutes,
    allMinutes,
    outcomes: shares.map(() => ({ word: "one", low: null, high: null })),
    shares: shares.map((share) => Float64Array.from(share)),
    inHand: null,
    lossMoney: 0,
    lead: null,
  };
}
const words = (action: FindingStep["action"]) => (action.do === "measure" ? (action.red ?? null) : null);

it("the checks that would show what power breaks are named, those that see most a minute first", () => {
  const shows = check("SHOWS", 0.4, [1, 0, 0], [0, 1, 1]);
  const slow = check("SLOW", 4, [1, 0, 0], [0, 1, 1]);
  const half = check("HALF", 0.4, [0.5, 0, 0], [0.5, 1, 1]);
  const beside = check("BESIDE", 0.4, [0, 1, 0], [1, 0, 1]);
  const named = riskLowered(LOSSES, HYPOTHESES, [beside, slow, half, shows], words);
  expect(named.map(({ what, share }) => [what, share])).toEqual([
    ["SHOWS", 1],
    ["HALF", 0.5],
    ["SLOW", 1],
  ]);
});

it("where power would lose nothing no check is asked for", () => {
  expect(riskLowered(Float64Array.of(0, 0, 0), HYPOTHESES, [check("X", 0.4, [1, 1, 1])], words)).toEqual([]);
});
