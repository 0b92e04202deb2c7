import { describe, expect, it } from "vitest";
import { fixtureBoard } from "./drives.fixture.ts";
import { FEED_HARM_ROWS, feedHarm, HARM_OF_RULE, knockOnHarm } from "./feed-harm.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";
import { priorTable } from "./prior-table.ts";

const board = fixtureBoard("module");
const { faults, knockOns } = priorTable(board, "unknown", "dead");

describe("what a feed still breaks", () => {
  it("is known for every knock-on rule, and for none that is not there", () => {
    expect(Object.keys(HARM_OF_RULE).sort()).toEqual(KNOCK_ON_RULES.map(({ id }) => id).sort());
  });

  it("a 100 W lamp passes 0.43 A: a twenty-third of what opens fuses, yet the bus is charged behind it", () => {
    const { by } = feedHarm(board, { feed: "lamp", watts: 100 });
    expect(by["line current"]).toBeCloseTo(100 / 230 / 10, 9);
    expect(by["bus energy"]).toBeGreaterThan(4 * by["line current"]);
    const larger = feedHarm(board, { feed: "lamp", watts: 200 });
    expect(larger.by["line current"]).toBeCloseTo(2 * by["line current"], 9);
  });

  it("on the bus at 40 V there is a sixtieth of the energy, and no supply starts to raise a rail", () => {
    const { by } = feedHarm(board, { feed: "bench", volts: 40, limitAmps: 0.1, at: ["PBUS", "NBUS"] });
    expect(by["bus energy"]).toBeCloseTo((40 / (230 * Math.SQRT2)) ** 2, 9);
    expect(by["rail volts"]).toBe(0);
    const rung = feedHarm(board, { feed: "bench", volts: 120, limitAmps: 0.2, at: ["PBUS", "NBUS"] });
    expect(rung.by["rail volts"]).toBe(FEED_HARM_ROWS.lampVolts.figure);
  });

  it("what is fed into a rail reaches what hangs on it and on the rails made from it, and nothing behind the bridge", () => {
    const fed = feedHarm(board, { feed: "bench", volts: 15, limitAmps: 0.3, at: ["V15", "NBUS"] });
    expect(fed.reaches?.has("U20")).toBe(true);
    for (const ref of ["BR1", "F1", "C1"]) expect(fed.reaches?.has(ref)).toBe(false);
    const five = feedHarm(board, { feed: "bench", volts: 5, limitAmps: 0.3, at: ["V5", "NBUS"] });
    expect(five.reaches?.has("Z10")).toBe(false);
    for (const knock of knockOns.filter(({ rule }) => rule === "leg-shoots-through"))
      expect(knockOnHarm(fed, knock, faults)).toBe(0);
  });

  it("never does more than the mains", () => {
    for (const feeding of [
      { feed: "lamp", watts: 5000 },
      { feed: "bench", volts: 400, limitAmps: 30, at: ["PBUS", "NBUS"] },
    ] as const)
      for (const share of Object.values(feedHarm(board, feeding).by)) expect(share).toBeLessThanOrEqual(1);
  });
});
