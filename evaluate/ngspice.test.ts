import { describe, expect, it } from "vitest";
import { boostDrive } from "../src/meter/boost-drive.fixture.ts";
import { compare, drawSamples, inWords, singleFaults } from "./agreement.ts";
import { hasNgspice } from "./ngspice.ts";

const board = boostDrive();
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
    const sets = singleFaults(board).filter((_, index) => index % EVERY === 0);
    const compared = await compare(board, drawSamples(board, sets, 1, 11));
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
      board,
      checks.map((check) => ({ check, faults: [] })),
    );
    expect(compared.filter((one) => one.miss > 1).map(inWords)).toEqual([]);
  });
});
