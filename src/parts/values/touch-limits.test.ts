/** What charge may do, row by row of published limits; all were seen at second hand unless the name says otherwise. */
import { describe, expect, it } from "vitest";
import { bledVolts, bleedSeconds, storedJoules } from "../../board/stored-charge.ts";
import { problemOf, valued } from "../valued.fixture.ts";
import {
  dischargesFastEnough,
  energyRemarks,
  isFreeCharge,
  isNoLivePart,
  pulseClass,
  pulseCurrentClass,
  steadyClass,
  steadyCurrentClass,
  touchClass,
} from "./touch-limits.ts";

describe("a charged capacitor", () => {
  it("P15 (seen-2nd), IEC 60335-1 cl. 8.1.4: 0.1 uF up to 450 V, 45 uC up to 15 kV, 350 mJ above are no live part", () => {
    expect([isNoLivePart(0.1e-6, 325), isNoLivePart(0.11e-6, 325)]).toEqual([true, false]);
    expect([isNoLivePart(45e-6 / 1000, 1000), isNoLivePart(46e-6 / 1000, 1000)]).toEqual([true, false]);
    const atTwenty = (joules: number) => (2 * joules) / 20_000 ** 2;
    expect([isNoLivePart(atTwenty(0.34), 20_000), isNoLivePart(atTwenty(0.36), 20_000)]).toEqual([
      true,
      false,
    ]);
  });

  it("P16 (seen-2nd), same clause: 42.4 V is no live part whatever the capacitance", () => {
    expect([isNoLivePart(1, 42.4), isNoLivePart(1, 42.5)]).toEqual([true, false]);
  });

  it("P17 (seen-2nd), IEC 60950-1 cl. 2.1.1.7: above 0.1 uF a time constant of 1 s, 10 s behind an industrial plug", () => {
    expect(dischargesFastEnough(1e-6, 1e6, "A")).toBe(true);
    expect(dischargesFastEnough(1e-6, 1.1e6, "A")).toBe(false);
    expect(dischargesFastEnough(1e-6, 9e6, "B")).toBe(true);
    expect(dischargesFastEnough(0.1e-6, 1e9, "A")).toBe(true);
  });

  it("P18 (seen-2nd), IEC 60950-1: over 20 J at 2 V and more is a hazardous energy; 470 uF reach it at 291.7 V (P12)", () => {
    const says = (volts: number) => energyRemarks(470e-6, volts).map(({ words }) => words);
    expect(says(291)).toEqual([]);
    expect(says(292)).toEqual([expect.stringContaining("20 J")]);
    expect(energyRemarks(20, 1.9)).toEqual([]);
  });

  it("P19 (seen-2nd), IEC 60204-1 style: 60 V within 5 s, 1 s at a plug, by V exp(-t / RC)", () => {
    // what just makes it, worked backwards
    const ohms = 5 / (1e-6 * Math.log(325 / 60));
    expect(bledVolts(325, ohms, 1e-6, 5)).toBeCloseTo(60, 9);
    expect(bledVolts(325, ohms, 1e-6, 1)).toBeGreaterThan(60);
  });

  it("P20 (seen-2nd), IEC 61010-1 in emc-pstc msg65752: 4.4 uF at 80 V hold 352 uC and 14.08 mJ, and fail the 45 uC", () => {
    expect(4.4e-6 * 80).toBeCloseTo(352e-6, 12);
    expect(storedJoules(4.4e-6, 80)).toBeCloseTo(14.08e-3, 9);
    expect([isFreeCharge(4.4e-6, 80), isFreeCharge(4.4e-6, 10)]).toEqual([false, true]);
  });

  it("P21 (seen-2nd), IEC 62368-1 table 4: 60 and 120 V direct, 42.4 and 70.7 V peak", () => {
    expect([60, 61, 120, 121].map((volts) => steadyClass("direct", volts))).toEqual([
      "ES1",
      "ES2",
      "ES2",
      "ES3",
    ]);
    expect([42.4, 43, 70.7, 71].map((volts) => steadyClass("alternatingPeak", volts))).toEqual([
      "ES1",
      "ES2",
      "ES2",
      "ES3",
    ]);
  });

  it.each([
    [300, 60, 120],
    [1000, 60, 120],
    [170, 75, 150],
    [91, 100, 200],
    [61, 125, 250],
    [41, 150, 300],
    [28, 200, 400],
    [18, 250, 500],
    [12, 350, 700],
    [8, 500, 1000],
    [4, 1000, 2000],
    [1.6, 2500, 5000],
    [0.8, 5000, 10_000],
    [0.4, 10_000, 20_000],
    [0.2, 20_000, 40_000],
    [0.1, 25_000, 50_000],
  ])(
    "P22 (seen-2nd), IEC 62368-1 table 5: %d nF is class 1 up to %d V and class 2 up to %d V",
    (nano, first, second) => {
      const at = (volts: number) => valued(touchClass(nano * 1e-9, volts));
      expect([at(first * 0.999), at(first * 1.01), at(second * 0.999), at(second * 1.01)]).toEqual([
        "ES1",
        "ES2",
        "ES2",
        "ES3",
      ]);
    },
  );

  it("P22 (seen-2nd): between two rows in proportion, so that 10 nF stand at 425 and 850 V", () => {
    const at = (volts: number) => valued(touchClass(10e-9, volts));
    expect([at(424), at(426), at(849), at(851)]).toEqual(["ES1", "ES2", "ES2", "ES3"]);
    expect(problemOf(touchClass(-1, 10))).toContain("capacitance: -1 F is outside");
  });

  it("P23 (seen-2nd), IEC 62368-1 table 6: one pulse of 10 ms may reach 196 V, of 200 ms and more 120 V", () => {
    const most = (seconds: number, volts: number) => valued(pulseClass(seconds, volts));
    for (const [ms, volts] of [
      [10, 196],
      [20, 178],
      [50, 150],
      [80, 135],
      [100, 129],
      [200, 120],
      [3000, 120],
    ] as const) {
      expect(most(ms / 1000, volts), `${ms} ms`).toBe("ES2");
      expect(most(ms / 1000, volts + 1), `${ms} ms`).toBe("ES3");
    }
    expect(most(1, 60)).toBe("ES1");
  });

  it("P21 (seen-2nd; 5 mA from memory), IEC 62368-1 table 4: 2 and 25 mA direct, 0.5 and 5 mA alternating", () => {
    const of = (kind: "direct" | "alternating", ...amps: number[]) =>
      amps.map((one) => steadyCurrentClass(kind, one / 1000));
    expect(of("direct", 2, 2.1, 25, 26)).toEqual(["ES1", "ES2", "ES2", "ES3"]);
    expect(of("alternating", 0.5, 0.6, 5, 5.1)).toEqual(["ES1", "ES2", "ES2", "ES3"]);
  });

  it("P23 (seen-2nd), IEC 62368-1 table 7: one pulse of 10 ms may reach 200 mA, of 2 s and more 25 mA", () => {
    const most = (seconds: number, milliamps: number) => valued(pulseCurrentClass(seconds, milliamps / 1000));
    for (const [ms, milliamps] of [
      [10, 200],
      [20, 153],
      [50, 107],
      [100, 81],
      [200, 62],
      [500, 43],
      [1000, 33],
      [2000, 25],
    ] as const) {
      expect(most(ms / 1000, milliamps), `${ms} ms`).toBe("ES2");
      expect(most(ms / 1000, milliamps + 1), `${ms} ms`).toBe("ES3");
    }
    expect(most(1, 2)).toBe("ES1");
    expect(problemOf(pulseCurrentClass(-1, 0.1))).toContain("pulse: -1 s is outside");
  });

  it("P24 (seen, poor source): 0.25 J above 400 V makes hands jerk", () => {
    const farads = (joules: number) => (2 * joules) / 450 ** 2;
    expect(energyRemarks(farads(0.24), 450)).toEqual([]);
    expect(energyRemarks(farads(0.26), 450)).toEqual([expect.objectContaining({ mark: "seen" })]);
    expect(energyRemarks(1e-5, 399)).toEqual([]);
  });

  it("P25, emc-pstc msg22952: a film capacitor of 0.1 uF at 310 V that keeps 90 % for a minute bleeds through no less than 5.7 Gohm", () => {
    const ohms = 60 / (0.1e-6 * Math.log(1 / 0.9));
    expect(ohms).toBeCloseTo(5.695e9, -7);
    // alone it is a live part for half an hour and more: nothing about it is ever assumed empty
    expect(bleedSeconds(310, 42.4, ohms, 0.1e-6)).toBeGreaterThan(1100);
  });
});
