import { expect, test } from "vitest";
import { foldLog } from "../bench/fold.ts";
import { plain } from "../messages/said.ts";
import { handModel } from "./hand-model.fixture.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { prior } from "./one-fault.fixture.ts";
import { smallDriveBoard } from "./scene.fixture.ts";
import type { FindingStep } from "./steps.ts";
import { type WhyInput, whyFinding, whyReplace, whyStop } from "./why.ts";

const BOARD = smallDriveBoard();

const HYPOTHESES: Hypotheses = {
  priors: [prior("Q1", "ce", "short"), prior("F1", null, "open"), prior("Q2", "ce", "short")],
  cores: [{ present: [], faults: [] }],
  list: [-1, 0, 1, 2].map((beside) => ({ core: 0, beside, unlisted: false, weight: 0.25, dead: [] })),
  remainder: 0,
};

function input(): WhyInput {
  const folded = foldLog(BOARD, [], []);
  if (!folded.ok) throw new Error(folded.problem);
  const rows = HYPOTHESES.list.map(() => ({ p: 0.25, cost: 30 }));
  return { board: BOARD, timeline: folded.value, hypotheses: HYPOTHESES, model: handModel(rows, 140) };
}

const LOOK: FindingStep = {
  action: { do: "measure", mode: "diode", red: "PBUS", black: "U" },
  row: [],
  minutes: 0.4,
  allMinutes: 0.4,
  outcomes: [
    { word: "OL", low: null, high: null },
    { word: null, low: 0, high: 0.02 },
  ],
  shares: [Float64Array.of(1, 0, 1, 0), Float64Array.of(0, 1, 0, 1)],
  inHand: null,
  lossMoney: 0,
  lead: null,
};

test("a check says which faults it looks for, parts that fail alike together", () => {
  expect(plain(whyFinding(LOOK, input()))).toBe(
    "Shows which of these it is, if any: Q1 or Q2 collector to emitter shorted.",
  );
});

test("a row says which probe stays where it is", () => {
  const next = { do: "measure", mode: "diode", red: "PBUS", black: "V" } as const;
  expect(whyFinding({ ...LOOK, row: [next] }, input())).toContain("The red probe stays where it is");
  expect(whyFinding({ ...LOOK, row: [{ ...next, red: "W" }] }, input())).toContain(
    "The meter is set already",
  );
});

test("a look promises no more than a look can tell", () => {
  const words = plain(whyFinding({ ...LOOK, action: { do: "look", part: "Q1" } }, input()));
  expect(words).toContain("Damage on Q1 would speak for");
  expect(words).toContain("a clean body clears nothing for certain");
});

test("what is fitted with a fuse comes before it, and says so", () => {
  const chance = new Map([
    ["Q1", 0.99],
    ["F1", 0.98],
  ]);
  const words = plain(whyReplace(["Q1", "F1"], chance, 0.6, input()));
  expect(words).toContain("Q1 (99 %, likeliest collector to emitter shorted)");
  expect(words).toContain("Due with it before the next power-up: F1 (98 %, likeliest open)");
  expect(words).toContain("F1 last: fitted before what blew it");
  expect(plain(whyReplace(["F1"], chance, 0.6, input()))).not.toContain("last:");
});

test("a stop says what the likeliest repair would have taken", () => {
  expect(plain(whyStop(input(), 0))).toContain("30 EUR of parts");
});

test("a stop on a board that is likelier whole than not sends to what tells it to run, and names no part", () => {
  const given = input();
  const groups = given.model.groups.map((group, g) => (g === 0 ? { ...group, cures: [] } : group));
  const words = plain(
    whyStop({ ...given, model: { ...given.model, groups, weights: Float64Array.of(0.7, 0.1, 0.1, 0.1) } }, 0),
  );
  expect(words).toContain("more likely whole (70 %)");
  expect(words).toContain("what tells it to run");
  expect(words).not.toContain("EUR of parts");
});
