/** How warm parts read: over time, beside their neighbours, by each thermometer. */
import { describe, expect, it } from "vitest";
import { OnPower } from "./on-power.fixture.ts";
import { temperatureOf } from "./temperature.ts";
import { THERMOMETERS } from "./thermal-table.ts";

const outdoor = new OnPower("outdoor-unit-inverter");
const { board } = outdoor;
const rise = (watts: number, part: string, taken: Parameters<typeof temperatureOf>[3]): number =>
  (temperatureOf(board, [{ part, watts }], part, { ambient: 20, ...taken })?.celsius ?? 0) - 20;

describe("a warm part", () => {
  it("of a regulator's case without heatsink, 62 K/W: half a watt ends 31 K up, less what the contact takes", () => {
    const end = rise(0.5, "U3", { afterPower: 3600 });
    expect(end / THERMOMETERS.contact.share).toBeGreaterThan(27);
    expect(end / THERMOMETERS.contact.share).toBeLessThan(32);
  });

  it("reads otherwise 20 s after power than two minutes after: a small chip is there, a transformer is not", () => {
    const share = (part: string) =>
      rise(0.3, part, { afterPower: 20 }) / rise(0.3, part, { afterPower: 120 });
    expect(share("C44")).toBeGreaterThan(0.95);
    expect(share("U3")).toBeGreaterThan(0.3);
    expect(share("U3")).toBeLessThan(0.6);
    expect(share("T1")).toBeLessThan(0.25);
  });

  it("warms what is soldered beside it, later and less", () => {
    const heats = [{ part: "U1", watts: 1 }];
    const at = (part: string, afterPower: number) =>
      (temperatureOf(board, heats, part, { ambient: 20, afterPower })?.celsius ?? 0) - 20;
    expect(at("T1", 120)).toBeGreaterThan(1);
    expect(at("T1", 120)).toBeLessThan(0.3 * at("U1", 120));
    expect(at("T1", 20) / at("T1", 120)).toBeLessThan(at("U1", 20) / at("U1", 120));
    expect(at("TH1", 120)).toBe(0);
  });

  it("under a spot wider than itself reads mostly board; a camera sees it", () => {
    const by = (how: "contact" | "spot" | "camera") => rise(0.2, "C44", { by: how, afterPower: 120 });
    expect(by("spot")).toBeLessThan(0.1 * by("camera"));
    expect(by("camera")).toBeGreaterThan(0.9 * by("contact"));
    const wide = (how: "spot" | "camera") => rise(0.5, "T1", { by: how, afterPower: 600 });
    expect(wide("spot")).toBeCloseTo(wide("camera"), 1);
  });

  it("never gets beyond what solder stands, however much it takes", () => {
    expect(rise(50, "C44", { afterPower: 600 })).toBeLessThan(201);
  });

  it("is not told of where the room is not known as surely as where it is", () => {
    const spread = (taken: Parameters<typeof temperatureOf>[3]) =>
      temperatureOf(board, [], "U3", taken)?.spread ?? 0;
    expect(spread({})).toBeGreaterThan(spread({ ambient: 24 }) + 1);
  });
});

describe("watts of the stages", () => {
  const watts = (names: string, part: string): number => outdoor.with(names).watts(part);

  it("bleeders by the bus, a diode of the bridge by the charging peaks, the fuse resistor by what the supply draws", () => {
    const bus = outdoor.with("").volts("PBUS", "NBUS")?.dc ?? 0;
    expect(watts("", "R9")).toBeCloseTo((bus / 2) ** 2 / 150_000, 2);
    const supply = outdoor.with("").feedAmps?.amps ?? 0;
    expect(watts("", "BR1")).toBeGreaterThan(0.005);
    expect(watts("", "BR1")).toBeLessThan(2 * 1.2 * supply);
    expect(watts("", "R28")).toBeLessThan(0.05);
  });

  it("a regulator's drop times its amps; a coil its volts squared over its ohms, once pulled in", () => {
    const five = outdoor.with("").rails.find((rail) => rail.name === "V5");
    expect(watts("", "U3")).toBeCloseTo((12 - 5) * (five?.amps ?? 0), 1);
    expect(watts("", "K1")).toBeCloseTo(144 / 360, 2);
    expect(watts("K1.coil:open", "K1")).toBeLessThan(0.01);
  });

  it("a short across a rail takes what the regulator's heat lets through", () => {
    expect(watts("C44:short@2", "C44")).toBeGreaterThan(0.2);
    expect(watts("", "C44")).toBe(0);
  });
});

describe("warmth as the board makes it", () => {
  it("all ceramics of a rail beep and one is shorted: it is 20 K over the controller and the others across the rail", () => {
    const state = outdoor.with("C45:short@1");
    const at = (part: string) =>
      state.temperature(part, { ambient: 22, by: "camera", afterPower: 120 })?.celsius ?? 0;
    const across = ["C43", "C44", "C46", "C47", "C48", "U5"];
    for (const part of across) expect(at("C45") - at(part)).toBeGreaterThan(20);
  });

  it("of a healthy board stays mild: nothing beyond 50 K over the room after two minutes", () => {
    const state = outdoor.with("");
    for (const part of board.parts.keys())
      expect((state.temperature(part, { ambient: 22, afterPower: 120 })?.celsius ?? 22) - 22).toBeLessThan(
        50,
      );
  });

  it("of a part that is off the board is not told", () => {
    const off = { lifted: new Set<string>(), off: new Set(["U3"]), clips: [], powered: true };
    expect(outdoor.with("", { kind: "mains" }, off).temperature("U3")).toBeNull();
  });
});
