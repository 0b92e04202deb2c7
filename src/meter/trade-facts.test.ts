/** What the trade knows (common practice, no source), on a small board of our own. */
import { describe, expect, it } from "vitest";
import { boostDrive } from "./boost-drive.fixture.ts";
import { asking, BARE, within } from "./on-the-bench.fixture.ts";

const board = boostDrive();
const ask = asking(board);
/** 90 % of readings lie in so many deviations each way. */
const NINETY = 1.645;

function narrow(red: string, black: string): boolean {
  return 2 * NINETY * ask.whole("diode", red, black).alike < 0.08;
}

describe("a healthy board", () => {
  it("has bridge junctions of 0.42 to 0.55 V and nothing the other way", () => {
    for (const [red, black] of [
      ["L3", "BRP"],
      ["N2", "BRP"],
      ["BRN", "L3"],
      ["BRN", "N2"],
    ]) {
      expect(within(ask("diode", red, black), 0.42, 0.55)).toBe(true);
      expect(narrow(red, black)).toBe(true);
      expect(ask("diode", black, red)).toBe("OL");
    }
  });

  it("has switch diodes of 0.35 to 0.55 V, the three phases within 50 mV", () => {
    for (const pairs of [
      [
        ["U", "P"],
        ["V", "P"],
        ["W", "P"],
      ],
      [
        ["N", "U"],
        ["N", "V"],
        ["N", "W"],
      ],
    ]) {
      const shown = pairs.map(([red, black]) => Number(ask("diode", red, black)));
      for (const [i, volts] of shown.entries()) {
        expect(within(volts, 0.35, 0.55)).toBe(true);
        expect(narrow(pairs[i][0], pairs[i][1])).toBe(true);
      }
      expect(Math.max(...shown) - Math.min(...shown)).toBeLessThan(0.05);
    }
  });

  it("shows a 10 kohm gate pull-down as its value in the blocking direction", () => {
    expect(within(ask("ohms", "G1", "N"), 9_800, 10_200)).toBe(true);
  });

  it("shows a small-signal diode at 0.5 to 0.65 V", () => {
    expect(within(ask("diode", "SA", "VA1"), 0.5, 0.65)).toBe(true);
    expect(narrow("SA", "VA1")).toBe(true);
  });

  it("shows the same bridge as shorted behind a shorted boost switch, until the reactor is unplugged", () => {
    expect(within(ask("diode", "BRP", "BRN", "Q1.ce:short"), 0, 0.01)).toBe(true);
    const unplugged = asking(board, { ...BARE, off: new Set(["L1"]) });
    expect(unplugged("diode", "BRP", "BRN", "Q1.ce:short")).toBe("OL");
  });
});

describe("a short", () => {
  it("reads zero both ways", () => {
    expect(within(ask("diode", "U", "N", "M1.un:short"), 0, 0.01)).toBe(true);
    expect(within(ask("diode", "N", "U", "M1.un:short"), 0, 0.01)).toBe(true);
  });

  it("across the bus drops all six reverse readings from OL to one diode, and is itself plain at the bus", () => {
    for (const phase of ["U", "V", "W"]) {
      expect(within(ask("diode", phase, "N", "C1:short"), 0.35, 0.5)).toBe(true);
      expect(within(ask("diode", "P", phase, "C1:short"), 0.35, 0.5)).toBe(true);
    }
    expect(within(ask("diode", "P", "N", "C1:short"), 0, 0.01)).toBe(true);
  });

  it("of the small supply's switch equals a module short in diode mode, and shows the primary in ohms", () => {
    expect(within(ask("diode", "P", "N", "U1.ds:short"), 0, 0.01)).toBe(true);
    expect(within(ask("ohms", "P", "N", "U1.ds:short"), 5, 7)).toBe(true);
    expect(within(ask("ohms", "P", "N", "M1.up:short,M1.un:short"), 0, 0.6)).toBe(true);
  });

  it("of a rail makes every ceramic on it beep, and only it", () => {
    expect(ask("continuity", "V5", "N", "C20:short")).toBe("beep");
    expect(ask("continuity", "V5", "N")).toBe("silent");
    expect(ask("continuity", "V15", "N", "C20:short")).toBe("silent");
  });

  it("of the 5 V rail makes good controller pins read one junction, and the regulator the Schottky behind it", () => {
    expect(within(ask("diode", "MCUUP", "N", "C20:short"), 0.55, 0.7)).toBe(true);
    expect(within(ask("diode", "V5", "V12", "C20:short"), 0.15, 0.25)).toBe(true);
  });

  it("of one switch leaves the bus at OL, so the bus alone never clears a module", () => {
    for (const fault of ["M1.up:short", "M1.vn:short"]) expect(ask("diode", "P", "N", fault)).toBe("OL");
  });
});

describe("an open lower shunt", () => {
  it("leaves 0.75 V through the driver's substrate where 0.43 V was", () => {
    expect(within(ask("diode", "N", "U"), 0.4, 0.46)).toBe(true);
    expect(within(ask("diode", "N", "U", "RSHN:open"), 0.7, 0.78)).toBe(true);
    expect(within(ask("diode", "NU", "U", "RSHN:open"), 0.4, 0.46)).toBe(true);
  });
});

describe("a bus capacitor in the hand", () => {
  const inHand = asking(board, { ...BARE, off: new Set(["C1"]) });

  it("chirps, climbs and ends silent, and does the same again with the leads swapped", () => {
    for (const [red, black] of [
      ["C1.plus", "C1.minus"],
      ["C1.minus", "C1.plus"],
    ]) {
      expect(inHand.whole("continuity", red, black, "", 0.001).shown).toBe("beep");
      expect(inHand("continuity", red, black)).toBe("silent");
      const soon = inHand.whole("diode", red, black, "", 0.2).raw;
      const later = inHand.whole("diode", red, black, "", 1).raw;
      expect(soon).toBeGreaterThan(0.1);
      expect(later).toBeGreaterThan(2 * soon);
      expect(inHand("diode", red, black)).toBe("OL");
    }
  });

  it("reads its farads, half of them when dried out, and OL when leaky", () => {
    expect(within(inHand("farads", "C1.plus", "C1.minus"), 679e-6, 681e-6)).toBe(true);
    expect(within(inHand("farads", "C1.plus", "C1.minus", "C1:drift"), 339e-6, 341e-6)).toBe(true);
    expect(inHand("farads", "C1.plus", "C1.minus", "C1:short")).toBe("OL");
  });
});

describe("the bench", () => {
  it("tells a net from a lifted pin", () => {
    const lifted = asking(board, { ...BARE, lifted: new Set(["D1.a"]) });
    expect(within(lifted("diode", "D1.a", "P"), 0.38, 0.45)).toBe(true);
    expect(within(ask("diode", "SW", "P", "D2:open"), 0.38, 0.45)).toBe(true);
    expect(lifted("diode", "D1.a", "SW")).toBe("OL");
  });

  it("reads a resistor clipped on", () => {
    const clipped = asking(board, { ...BARE, clips: [{ at: ["P", "N"], ohms: 2200 }] });
    expect(within(clipped("ohms", "P", "N"), 2150, 2200)).toBe(true);
  });

  it("reads nothing between two places that are one", () => {
    expect(ask("diode", "D1.a", "SW")).toBe(0);
  });

  it("reads a leak between neighbouring nets", () => {
    expect(within(ask("ohms", "U", "V", "U~V:leaky"), 990, 1000)).toBe(true);
    expect(within(ask("ohms", "U", "V", "U~V:leaky@4700"), 4500, 4700)).toBe(true);
  });
});
