/** Capacitors, preferred values and markings against published figures, each row named with its source. */
import { describe, expect, it } from "vitest";
import { bleedSeconds, storedJoules } from "../../board/stored-charge.ts";
import { decadeOf, nearestPreferred } from "../../units/preferred-values.ts";
import { problemOf, valued } from "../valued.fixture.ts";
import {
  esrOhms,
  grossLeakage,
  LOSS_TABLES,
  leakageAboveHundredVolts,
  leakageAfterAMinute,
  leakageToHundredVolts,
  lifeHours,
  lifeOverProfile,
  strictLeakage,
  surgeVolts,
  tanDeltaLimit,
  wornOut,
} from "./capacitor-limits.ts";
import { plugBleederOhms } from "./plug-bleeder.ts";
import { ohmsOfBands, printedOhms } from "./resistor-marking.ts";

describe("an electrolytic", () => {
  it("K1, Lelon RGA and Nichicon RS: 0.01 CV, 3 uA at least; K5, Chemi-con FAQ: 2200 uF 35 V leak 770 uA, 100 uF 10 V 10 uA", () => {
    expect(valued(leakageToHundredVolts(2200e-6, 35))).toBeCloseTo(770e-6, 9);
    expect(valued(leakageToHundredVolts(47e-6, 40))).toBeCloseTo(18.8e-6, 9);
    expect(valued(leakageToHundredVolts(100e-6, 10))).toBeCloseTo(10e-6, 9);
    expect(valued(leakageToHundredVolts(1e-6, 10))).toBeCloseTo(3e-6, 9);
  });

  it("K2, K3, K4 and K6 (computed): 470 uF 450 V leak 426, 4255 or 8560 uA, 100 uF 400 V 83, 825 or 1700 uA", () => {
    const micro = (amps: number) => amps * 1e6;
    const limits = (farads: number, volts: number) =>
      [strictLeakage, leakageAboveHundredVolts, leakageAfterAMinute].map((limit) =>
        micro(valued(limit(farads, volts))),
      );
    expect(limits(470e-6, 450).map((value) => Math.round(value))).toEqual([426, 4255, 8560]);
    expect(limits(100e-6, 400).map((value) => Math.round(value))).toEqual([83, 825, 1700]);
    // the smaller law below a CV of 1000
    expect(micro(valued(leakageAboveHundredVolts(2.2e-6, 400)))).toBeCloseTo(0.03 * 880 + 15, 6);
  });

  it("K7, JAN-C-62 in amradio msg21215: 20 uF of 450 V up to 1.1 mA, of 250 V up to 0.7 mA", () => {
    expect(valued(grossLeakage(20e-6, 450))).toBeCloseTo(1.1e-3, 9);
    expect(valued(grossLeakage(20e-6, 250))).toBeCloseTo(0.7e-3, 9);
  });

  it("K8, Lelon RGA: tan delta 0.23 at 6.3 V to 0.25 at 450 V, 0.02 more for each 1000 uF above the first", () => {
    const rows = [6.3, 10, 16, 25, 35, 50, 63, 100, 160, 200, 250, 350, 400, 450];
    expect(rows.map((volts) => valued(tanDeltaLimit(100e-6, volts)))).toEqual([
      0.23, 0.2, 0.16, 0.14, 0.12, 0.1, 0.09, 0.08, 0.12, 0.14, 0.17, 0.2, 0.25, 0.25,
    ]);
    expect(valued(tanDeltaLimit(3300e-6, 25))).toBeCloseTo(0.2, 9);
  });

  it("K9, Nichicon RS: tan delta 0.28 at 6.3 V to 0.08 at 100, 0.20 at 160 to 250 and 0.25 at 400 V", () => {
    const rows = [6.3, 10, 16, 25, 35, 50, 63, 100, 160, 250, 400];
    expect(rows.map((volts) => valued(tanDeltaLimit(100e-6, volts, "Nichicon RS")))).toEqual([
      0.28, 0.24, 0.2, 0.16, 0.14, 0.12, 0.1, 0.08, 0.2, 0.2, 0.25,
    ]);
    expect(problemOf(tanDeltaLimit(100e-6, 450, "Nichicon RS"))).toContain("450 V is outside 6.3 to 400 V");
  });

  it("K16 (not seen): no figure of IEC 60384-4 itself is told, only those of the two makers that were read", () => {
    expect(LOSS_TABLES).toEqual(["Lelon RGA", "Nichicon RS"]);
  });

  it("K14 (computed): twice as long for 10 K less is an activation of 0.832 eV at 95 to 105 degC, 0.663 eV at 55 to 65", () => {
    const boltzmannEv = 8.617333e-5;
    const activation = (cool: number, hot: number) => {
      const longer = valued(lifeHours(2000, 105, cool)) / valued(lifeHours(2000, 105, hot));
      return (boltzmannEv * Math.log(longer)) / (1 / (cool + 273.15) - 1 / (hot + 273.15));
    };
    expect(activation(95, 105)).toBeCloseTo(0.832, 3);
    expect(activation(55, 65)).toBeCloseTo(0.663, 3);
  });

  it("K10, Vishay doc 28309 p. 100: ESR from tan delta (values computed)", () => {
    expect(valued(esrOhms(0.25, 120, 470e-6))).toBeCloseTo(0.7055, 4);
    expect(valued(esrOhms(0.2, 120, 470e-6))).toBeCloseTo(0.5644, 4);
    expect(valued(esrOhms(0.14, 120, 1000e-6))).toBeCloseTo(0.1857, 4);
    expect(valued(esrOhms(0.12, 120, 220e-6))).toBeCloseTo(0.7234, 4);
    expect(valued(esrOhms(0.25, 100, 680e-6))).toBeCloseTo(0.5851, 4);
  });

  it("K11, Lelon RGA and Nichicon RS: worn out with a fifth of capacitance gone, twice the loss, or leakage over the limit", () => {
    expect(wornOut({ capacitanceShare: 0.8, tanDeltaShare: 2, leakageShare: 1 })).toEqual([]);
    expect(wornOut({ capacitanceShare: 0.79, tanDeltaShare: 2.1, leakageShare: 1.1 })).toHaveLength(3);
  });

  it("K12, the ten-degree rule: 2000 h at 105 degC are 4000 at 95, 8000 at 85, 32 000 at 65", () => {
    expect([105, 95, 85, 65].map((degC) => valued(lifeHours(2000, 105, degC)))).toEqual([
      2000, 4000, 8000, 32_000,
    ]);
  });

  it("K13, Cosel FAQ a0057: eight hours each at 45, 55 and 65 degC are as one of 57.2 degC (27 429 h computed)", () => {
    const third = 1 / 3;
    const profile = [45, 55, 65].map((degC) => ({ degC, share: third }));
    const { hours, equalDegC } = valued(lifeOverProfile(1000, 105, profile));
    expect(hours).toBeCloseTo(27_428.6, 1);
    expect(equalDegC).toBeCloseTo(57.2, 1);
  });

  it("K15, Vishay 038 RSU: a surge of 1.15 times the rating", () => {
    expect(valued(surgeVolts(400))).toBeCloseTo(460, 9);
  });

  it.each([
    [() => leakageToHundredVolts(1e-4, 400), "rated voltage: 400 V is outside 1 to 100 V"],
    [() => leakageAboveHundredVolts(1e-4, 25), "rated voltage: 25 V is outside 100 to 600 V"],
    [() => esrOhms(0.2, 0, 1e-4), "frequency: 0 Hz is outside"],
    [() => esrOhms(0.2, 120, 470), "capacitance: 470 F is outside"],
    [() => lifeHours(2000, 105, 120), "temperature: 120 degC is outside 40 to 105 degC"],
    [() => lifeOverProfile(1000, 105, [{ degC: 50, share: 0.5 }]), "shares of the day: they add up to 0.5"],
  ])("is not reckoned with outside its law (%#)", (made, problem) => {
    expect(problemOf(made())).toContain(problem);
  });
});

