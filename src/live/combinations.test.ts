/** What bus, rails and lights say together: the trade's table of thirteen combinations on the outdoor unit's board, rest, running. */
import { describe, expect, it } from "vitest";
import { dc, OnPower, railShares } from "./on-power.fixture.ts";

const outdoor = new OnPower("outdoor-unit-inverter");
const good = outdoor.with("");
const share = (names: string, rail: string): number =>
  railShares(outdoor.with(names), outdoor.board).get(rail) ?? Number.NaN;
const bus = (names: string): number => dc(outdoor.with(names), "PBUS", "NBUS");
const rise = (names: string, part: string): number =>
  (outdoor.with(names).temperature(part, { ambient: 20, afterPower: 120 })?.celsius ?? 20) - 20;

describe("the thirteen combinations of bus and rails", () => {
  it("1: no bus, no rails, PTC hot: a short behind the PTC", () => {
    for (const short of ["C8:short", "M1.up:short M1.un:short", "Q1.ce:short"]) {
      expect(bus(short)).toBeLessThan(10);
      expect(Math.max(...railShares(outdoor.with(short), outdoor.board).values())).toBe(0);
      expect(rise(short, "RT1")).toBeGreaterThan(60);
      expect(outdoor.with(short).opened).toEqual([]);
    }
  });

  it("2: no bus, no rails, PTC cold: an open path", () => {
    for (const open of ["F1:open", "RT1:open", "LF1.w12:open", "BR1.ac1plus:open BR1.ac2plus:open"]) {
      expect(bus(open)).toBeLessThan(2);
      expect(rise(open, "RT1")).toBeLessThan(2);
      expect(outdoor.with(open).observed).toEqual(["quiet"]);
    }
  });

  it("3: bus, no rails, silent: the small supply does not start", () => {
    for (const dead of ["R28:open", "U1.ds:open", "T1.pri:open", "C32:short", "U1.fb:short"]) {
      expect(bus(dead)).toBeGreaterThan(310);
      expect(outdoor.with(dead).supply.mode).toBe("nothing");
      expect(share(dead, "V12")).toBe(0);
      expect(rise(dead, "U1")).toBeLessThan(2);
    }
    // Before the fuse resistor stands the bus, behind it nothing.
    expect(dc(outdoor.with("R28:open"), "SUP_P", "NBUS")).toBeLessThan(2);
    expect(dc(outdoor.with("T1.pri:open"), "SUP_P", "NBUS")).toBeGreaterThan(310);
  });

  it("4: bus, rails twitching, its own feed sawing between 8 and 15 V: hiccup", () => {
    for (const hiccup of ["C37:short", "D6:short", "T1.aux:open", "C32:open", "R30:open", "D5:open"]) {
      const state = outdoor.with(hiccup);
      expect(state.supply.mode).toBe("hiccup");
      const own = state.volts("VCC_SW", "NBUS");
      expect(own?.dc).toBeGreaterThan(8);
      expect(own?.dc).toBeLessThan(15);
      expect(own?.ac).toBeGreaterThan(1);
      expect(share(hiccup, "V12")).toBeLessThan(0.6);
      expect(state.alive.size).toBe(0);
    }
  });

  it("5: bus, all rails low by one ratio: the reference's divider", () => {
    const low = railShares(outdoor.with("R33:drift"), outdoor.board);
    expect(low.get("V12")).toBeCloseTo((2.5 * (1 + 38 / 20)) / 12, 2);
    expect(Math.abs((low.get("V15") ?? 0) / (low.get("V12") ?? 1) - 1)).toBeLessThan(0.05);
  });

  it("6: one rail low and the part across it hot: that rail is loaded", () => {
    const shorted = "C44:short@2";
    expect(share(shorted, "V33")).toBeLessThan(0.5);
    expect(share(shorted, "V12")).toBeCloseTo(1, 2);
    expect(share(shorted, "V15")).toBeGreaterThan(0.95);
    // Among what lies across the rail the short is the hottest; the regulators that feed it are warm as well.
    const across = ["C43", "C45", "C46", "C48", "U5"];
    for (const part of across) expect(rise(shorted, "C44") - rise(shorted, part)).toBeGreaterThan(20);
    expect(rise(shorted, "U3")).toBeGreaterThan(30);
  });

  it("7: 15 V low, the others fine: the module's control side", () => {
    const names = "M1.drive:leaky@12";
    expect(share(names, "V15")).toBeLessThan(0.95);
    expect(share(names, "V12")).toBeCloseTo(1, 2);
    expect(share(names, "V5")).toBeCloseTo(1, 2);
    expect(outdoor.with(names).alive.size).toBe(1);
  });

  it("8: rails high: the feedback is lost", () => {
    for (const lost of ["OC1.led:open", "OC1.out:open", "U2:open", "R32:open", "R31:open"]) {
      expect(outdoor.with(lost).supply.mode).toBe("runaway");
      expect(share(lost, "V12")).toBeGreaterThan(1.3);
      expect(share(lost, "V15")).toBeGreaterThan(1.3);
      // Behind its regulator the 5 V stands as ever.
      expect(share(lost, "V5")).toBeCloseTo(1, 2);
    }
  });

  it("9: bus and rails fine, no light: the controller does not run", () => {
    for (const held of ["C49:short", "R34:open", "U5.supply:open"]) {
      const state = outdoor.with(held);
      for (const [, one] of railShares(state, outdoor.board)) expect(one).toBeCloseTo(1, 1);
      expect(state.alive.size).toBe(0);
      expect([...state.lights.values()]).toEqual([false]);
      expect(state.relaysIn.size).toBe(0);
    }
    expect([...good.lights.values()]).toEqual([true]);
  });

  it("10: all fine at rest, trips at once when told to run: a leg or a shunt", () => {
    for (const leg of ["M1.up:short", "M1.wn:short", "R16:open"]) {
      expect(bus(leg)).toBeGreaterThan(310);
      expect(share(leg, "V15")).toBeCloseTo(1, 1);
      expect(outdoor.running(leg).does).toBe("trips");
    }
    expect(outdoor.running("").does).toBe("runs");
  });

  it("11: the bus stays at the mains' peak when it runs, never 380 V: the boost does not work", () => {
    expect(outdoor.running("").busVolts).toBeGreaterThan(370);
    for (const boost of ["Q1.ce:open", "R4:open", "L1:open", "Q2.be:open"]) {
      const run = outdoor.running(boost);
      expect(run).toMatchObject({ does: "weak", boost: "idle" });
      expect(run.busVolts).toBeGreaterThan(290);
      expect(run.busVolts).toBeLessThan(330);
    }
  });

  it("12: all fine, trips after minutes: a sensor that reads hot is told by its own volts", () => {
    const cold = dc(good, "T_OUT", "NBUS");
    expect(cold).toBeCloseTo(3.3 / 2, 1);
    const names = "TH1:drift@3300";
    expect(dc(outdoor.with(names), "T_OUT", "NBUS")).toBeCloseTo((3.3 * 3.3) / 13.3, 1);
    expect(outdoor.with(names).supply.mode).toBe("runs");
  });

  it("13: all fine, trips with the motor only", () => {
    expect(outdoor.running("MOT1:short").does).toBe("trips");
    const unplugged = { lifted: new Set<string>(), off: new Set(["MOT1"]), clips: [], powered: true };
    expect(outdoor.running("MOT1:short", { kind: "mains" }, unplugged).does).toBe("nothing");
    expect(bus("MOT1:short")).toBeGreaterThan(310);
  });
});
