import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inEnglish } from "../messages/in-english.fixture.ts";
import { ratingCell, readRating } from "./rating-text.ts";
import { RATINGS, type RatingName } from "./ratings.ts";

describe("a rating in a catalogue file", () => {
  it.each([
    ["volts", "600V", 600],
    ["volts", "600 Vdc", 600],
    ["volts", "1.2kV", 1200],
    ["farads", "470u", 470e-6],
    ["farads", "4u7", 4.7e-6],
    ["farads", "100 nF", 1e-7],
    ["ohms", "4k7", 4700],
    ["ohms", "R47", 0.47],
    ["ohms", "10 kohm", 10_000],
    ["ohms", "0", 0],
    ["amps", "200mA", 0.2],
    ["recoverySeconds", "35ns", 35e-9],
    ["shortCircuitSeconds", "10 us", 10e-6],
    ["gateCoulombs", "120nC", 120e-9],
    ["tolerance", "20%", 0.2],
    ["transferHigh", "160 %", 1.6],
    ["degC", "105C", 105],
    ["degC", "105 degC", 105],
    ["heightMm", "40mm", 40],
    ["meltingAmps2Seconds", "375 A2s", 375],
    ["hertz", "132kHz", 132_000],
    ["safety", "x2", "X2"],
    ["blow", "t", "T"],
    ["copack", "yes", true],
    ["copack", "no", false],
    ["package", " TO-247 ", "TO-247"],
  ] as const)("%s %j is %s", (name, text, value) => {
    expect(readRating(text, name)).toEqual({ ok: true, value });
  });

  it.each([
    ["volts", "600A", '"600A": expected voltage in V'],
    ["volts", "abc", '"abc": expected voltage in V'],
    ["volts", "-5", '"-5": voltage must be above 0'],
    ["volts", "0", '"0": voltage must be above 0'],
    ["heightMm", "40k", '"40k": expected height in mm, without a prefix'],
    ["farads", "470 uF 25V", '"470 uF 25V": expected capacitance in F'],
    ["safety", "X3", '"X3" is no safety class; known: X1 X2 Y1 Y2'],
    ["copack", "maybe", '"maybe": diode inside is yes or no'],
  ] as const)("%s %j is refused: %s", (name, text, problem) => {
    expect(inEnglish(readRating(text, name))).toEqual({ ok: false, problem });
  });

  it("is read back as it was written, whatever the figure", () => {
    const figures = [...RATINGS].filter(([, rule]) => rule.reads === "figure").map(([name]) => name);
    const readBack = fc.property(
      fc.constantFrom<RatingName>(...figures),
      fc.integer({ min: 1, max: 999_999 }),
      fc.integer({ min: -12, max: 6 }),
      (name, digits, power) => {
        const rule = RATINGS.get(name);
        if (rule === undefined) throw new Error(name);
        const value = Number(`${digits}e${power}`);
        const read = readRating(ratingCell(value, rule), name);
        expect(read.ok && Math.abs(Number(read.value) / value - 1)).toBeLessThan(1e-9);
      },
    );
    fc.assert(readBack, { seed: 11, numRuns: 400 });
  });
});
