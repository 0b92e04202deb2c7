import { describe, expect, it } from "vitest";
import type { InstrumentReading } from "./instrument-reading.ts";
import { type Settling, SettlingWatch } from "./settling.ts";

const AS: Readonly<Record<string, Pick<InstrumentReading, "modes" | "setTo" | "unit">>> = {
  diode: { modes: ["diode"], setTo: "diode mode", unit: "V" },
  ohms: { modes: ["ohms", "continuity"], setTo: "ohms", unit: "Ω" },
  dcv: { modes: ["dcv"], setTo: "DC volts", unit: "V" },
};

/** Feeds one figure each quarter of a second; how it stood after each. */
function watched(
  mode: keyof typeof AS,
  figures: readonly InstrumentReading["value"][],
  watch = new SettlingWatch(),
) {
  const shown = AS[mode] ?? { modes: [], setTo: "", unit: "" };
  return figures.map((value, at): Settling => watch.take({ ...shown, value, doubt: null }, at / 4));
}
const fill = <T>(count: number, value: (at: number) => T) =>
  Array.from({ length: count }, (_, at) => value(at));

describe("a figure on the wire", () => {
  it("is at rest once the display has stood still, its last digit aside", () => {
    const states = watched("diode", ["OL", 0.21, 0.43, 0.471, 0.472, 0.471, 0.471, 0.472]);
    expect(states.map(({ state }) => state)).toEqual([...fill(7, () => "moving"), "settled"]);
  });

  it("that charges a capacitor is climbing, and counts as what it showed two seconds after touching", () => {
    // 1 mA into 1,360 uF climbs 0.735 V a second: U = I t / C
    const rise = (at: number) => (0.001 / 1360e-6) * (at / 4) * 0.2 + 0.05;
    const states = watched("diode", ["OL", ...fill(16, (at) => Number(rise(at).toFixed(4)))]);
    expect(states.slice(0, 9).every(({ state }) => state === "moving")).toBe(true);
    const last = states.at(-1);
    expect(last?.state).toBe("climbing");
    if (last?.state === "climbing") expect(last.atTwoSeconds).toBeCloseTo(rise(8), 3);
  });

  it("is not called climbing where nobody saw the probes touch", () => {
    const states = watched(
      "ohms",
      fill(20, (at) => 1000 + 100 * at),
    );
    expect(states.at(-1)).toEqual({ state: "moving" });
  });

  it("that climbs to the end of the range is open at last", () => {
    const states = watched("diode", ["OL", 0.5, 0.9, 1.3, 1.7, ...fill(6, () => "OL" as const)]);
    expect(states[5]).toEqual({ state: "moving" });
    expect(states.at(-1)).toEqual({ state: "settled" });
  });

  it("that falls by more than a tenth is that of another pair of places, timed anew", () => {
    const watch = new SettlingWatch();
    watched("ohms", ["OL", ...fill(8, () => 1500)], watch);
    const before = watch.touches;
    expect(watch.take({ ...AS.ohms, value: 470, doubt: null } as InstrumentReading, 2)).toEqual({
      state: "moving",
    });
    expect(watch.touches).toBe(before + 1);
  });

  it("under power is never climbing: volts have no touch to be timed from", () => {
    const states = watched(
      "dcv",
      fill(20, (at) => 100 + 5 * at),
    );
    expect(states.at(-1)).toEqual({ state: "moving" });
    expect(
      watched(
        "dcv",
        fill(6, () => 325),
      ).at(-1),
    ).toEqual({ state: "settled" });
  });

  it("is followed from the beginning when the meter is turned to another mode", () => {
    const watch = new SettlingWatch();
    watched(
      "dcv",
      fill(6, () => 0.001),
      watch,
    );
    expect(watched("ohms", [0.2], watch)).toEqual([{ state: "moving" }]);
  });
});