describe("stored charge at the plug and on the bus", () => {
  it("P12 (computed): 24.863, 49.096 and 144.4 J; through 100 kohm to 60 V in 79.44, 125.5 and 369.2 s", () => {
    const rows = [
      [470e-6, 325.27, 24.863, 79.44],
      [680e-6, 380, 49.096, 125.5],
      [2000e-6, 380, 144.4, 369.2],
    ] as const;
    for (const [farads, volts, joules, seconds] of rows) {
      expect(storedJoules(farads, volts)).toBeCloseTo(joules, 2);
      expect(bleedSeconds(volts, 60, 1e5, farads)).toBeCloseTo(seconds, 0);
    }
  });

  it("P13 and P14, IEC 60335-1 cl. 22.5 (seen-2nd): 34 V after a second want 443 kohm at most for 1 uF on 230 V", () => {
    expect(valued(plugBleederOhms(1e-6, 230))).toBeCloseTo(442.8e3, -2);
    expect(valued(plugBleederOhms(1e-6, 253))).toBeCloseTo(424.9e3, -2);
    expect(valued(plugBleederOhms(0.47e-6, 264))).toBeCloseTo(887.9e3, -2);
    expect(valued(plugBleederOhms(0.1e-6, 230))).toBeNull();
    expect(problemOf(plugBleederOhms(1e-6, 20))).toContain("mains: 20 V is outside");
  });
});

