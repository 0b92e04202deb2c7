/** What a series lamp does and what the bus then says: the trade's table, on the outdoor unit's board behind 100 W. */
import { describe, expect, it } from "vitest";
import { dc, OnPower } from "./on-power.fixture.ts";

const outdoor = new OnPower("outdoor-unit-inverter");
const washer = new OnPower("washing-machine-drive");
const LAMP = { kind: "lamp", watts: 100 } as const;
const seen = (names: string) => outdoor.with(names, LAMP).observed;
const bus = (names: string) => dc(outdoor.with(names, LAMP), "PBUS", "NBUS");

describe("behind a lamp of 100 W", () => {
  it("bright and stays so, bus under 20 V: a hard short before the PTC, or with none in the way", () => {
    expect(seen("RV1:short")).toEqual(["lamp-bright"]);
    expect(bus("RV1:short")).toBeLessThan(20);
    const short = washer.with("C5:short", LAMP);
    expect(short.observed).toEqual(["lamp-bright"]);
    expect(dc(short, "PBUS", "NBUS")).toBeLessThan(20);
    expect(short.feedAmps?.amps).toBeCloseTo(0.43, 1);
  });

  it("dark after its flash, bus at 310 to 325 V: normal", () => {
    expect(seen("")).toEqual(["lamp-dark"]);
    expect(bus("")).toBeGreaterThan(310);
    expect(bus("")).toBeLessThan(325);
  });

  it("dark at once, no bus: an open path", () => {
    for (const open of ["F1:open", "RT1:open", "LF1.w34:open"]) {
      expect(seen(open)).toEqual(["lamp-dark"]);
      expect(bus(open)).toBeLessThan(5);
    }
  });

  it("a steady dim glow, bus at 250 to 300 V: a leak across it", () => {
    for (const leak of ["C8:leaky@5000", "PBUS~NBUS:leaky@6000"]) {
      expect(seen(leak)).toEqual(["lamp-dim"]);
      expect(bus(leak)).toBeGreaterThan(245);
      expect(bus(leak)).toBeLessThan(305);
    }
  });

  it("slow pulsing: the small supply hiccups, or the lamp is too small for what it gives", () => {
    expect(seen("C37:short")).toEqual(["lamp-pulsing"]);
    expect(outdoor.with("M1.drive:leaky@12", { kind: "lamp", watts: 40 }).observed).toEqual(["lamp-pulsing"]);
    expect(outdoor.with("M1.drive:leaky@12", { kind: "lamp", watts: 150 }).observed).not.toEqual([
      "lamp-pulsing",
    ]);
  });

  it("one bridge junction shorted lights it every other half cycle, yet the bus stands", () => {
    expect(seen("BR1.ac1plus:short")).toEqual(["lamp-bright"]);
    expect(bus("BR1.ac1plus:short")).toBeGreaterThan(200);
  });
});

describe("a low voltage fed into a shorted rail", () => {
  const inject = { kind: "bench", volts: 0.4, limitAmps: 1, at: ["V5", "NBUS"] } as const;

  it("takes the supply to its limit and warms the short, and nothing else across the rail", () => {
    const state = outdoor.with("C50:short@0.3", inject);
    expect(state.observed).toEqual(["limiting"]);
    expect(dc(state, "V5", "NBUS")).toBeCloseTo(0.3, 1);
    const rise = (part: string) =>
      (state.temperature(part, { ambient: 20, by: "camera" })?.celsius ?? 20) - 20;
    expect(rise("C50")).toBeGreaterThan(10);
    for (const part of ["U6", "C40", "U4", "U5"]) expect(rise(part)).toBeLessThan(3);
  });

  it("draws next to nothing from a good one", () => {
    const state = outdoor.with("", inject);
    expect(state.observed).toEqual(["quiet"]);
    expect(state.feedAmps?.amps).toBeLessThan(0.02);
  });
});
