import { describe, expect, it } from "vitest";
import { parseReadingText } from "../../units/reading-text.ts";
import { parseTypedReadings } from "./typed-reading.ts";

describe("a reading as it is typed", () => {
  it.each([
    ["0.47", "diode", 0.47],
    [".47", "diode", 0.47],
    ["470m", "diode", 0.47],
    ["470mV", "diode", 0.47],
    ["0,47", "diode", 0.47],
    ["OL", "diode", "OL"],
    ["o.l", "ohms", "OL"],
    ["10k", "ohms", 10_000],
    ["4k7", "ohms", 4700],
    ["0R22", "ohms", 0.22],
    ["2.2M", "ohms", 2.2e6],
    ["12", "ohms", 12],
    ["22u", "farads", 22e-6],
    ["100nF", "farads", 1e-7],
    ["47p", "farads", 47e-12],
    ["beep", "continuity", "beep"],
    ["OL", "continuity", "silent"],
    ["zero", "diode", "zero"],
    ["junction", "ohms", "junction"],
    ["high", "diode", "high"],
    ["-0", "ohms", 0],
    ["325V", "dcv", 325],
    ["1m", "dcv", 0.001],
  ] as const)("%s in %s mode is %s", (typed, mode, reading) => {
    const parsed = parseReadingText(typed, mode);
    expect(parsed).toEqual({ ok: true, value: reading });
    expect(parsed.ok && Object.is(parsed.value, -0)).toBe(false);
  });

  it("leaves no dust of binary fractions behind a prefix", () => {
    for (const milli of [1, 47, 330, 470, 523, 999]) {
      expect(parseReadingText(`${milli}m`, "diode")).toEqual({
        ok: true,
        value: Number(`0.${String(milli).padStart(3, "0")}`),
      });
    }
  });

  it.each([
    ["", "diode"],
    ["0.4.7", "diode"],
    ["1e999", "ohms"],
    ["NaN", "ohms"],
    ["470", "diode"],
    ["22", "farads"],
    ["k", "ohms"],
  ] as const)("%s in %s mode is refused", (typed, mode) => {
    expect(parseReadingText(typed, mode).ok).toBe(false);
  });

  it("gives `climbing` to the reading before it, and alone takes it for a value on its way up", () => {
    expect(parseTypedReadings(["0.8", "climbing", "OL"], "diode")).toEqual({
      ok: true,
      value: [
        { reading: 0.8, climbing: true },
        { reading: "OL", climbing: false },
      ],
    });
    expect(parseTypedReadings(["climbing"], "diode")).toEqual({
      ok: true,
      value: [{ reading: "high", climbing: true }],
    });
  });
});
