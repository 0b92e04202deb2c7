/**
 * What a meter shows on the shipped single-switch hob, cold. Values are derived from the parts named, or are common practice;
 * that one shorted switch makes bus and bridge read shorted until the coil is off is the plug test's rule, carried over.
 */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { asking, BARE, within } from "./on-the-bench.fixture.ts";

const parsed = parseBoard(SHIPPED.find(({ id }) => id === "induction-hob")?.board);
if (!parsed.ok) throw new Error(parsed.problem);
const board = parsed.value;
const ref = (role: string): string => {
  const found = [...board.parts.values()].find((part) => part.role === role);
  if (found === undefined) throw new Error(`the hob has no ${role}`);
  return found.ref;
};
const COIL = ref("work coil");
const TANK = ref("resonant capacitor");
const SWITCH = ref("resonant switch");
const ask = asking(board);
const coilOff = asking(board, { ...BARE, off: new Set([COIL]) });

describe("a healthy hob", () => {
  it("shows the switch's own diode from bus minus to either end of the coil, and nothing the other way", () => {
    for (const end of ["SW", "PBUS"]) {
      expect(within(ask("diode", "NBUS", end), 0.39, 0.45)).toBe(true);
      expect(ask("diode", end, "NBUS")).toBe("OL");
    }
  });

  it("shows that diode at the collector alone once the coil is off; the bridge's two in series stand at the bus", () => {
    expect(within(coilOff("diode", "NBUS", "SW"), 0.39, 0.45)).toBe(true);
    expect(within(coilOff("diode", "NBUS", "PBUS"), 0.8, 1)).toBe(true);
  });

  it("hides the resonant capacitor behind the coil, and shows its farads once the coil is off", () => {
    expect(ask("farads", `${TANK}.plus`, `${TANK}.minus`)).toBe("OL");
    expect(within(coilOff("farads", `${TANK}.plus`, `${TANK}.minus`), 0.26e-6, 0.29e-6)).toBe(true);
  });

  it("charges its small bus in far less than a second, where a drive's bus climbs for many", () => {
    expect(ask.whole("diode", "L_IN", "N_IN", "", 1).shown).toBe("OL");
  });

  it("has the same volts from both ends of the coil at the comparator: equal ratios of the two chains", () => {
    const ohms = (red: string, black: string) => coilOff.whole("ohms", red, black).raw;
    const lower = (net: string) => ohms(net, "NBUS");
    // 940 k over 10 k and 480 k over 5.1 k; each measured through what hangs on it
    expect(lower("SYN_SW") / lower("SYN_P")).toBeCloseTo(10 / 5.1, 1);
  });

  it("feeds its small supply through two diodes of its own, so the supply does not show at the bus", () => {
    for (const ac of ["L_B", "N_C"]) expect(within(ask("diode", ac, "SUP_P"), 0.42, 0.55)).toBe(true);
    expect(ask("diode", "PBUS", "SUP_P")).toBe("OL");
  });

  it("shows a gate clamp of 0.5 to 0.65 V, and 10 kohm the other way", () => {
    expect(within(ask("diode", "NBUS", "G_Q"), 0.5, 0.65)).toBe(true);
    expect(within(ask("ohms", "G_Q", "NBUS"), 9_800, 10_200)).toBe(true);
  });

  it("holds charge in its film bus, resonant capacitor, X capacitors and the small supply's own electrolytic", () => {
    const stores = storesOfCharge(board);
    expect(stores.map(({ part }) => part)).toContain(TANK);
    expect(stores.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(["film capacitor", "X capacitor", "supply capacitor"]),
    );
  });
});

describe("a fault of the hob", () => {
  it("a shorted switch reads as a shorted bus and a shorted bridge, until the coil is off", () => {
    const fault = `${SWITCH}.ce:short`;
    for (const plus of ["PBUS", "BR_P", "SW"])
      expect(within(ask("diode", plus, "NBUS", fault), 0, 0.01)).toBe(true);
    expect(within(coilOff("diode", "SW", "NBUS", fault), 0, 0.01)).toBe(true);
    for (const plus of ["PBUS", "BR_P"]) expect(coilOff("diode", plus, "NBUS", fault)).toBe("OL");
  });

  it("a shorted film bus does the same, and stays at the bus when the coil is off", () => {
    const film = board.parts.get("C6");
    expect([film?.kind, film?.pins.get("plus"), film?.value.type]).toEqual(["capacitor", "PBUS", "film"]);
    expect(within(coilOff("diode", "PBUS", "NBUS", "C6:short"), 0, 0.01)).toBe(true);
    expect(coilOff("diode", "SW", "NBUS", "C6:short")).toBe("OL");
  });

  it("behind a whole bridge it reads two diodes at the plug, both ways: no boost diode adds a third", () => {
    for (const [red, black] of [
      ["L_IN", "N_IN"],
      ["N_IN", "L_IN"],
    ])
      expect(within(ask("diode", red, black, `${SWITCH}.ce:short`), 0.9, 1.05)).toBe(true);
  });

  it("an open coil shows in ohms across it, a shorted resonant capacitor only once the coil is off", () => {
    expect(within(ask("ohms", "PBUS", "SW"), 0.05, 0.1)).toBe(true);
    expect(Number(ask("ohms", "PBUS", "SW", `${COIL}:open`))).toBeGreaterThan(10_000);
    expect(within(ask("ohms", "PBUS", "SW", `${TANK}:short`), 0, 0.1)).toBe(true);
    expect(within(coilOff("ohms", "PBUS", "SW", `${TANK}:short`), 0.15, 0.25)).toBe(true);
  });

  it("an open resistor of a collector chain does not show in diode mode and does in ohms", () => {
    const [first] = [...board.parts.values()].filter(
      ({ kind, pins }) => kind === "resistor" && pins.get("2") === "SYN_SW_1",
    );
    expect(first?.value.ohms).toBe(470_000);
    const open = `${first?.ref}:open`;
    expect(coilOff("diode", "SW", "SYN_SW", open)).toBe(coilOff("diode", "SW", "SYN_SW"));
    const ohms = (fault: string) => Number(coilOff("ohms", "SYN_SW_1", "SW", fault));
    expect(within(ohms(""), 200_000, 480_000)).toBe(true);
    expect(ohms(open)).toBeGreaterThan(1.5 * ohms(""));
  });

  it("a dead 18 V rail beeps at its ceramics and leaves 5 V behind the regulator's body", () => {
    const ceramic = [...board.parts.values()].find(
      ({ kind, value, pins }) =>
        kind === "capacitor" && value.type === "ceramic" && pins.get("plus") === "V18",
    );
    expect(ask("continuity", "V18", "NBUS", `${ceramic?.ref}:short`)).toBe("beep");
    expect(within(ask("diode", "V5", "NBUS", `${ceramic?.ref}:short`), 0.5, 0.6)).toBe(true);
  });
});
