import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { parseReadingText } from "./reading-text.ts";

describe("what a technician types off the meter", () => {
  it.each([
    ["0.47", "diode", 0.47],
    [".47", "diode", 0.47],
    ["470m", "diode", 0.47],
    ["0,47", "diode", 0.47],
    ["0.47 V", "diode", 0.47],
    ["10k", "ohms", 10_000],
    ["4k7", "ohms", 4_700],
    ["0R22", "ohms", 0.22],
    ["2.2M", "ohms", 2_200_000],
    ["22u", "farads", 22e-6],
    ["100nF", "farads", 100e-9],
    ["-325", "dcv", -325],
    ["-0", "dcv", 0],
    ["OL", "diode", "OL"],
    ["0l", "ohms", "OL"],
    ["beep", "continuity", "beep"],
    ["ol", "continuity", "silent"],
  ] as const)("%s in %s is %s", (text, mode, reading) => {
    expect(parseReadingText(text, mode)).toEqual({ ok: true, value: reading });
  });

  it.each([
    ["470", "diode", /470m/],
    ["22", "farads", /22u/],
    ["-5", "ohms", /discharge/],
    ["beep", "diode", /digits/],
    ["1e999", "ohms", /too large/],
    ["NaN", "ohms", /no reading/],
    ["", "ohms", /Type what the meter shows/],
    ["hot", "temperature", /no reading/],
  ] as const)("%s in %s is refused with what to type instead", (text, mode, words) => {
    const entered = parseReadingText(text, mode);
    expect(entered.ok).toBe(false);
    expect(entered.ok ? "" : plain(entered.problem)).toMatch(words);
  });

  it("milli, kilo and mega scale the digits and leave no binary dust", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 9999 }), (digits) => {
        expect(parseReadingText(`${digits}k`, "ohms")).toEqual({ ok: true, value: digits * 1000 });
        expect(parseReadingText(`${digits}m`, "dcv")).toEqual({ ok: true, value: Number(`${digits}e-3`) });
      }),
      { seed: 7 },
    );
  });

  it("never throws, and never gives a number that is not finite, or a negative zero", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 12 }), (text) => {
        const entered = parseReadingText(text, "ohms");
        if (!entered.ok || typeof entered.value !== "number") return;
        expect(Number.isFinite(entered.value)).toBe(true);
        expect(Object.is(entered.value, -0)).toBe(false);
      }),
      { seed: 11, numRuns: 500 },
    );
  });
});
