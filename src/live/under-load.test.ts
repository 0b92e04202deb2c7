/** What a clipped meter shows while a board runs: the bus under load, where a board that is only weak gives itself away. */
import { describe, expect, it } from "vitest";
import { LiveBoard } from "./live-board.ts";
import { BARE, faultsNamed, shippedBoard } from "./on-power.fixture.ts";
import { OWN_LOAD } from "./running.ts";
import { loadOf } from "./under-load.ts";

function onLoad(id: string, names: string, load = OWN_LOAD) {
  const board = shippedBoard(id);
  const state = new LiveBoard(board, BARE, { kind: "mains" }, [], load).state(faultsNamed(board, names));
  const bus = state.volts("PBUS", "NBUS");
  if (bus === null) throw new Error("no bus is told of");
  return { bus, does: state.run?.does };
}

describe("a board told to run", () => {
  it("holds its bus at 350 to 390 V where it has a boost, and at the mains' peak where that never starts", () => {
    const good = onLoad("outdoor-unit-inverter", "");
    expect(good.does).toBe("runs");
    expect(good.bus.dc).toBeGreaterThan(350);
    expect(good.bus.dc).toBeLessThan(390);
    for (const boost of ["Q1.ce:open", "R4:open", "Q2.be:open"]) {
      const idle = onLoad("outdoor-unit-inverter", boost);
      expect(idle.does).toBe("weak");
      expect(idle.bus.dc).toBeLessThan(325);
      expect(good.bus.dc - idle.bus.dc).toBeGreaterThan(3 * Math.hypot(good.bus.dcSpread, idle.bus.dcSpread));
    }
  });

  it("sags behind an inrush part whose relay never pulled in, far beyond the doubt about its load", () => {
    for (const [id, relay] of [
      ["greenhouse-fan-drive", "K1.contact:open"],
      ["small-frequency-drive", "K1.coil:open"],
    ] as const) {
      const [good, left] = [onLoad(id, ""), onLoad(id, relay)];
      expect(good.does).toBe("runs");
      expect(left.does).toBe("weak");
      expect(left.bus.dc).toBeLessThan(0.9 * good.bus.dc);
      expect(good.bus.dc - left.bus.dc).toBeGreaterThan(2 * Math.hypot(good.bus.dcSpread, left.bus.dcSpread));
    }
    // Through three phases the same resistor costs 5 to 10 %.
    const share =
      onLoad("small-frequency-drive-3ph", "K1.coil:open").bus.dc /
      onLoad("small-frequency-drive-3ph", "").bus.dc;
    expect(share).toBeGreaterThan(0.9);
    expect(share).toBeLessThan(0.95);
  });

  it("ripples half as deep again and more where its bus capacitor has lost half of what it holds", () => {
    const [good, half] = [onLoad("washing-machine-drive", ""), onLoad("washing-machine-drive", "C5:drift")];
    expect(half.bus.ac).toBeGreaterThan(1.5 * good.bus.ac);
  });

  it("a hob's bus follows the mains under load, and that is no sign of weakness", () => {
    const hob = onLoad("induction-hob", "");
    expect(hob.does).toBe("runs");
    // The mean of a rectified sine is 2/pi of its peak.
    expect(hob.bus.dc).toBeGreaterThan((2 / Math.PI) * 325 * 0.97);
    expect(hob.bus.dc).toBeLessThan(260);
  });

  it("stands as at rest where it trips, or has nothing to drive", () => {
    expect(onLoad("outdoor-unit-inverter", "M1.up:short").does).toBe("trips");
    expect(onLoad("outdoor-unit-inverter", "M1.up:short").bus.dc).toBeGreaterThan(310);
  });

  it("a dummy's watts are known, a motor's are guessed: the bus is told the better", () => {
    const [own, dummy] = [
      onLoad("washing-machine-drive", ""),
      onLoad("washing-machine-drive", "", { watts: OWN_LOAD.watts, dummy: true }),
    ];
    expect(dummy.bus.dc).toBeCloseTo(own.bus.dc, 6);
    expect(dummy.bus.dcSpread).toBeLessThan(own.bus.dcSpread);
    expect(loadOf({ load: 300 })).toEqual({ watts: 300, dummy: true });
    expect(loadOf({})).toBeNull();
  });
});