describe("a marking", () => {
  it("E1, E2 and E3, IEC 60063 list: six, twelve, twenty-four values; the small in the large", () => {
    expect(decadeOf("E6")).toEqual([100, 150, 220, 330, 470, 680]);
    expect(decadeOf("E12")).toHaveLength(12);
    expect(decadeOf("E24")).toHaveLength(24);
    for (const value of decadeOf("E12")) expect(decadeOf("E24")).toContain(value);
    for (const value of [110, 130, 160, 200, 240, 300, 360, 430, 510, 620, 750, 910])
      expect(decadeOf("E24")).toContain(value);
  });

  it("E4, IEC 60063 list: the forty-eight, by round(100 x 10^(i/48))", () => {
    expect(decadeOf("E48")).toEqual([
      100, 105, 110, 115, 121, 127, 133, 140, 147, 154, 162, 169, 178, 187, 196, 205, 215, 226, 237, 249, 261,
      274, 287, 301, 316, 332, 348, 365, 383, 402, 422, 442, 464, 487, 511, 536, 562, 590, 619, 649, 681, 715,
      750, 787, 825, 866, 909, 953,
    ]);
  });

  it("E5 (rule from memory): E96 has 102, 107 and 113 between the forty-eight", () => {
    expect(decadeOf("E96").slice(0, 6)).toEqual([100, 102, 105, 107, 110, 113]);
  });

  it("E6, IEC 60062 article: R47, 4R7, 470R, 4K7, 47K, 47K3, 470K, 4M7", () => {
    const ohms = [0.47, 4.7, 470, 4700, 47_000, 47_300, 470_000, 4.7e6];
    expect(ohms.map((value) => valued(printedOhms(value)))).toEqual([
      "R47",
      "4R7",
      "470R",
      "4K7",
      "47K",
      "47K3",
      "470K",
      "4M7",
    ]);
  });

  it.each([
    ["brown black red gold", 1000, 0.05],
    ["yellow violet red gold", 4700, 0.05],
    ["red red orange gold", 22_000, 0.05],
    ["brown black black gold brown", 10, 0.01],
    ["yellow violet gold", 4.7, 0.2],
  ])("E7 and E8, resistorcolorcodes.org: %s is %d ohm", (bands, ohms, tolerance) => {
    expect(valued(ohmsOfBands(bands.split(" ")))).toMatchObject({ ohms, tolerance });
  });

  it("E7, resistorcolorcodes.org (IEC 60062): ten digits, pink, silver and gold as small multipliers, eight tolerances and none", () => {
    const digits = "black brown red orange yellow green blue violet grey white".split(" ");
    digits.forEach((color, digit) => {
      expect(valued(ohmsOfBands([color, color, "black", "gold"])).ohms, color).toBe(11 * digit);
    });
    const times = (color: string) => valued(ohmsOfBands(["brown", "black", color, "gold"])).ohms;
    expect(["pink", "silver", "gold", ...digits.slice(0, 8)].map(times)).toEqual([
      0.01, 0.1, 1, 10, 100, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8,
    ]);
    const within = (...last: string[]) => valued(ohmsOfBands(["brown", "black", "red", ...last])).tolerance;
    expect(
      ["brown", "red", "orange", "yellow", "green", "blue", "gold", "silver"].map((one) => within(one)),
    ).toEqual([0.01, 0.02, 0.0005, 0.0002, 0.005, 0.0025, 0.05, 0.1]);
    expect(within()).toBe(0.2);
  });

  it("E10, instrumentationtools.com: two digits for 5 % and wider, three for 2 % and tighter; else it may be read from the wrong end", () => {
    const usual = (bands: string) => valued(ohmsOfBands(bands.split(" "))).usual;
    expect(["brown black red gold", "brown black black gold brown", "yellow violet gold"].map(usual)).toEqual(
      [true, true, true],
    );
    expect(["brown black red brown", "brown black black gold gold"].map(usual)).toEqual([false, false]);
  });

  it("E9: lists disagree on grey and violet as a tolerance, so it is not known", () => {
    expect(valued(ohmsOfBands(["red", "red", "black", "violet"])).tolerance).toBeNull();
    expect(valued(ohmsOfBands(["red", "red", "black", "grey"])).tolerance).toBeNull();
  });

  it("that cannot be read is refused", () => {
    expect(problemOf(ohmsOfBands(["red"]))).toContain("1 given, three to five are read");
    expect(problemOf(ohmsOfBands(["gold", "red", "black"]))).toContain("gold is no digit");
    expect(problemOf(ohmsOfBands(["red", "red", "black", "black"]))).toContain("black is no tolerance");
  });

  it("of a burnt resistor is the nearest of its series", () => {
    expect(nearestPreferred(4600, "E12")).toBe(4700);
    expect(nearestPreferred(9.9, "E12")).toBe(10);
    expect(nearestPreferred(0.0223, "E24")).toBe(0.022);
    expect(nearestPreferred(49_900, "E24", "E96")).toBe(49_900);
  });
});
