/**
 * Lines marked "recorded" were written by sigrok-cli 0.7.2 (libsigrok 0.5.2): by its demo driver, and by its driver of SCPI multimeters talking to a
 * loopback instrument. The others are put together from the format string, units and flags in libsigrok's output/analog.c and analog.c.
 */
import { describe, expect, it } from "vitest";
import { parseSigrokDrivers } from "./sigrok-drivers.ts";
import { parseSigrokLine } from "./sigrok-line.ts";

const value = (line: string) => parseSigrokLine(line)?.reading.value ?? null;
const modes = (line: string) => parseSigrokLine(line)?.reading.modes ?? null;

describe("a line of sigrok's", () => {
  it.each([
    ["A0: -10.0000 V DC", -10],
    ["A1: 0.0 mV DC", 0],
    ["P1: 471.230 mV DC DIODE", 0.47123],
    ["P1: 1.234560132 k\u2126", 1234.56],
    ["P1: 4.699999809265 M\u2126", 4.7e6],
    ["P1: 22 \u00b5F", 22e-6],
    ["P1: 230.100006 V AC", 230.1],
    ["P1: 23.100000 \u00b0C", 23.1],
  ])("recorded: %s is %d in SI units", (line, expected) => {
    expect(value(line)).toBe(expected);
  });

  it.each(["P1: inf \u00b5V DC DIODE", "P1: inf \u00b5\u2126", "P1: -inf V DC AUTO"])(
    "over the range (%s) is OL, whatever prefix stands there",
    (line) => {
      expect(value(line)).toBe("OL");
    },
  );

  it.each([
    ["P1: 0.4710 V DC DIODE", ["diode"]],
    ["P1: 0.4710 V DC AUTO", ["dcv"]],
    ["P1: 230.1 V AC RMS", ["acv"]],
    ["P1: 230.1 V AC DC RMS", []],
    ["P1: 1.5 A DC", ["amps"]],
    ["P1: 12.34 nF", ["farads"]],
    ["P1: 50.00 Hz", []],
    ["P1: 46.3 %", []],
    ["P1: 0.0000  AUTO", ["continuity"]],
  ])("%s answers checks in %j", (line, expected) => {
    expect(modes(line)).toEqual(expected);
  });

  it.each([
    "FRAME-BEGIN",
    "",
    "META samplerate: 2",
    "P1: nan V DC",
    "P1: 4.7",
    "g_atomic_ref_count_dec: assertion 'old_value > 0' failed",
  ])("that holds no figure (%j) is passed over, or one that no check asks for", (line) => {
    expect(modes(line) ?? []).toEqual([]);
  });

  it("in degrees Fahrenheit is read in Celsius", () => {
    expect(value("P1: 212.0 \u00b0F")).toBe(100);
  });
});

describe("the list of drivers", () => {
  it("is read out of what the program supports, and nothing else of it", () => {
    const text = [
      "sigrok-cli 0.7.2",
      "",
      "Supported hardware drivers:",
      "  demo                 Demo driver and pattern generator",
      "  scpi-dmm             SCPI DMM",
      "",
      "Supported input formats:",
      "  binary               Raw binary logic data",
    ].join("\n");
    expect(parseSigrokDrivers(text).map(({ name }) => name)).toEqual(["demo", "scpi-dmm"]);
  });
});
