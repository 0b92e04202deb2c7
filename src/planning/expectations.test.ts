import { expect, test } from "vitest";
import { plain } from "../messages/said.ts";
import { amount, expectations } from "./expectations.ts";
import type { Hypotheses } from "./hypotheses.ts";
import { prior } from "./one-fault.fixture.ts";
import { smallDriveBoard } from "./scene.fixture.ts";
import type { FindingStep } from "./steps.ts";
import { testedFaults } from "./tested-faults.ts";

const BOARD = smallDriveBoard();

test("ohms are said to the tenth that a hand meter shows, larger quantities to three digits", () => {
  expect(amount(0.281, "ohm")).toBe("0.3 ohm");
  expect(amount(0, "ohm")).toBe("0 ohm");
  expect(amount(51.23, "ohm")).toBe("51.2 ohm");
  expect(amount(10_240, "ohm")).toBe("10.2 kohm");
  expect(amount(0.44, "V")).toBe("0.44 V");
});

/** Alone on the board: an upper switch shorted, the fuse open, or a bus capacitor shorted; or nothing of these. */
const HYPOTHESES: Hypotheses = {
  priors: [prior("Q1", "ce", "short"), prior("F1", null, "open"), prior("C3", null, "short")],
  cores: [{ present: [], faults: [] }],
  list: [-1, 0, 1, 2].map((beside) => ({
    core: 0,
    beside,
    unlisted: false,
    weight: 0.25,
    dead: [],
  })),
  remainder: 0,
};

/** The bus to phase U in diode mode: 0.00 through the switch, one drop through the capacitor, else OL. */
const BUS_TO_PHASE: FindingStep = {
  action: { do: "measure", mode: "diode", red: "PBUS", black: "U" },
  row: [],
  minutes: 0.4,
  allMinutes: 0.4,
  outcomes: [
    { word: "OL", low: null, high: null },
    { word: null, low: 0, high: 0.02 },
    { word: null, low: 0.35, high: 0.43 },
  ],
  shares: [Float64Array.of(1, 0, 1, 0), Float64Array.of(0, 1, 0, 0), Float64Array.of(0, 0, 0, 1)],
  inHand: null,
  lossMoney: 0,
  lead: null,
};

const GOOD = {
  solved: true,
  raw: 3,
  shown: "OL",
  centre: 3,
  spread: 0,
  common: 0,
  alike: 0,
  restsOn: [],
} as const;

test("a check tests the faults that change its reading, not those that become unlikely because another explains the board", () => {
  expect([...testedFaults(BUS_TO_PHASE, HYPOTHESES)].sort()).toEqual([0, 2]);
});

test("the bus to a phase says nothing of the fuse, whatever it reads", () => {
  const means = expectations(BUS_TO_PHASE, HYPOTHESES, BOARD, GOOD).map((one) => one.means);
  expect(plain(means.join(" "))).not.toContain("F1");
});

test("what a good board shows is marked, and clears what would have read otherwise", () => {
  const [most] = expectations(BUS_TO_PHASE, HYPOTHESES, BOARD, GOOD);
  expect(plain(most.if)).toBe("OL");
  expect(plain(most.means)).toBe("as on a good board; clears C3 shorted and Q1 collector to emitter shorted");
});

test("a fault that shows does not clear another that it may hide", () => {
  const shorted = expectations(BUS_TO_PHASE, HYPOTHESES, BOARD, GOOD).find(({ low }) => low === 0);
  expect(plain(shorted?.means ?? "")).toBe("Q1 collector to emitter shorted (100 %), rather than C3 shorted");
});

test("at power-up every sight says what it means before it names a fault", () => {
  const power: FindingStep = {
    ...BUS_TO_PHASE,
    action: { do: "power", feed: "lamp", watts: 100 },
    outcomes: [
      { word: "lamp-bright", low: null, high: null },
      { word: "runs", low: null, high: null },
    ],
    shares: [Float64Array.of(0, 1, 0, 1), Float64Array.of(1, 0, 1, 0)],
  };
  const [bright, runs] = expectations(power, HYPOTHESES, BOARD, null);
  expect(plain(bright.means)).toContain("hard short, switch off");
  expect(plain(runs.means)).toContain("on to the mains");
});
