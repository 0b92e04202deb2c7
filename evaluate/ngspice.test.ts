import { describe, expect, it } from "vitest";
import { parseBoard } from "../src/board/parse-board.ts";
import { boostDrive } from "../src/meter/boost-drive.fixture.ts";
import { makePredictor } from "../src/meter/predictor.ts";
import { DEFAULT_METER } from "../src/meter/settings.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { BARE_BENCH, compare, inWords } from "./agreement.ts";
import { hasNgspice, runAlone } from "./ngspice.ts";
import { columnOf, faultPairs, faultSamples, healthySamples, singleFaults } from "./samples.ts";

const board = boostDrive();
const predictor = makePredictor(board, BARE_BENCH, DEFAULT_METER);
const present = await hasNgspice();
/** Every so many-th single fault is in the sample; the whole runs in `npm run accuracy`. */
const EVERY = 7;

describe("ngspice, running our own decks", () => {
  it("is on the PATH, or this machine says that the comparison did not run", (context) => {
    if (!present) context.skip("ngspice is not installed");
    expect(present).toBe(true);
  });

  it("agrees within 0.1 mV, 0.1 % of ohms and farads, on a sample of which at least half is not OL", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const sets = singleFaults(board)
      .filter((_, index) => index % EVERY === 0)
      .map((fault) => [fault]);
    const compared = await compare(predictor, [...faultSamples(board, sets, 1, 11)]);
    expect(compared.length).toBe(sets.length);
    expect(compared.filter((one) => one.miss > 1).map(inWords)).toEqual([]);
    expect(compared.filter((one) => !one.open).length).toBeGreaterThan(compared.length / 2);
  });

  it("agrees within 1 % while capacitors charge", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const checks = [
      { mode: "diode", red: "P", black: "N", seconds: 2 },
      { mode: "diode", red: "L", black: "N_IN", seconds: 2 },
      { mode: "ohms", red: "V5", black: "N", seconds: 0.3 },
    ] as const;
    const compared = await compare(
      predictor,
      checks.map((check) => ({ check, faults: [] })),
    );
    expect(compared.filter((one) => one.miss > 1).map(inWords)).toEqual([]);
  });

  it("agrees where nets hang on leaks alone and ngspice never meets its own tight tolerance", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const parsed = parseBoard(SHIPPED.find(({ id }) => id === "outdoor-unit-inverter")?.board);
    if (!parsed.ok) throw new Error(parsed.problem);
    const outdoor = makePredictor(parsed.value, BARE_BENCH, DEFAULT_METER);
    const check = { mode: "diode", red: "SW", black: "PFC_C" } as const;
    const compared = await compare(outdoor, [{ check, faults: [] }]);
    expect(compared.filter((one) => one.miss > 1).map(inWords)).toEqual([]);
  });

  it("says why there is no reading of a circuit that it cannot solve", async (context) => {
    if (!present) context.skip("ngspice is not installed");
    const twoSources =
      "two sources that contradict\nv1 a 0 1\nv2 a 0 2\nr1 a 0 1\n.control\nop\nprint reading\nquit\n.endc\n.end\n";
    const { reading, said } = await runAlone(twoSources);
    expect(reading).toBeNull();
    expect(said).toMatch(/singular/i);
  });
});

describe("the samples of a whole run", () => {
  it("take a healthy board's pairs of places both ways in every mode and while capacitors charge", () => {
    const samples = [...healthySamples(board, 20, 3)];
    const pairs = new Map<string, Set<string>>();
    for (const sample of samples) {
      const { red, black } = sample.check;
      const ways = pairs.get([red, black].sort().join(" ")) ?? new Set();
      pairs.set([red, black].sort().join(" "), ways.add(`${columnOf(sample)} ${red} ${black}`));
    }
    expect(pairs.size).toBe(20);
    for (const ways of pairs.values()) expect(ways.size).toBe(10);
  });

  it("leave out no single fault, and are the same again with the same seed", () => {
    const sets = singleFaults(board).map((fault) => [fault]);
    const once = [...faultSamples(board, sets, 1, 5)];
    expect(once.map(({ faults }) => faults)).toEqual(sets);
    expect([...faultSamples(board, sets, 1, 5)]).toEqual(once);
  });

  it("pair faults of two different sites", () => {
    for (const pair of faultPairs(board, 50, 7)) {
      const sites = pair.map((fault) => (fault.of === "part" ? `${fault.part}.${fault.junction}` : ""));
      expect(new Set(sites).size).toBe(2);
    }
  });
});
