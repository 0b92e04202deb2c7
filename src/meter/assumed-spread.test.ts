/** Readings through parts that nobody has seen: wider, and their own name said; readings past them stay as sharp as they were. */
import { describe, expect, it } from "vitest";
import type { ColdMode } from "../bench/event.ts";
import { asking, boardOf } from "./on-the-bench.fixture.ts";

const resistor = (a: string, b: string, ohms: number) => ({
  kind: "resistor",
  pins: { "1": a, "2": b },
  value: { ohms, tolerance: 0.05 },
});
const capacitor = (a: string, b: string, farads: number) => ({
  kind: "capacitor",
  pins: { plus: a, minus: b },
  value: { farads, volts: 50, type: "film" },
});

const PARTS = {
  R1: resistor("A", "Z", 1_000),
  R2: resistor("B", "M", 10_000),
  R3: resistor("M", "Z", 100),
  C1: capacitor("C", "Z", 10e-6),
  C2: capacitor("C", "Z", 1e-6),
  D1: { kind: "diode", pins: { a: "D", k: "Z" }, value: { type: "fast" } },
};

/** The same board, seen and with these parts not. */
function both(...assumed: readonly string[]) {
  const doubted = Object.entries(PARTS).map(([ref, part]) => [
    ref,
    assumed.includes(ref) ? { ...part, assumed: true } : part,
  ]);
  return {
    seen: asking(boardOf(PARTS, ["Z", "A"])),
    unseen: asking(boardOf(Object.fromEntries(doubted), ["Z", "A"])),
  };
}

describe("a reading across a part that nobody has seen", () => {
  it.each<[ColdMode, string, string]>([
    ["ohms", "A", "R1"],
    ["farads", "C", "C1"],
  ])("in %s allows for half or twice the value, and rests on it", (mode, net, ref) => {
    const { seen, unseen } = both(ref);
    const [known, guessed] = [seen.whole(mode, net, "Z"), unseen.whole(mode, net, "Z")];
    expect(guessed.raw).toBe(known.raw);
    expect(guessed.spread / guessed.raw).toBeGreaterThan(0.6);
    expect(known.spread / known.raw).toBeLessThan(0.15);
    expect(guessed.restsOn).toEqual([ref]);
    expect(known.restsOn).toEqual([]);
  });

  it("still compares with its like on the same board: those are not seen alike", () => {
    const { seen, unseen } = both("R1");
    expect(unseen.whole("ohms", "A", "Z").alike).toBe(seen.whole("ohms", "A", "Z").alike);
  });

  it("in the diode range allows for a junction of another sort", () => {
    const { seen, unseen } = both("D1");
    const wider = unseen.whole("diode", "D", "Z").spread;
    expect(wider).toBeGreaterThan(0.09);
    expect(wider).toBeGreaterThan(1.2 * seen.whole("diode", "D", "Z").spread);
  });

  it("while it charges allows for another capacitance, by the share of the charge that stands on it", () => {
    const constant = (3 / 1.1e-3) * 11e-6;
    const spread = (...assumed: readonly string[]) =>
      both(...assumed).unseen.whole("diode", "C", "Z", "", constant);
    expect(spread("C1").spread).toBeGreaterThan(1.4 * spread().spread);
    expect(spread("C1").restsOn).toEqual(["C1"]);
    // a tenth of the charge: hardly to be seen
    expect(spread("C2").spread).toBeLessThan(1.1 * spread().spread);
    expect(spread("C2").restsOn).not.toContain("C1");
  });
});

describe("a reading that hardly depends on what nobody has seen", () => {
  it("stays as sharp, and rests on nothing", () => {
    const { seen, unseen } = both("R3");
    const [known, guessed] = [seen.whole("ohms", "B", "Z"), unseen.whole("ohms", "B", "Z")];
    expect(guessed.spread).toBeLessThan(1.1 * known.spread);
    expect(guessed.restsOn).toEqual([]);
    const { unseen: beside } = both("R1", "C1", "D1");
    expect(beside.whole("ohms", "B", "Z").spread).toBe(known.spread);
  });
});
