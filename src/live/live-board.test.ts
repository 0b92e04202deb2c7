/** One live board asked many times: what it remembers must not leak from one set of faults into another. */
import { describe, expect, it } from "vitest";
import type { Fault } from "../board/fault.ts";
import { faultSites } from "../board/fault-sites.ts";
import { LiveBoard } from "./live-board.ts";
import type { LiveState } from "./live-state.ts";
import { BARE, shippedBoard } from "./on-power.fixture.ts";

const board = shippedBoard("small-frequency-drive-3ph");
const MAINS = { kind: "mains" } as const;

/** Every single fault of the board. */
const ALL: readonly Fault[] = [...board.parts.values()].flatMap((part) =>
  faultSites(part).flatMap(({ junction, modes }) =>
    modes.map((mode) => ({ of: "part" as const, part: part.ref, junction, mode, value: null })),
  ),
);

/** Numbers in a fixed order of no pattern, 0 to 1 (golden ratio steps). */
const step = (k: number): number => (k * 0.618033988749895) % 1;

function told(state: LiveState): object {
  return {
    observed: state.observed,
    opened: state.opened,
    supply: state.supply,
    rails: state.rails.map(({ name, volts, rippleVolts }) => [name, volts, rippleVolts]),
    bus: state.volts("PBUS", "NBUS"),
    middle: state.volts("BUS_M", "NBUS"),
    alive: [...state.alive],
    relays: [...state.relaysIn],
    warm: state.temperature("U2", { ambient: 20 }),
  };
}

describe("a live board", () => {
  it("answers a set of faults alike, whatever it was asked before", () => {
    const used = new LiveBoard(board, BARE, MAINS);
    for (let k = 1; k <= 60; k++) used.state([ALL[Math.floor(step(k) * ALL.length)]]);
    for (let k = 1; k <= 25; k++) {
      const pair = [
        ALL[Math.floor(step(7 * k) * ALL.length)],
        ALL[Math.floor(step(11 * k + 3) * ALL.length)],
      ];
      const [one, other] = pair;
      if (one.of === "part" && other.of === "part" && one.part === other.part) continue;
      expect(told(used.state(pair))).toEqual(told(new LiveBoard(board, BARE, MAINS).state(pair)));
    }
  });

  it("answers every single fault with numbers: no rail below nothing, no endless volts", () => {
    const live = new LiveBoard(board, BARE, MAINS);
    for (const fault of ALL.filter((_, i) => i % 3 === 0)) {
      const state = live.state([fault]);
      const bus = state.volts("PBUS", "NBUS");
      expect(Number.isFinite(bus?.dc) && Number.isFinite(bus?.ac) && Number.isFinite(bus?.dcSpread)).toBe(
        true,
      );
      for (const rail of state.rails) expect(rail.volts >= 0 && rail.volts < 100).toBe(true);
      expect(state.observed.length).toBeGreaterThan(0);
    }
  });

  it("shows nothing of a part that is off, and what is left without it", () => {
    const off = { ...BARE, off: new Set(["BR1"]) };
    const state = new LiveBoard(board, off, MAINS).state([]);
    expect(state.volts("PBUS", "NBUS")?.dc).toBeLessThan(5);
    expect(state.volts("L1_IN", "L2_IN")?.ac).toBeCloseTo(400, -1);
    expect(state.volts("BR1.plus", "NBUS")).toBeNull();
    const regulator = [...board.parts.values()].find((part) => part.kind === "regulator")?.ref ?? "";
    const without = new LiveBoard(board, { ...BARE, lifted: new Set([`${regulator}.in`]) }, MAINS).state([]);
    expect(without.volts("V5", "NBUS")?.dc).toBe(0);
    expect(without.alive.size).toBe(0);
  });

  it("keeps isolated terminals to their own 0 V", () => {
    const state = new LiveBoard(board, BARE, MAINS).state([]);
    expect(state.volts("V24", "CCOM")?.dc).toBeCloseTo(24, 0);
    expect(state.volts("V10", "CCOM")?.dc).toBeCloseTo(10, 1);
    expect(state.volts("V24", "NBUS")).toBeNull();
  });
});
