/** Readings while a capacitor charges, against the closed form of one resistor and one capacitor. */
import { describe, expect, it } from "vitest";
import { asking, boardOf } from "./on-the-bench.fixture.ts";

const FARADS = 10e-6;
/** The lowest ohms range: 0.5 V behind 900 ohm (board file format). */
const SOURCE = { volts: 0.5, ohms: 900 };
const board = boardOf(
  {
    C1: {
      kind: "capacitor",
      pins: { plus: "A", minus: "Z" },
      value: { farads: FARADS, volts: 50, type: "film" },
    },
  },
  ["Z", "A"],
);

/** Ohms that stand for the volts of the capacitor so many seconds after touching: v / i, i = (0.5 V - v) / 900 ohm. */
function closedForm(seconds: number): number {
  const rest = Math.exp(-seconds / (SOURCE.ohms * FARADS));
  return (SOURCE.ohms * (1 - rest)) / rest;
}

describe("a capacitor that charges through the meter", () => {
  const ask = asking(board);

  it.each([1, 3, 6, 8])(
    "reads v over i after %d time constants, also when hardly any current is left",
    (constants) => {
      const seconds = constants * SOURCE.ohms * FARADS;
      const { raw } = ask.whole("continuity", "A", "Z", "", seconds);
      expect(Math.abs(raw / closedForm(seconds) - 1)).toBeLessThan(0.01);
    },
  );

  it("reads its volts in diode mode: 3 V behind 2.73 kohm", () => {
    const constant = (3 / 1.1e-3) * FARADS;
    for (const constants of [0.5, 1, 2]) {
      const { raw } = ask.whole("diode", "A", "Z", "", constants * constant);
      expect(Math.abs(raw / (3 * (1 - Math.exp(-constants))) - 1)).toBeLessThan(0.01);
    }
  });
});
