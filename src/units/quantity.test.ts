import { describe, expect, it } from "vitest";
import { plain } from "../messages/said.ts";
import { formatQuantity, parseQuantity } from "./quantity.ts";

function typed(text: string): number | string {
  const parsed = parseQuantity(text);
  return parsed.ok ? parsed.value : plain(parsed.problem);
}

describe("what a technician types for a reading", () => {
  it.each([
    ["0.47", 0.47],
    [".47", 0.47],
    ["0,47", 0.47],
    ["470m", 0.47],
    ["470 mV", 0.47],
    ["4k7", 4700],
    ["10k", 10_000],
    ["10 kohm", 10_000],
    ["4.7u", 4.7e-6],
    ["4u7F", 4.7e-6],
    ["100nF", 1e-7],
    ["1M", 1e6],
    ["R47", 0.47],
    ["4R7", 4.7],
    ["-12.1", -12.1],
    ["1e3", 1000],
    ["47\u03a9", 47],
    ["47 \u00b5F", 47e-6],
  ])("%s is %d", (text, value) => {
    expect(typed(text)).toBe(value);
  });

  it("may be a word of the meter", () => {
    expect(typed("OL")).toBe("OL");
    expect(typed("o.l")).toBe("OL");
    expect(typed("Beep")).toBe("beep");
    expect(typed("silent")).toBe("silent");
  });

  it("is told apart in m and M", () => {
    expect(typed("2m")).toBe(0.002);
    expect(typed("2M")).toBe(2_000_000);
  });

  it("has no minus zero", () => {
    expect(Object.is(typed("-0"), 0)).toBe(true);
    expect(Object.is(typed("-0.00"), 0)).toBe(true);
  });

  it.each(["", " ", "abc", "4k7k", "1..2", "NaN", "Infinity", "--1", "1e", "k", "0x10", "__proto__"])(
    "%j is refused with what would be right",
    (text) => {
      expect(typed(text)).toContain("is no reading; write 0.47, 470m, 4k7, OL or beep");
    },
  );

  it("is refused where no number can hold it", () => {
    expect(typed("1e999")).toContain("too large");
  });
});

describe("what a meter would show", () => {
  it.each([
    [0.47, "V", "0.47 V"],
    [4700, "ohm", "4.70 kohm"],
    [0.2, "ohm", "0.20 ohm"],
    [0.027, "ohm", "27.0 mohm"],
    [10_000, "ohm", "10.0 kohm"],
    [470e-6, "F", "470 uF"],
    [4.7e-6, "F", "4.70 uF"],
    [325, "V", "325 V"],
    [-0.55, "V", "-0.55 V"],
    [0, "V", "0 V"],
    [999.9, "ohm", "1.00 kohm"],
    [1e-7, "F", "100 nF"],
    [6e6, "ohm", "6.00 Mohm"],
  ])("%d %s shows as %s", (value, unit, shown) => {
    expect(formatQuantity(value, unit)).toBe(shown);
  });
});
