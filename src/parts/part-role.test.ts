import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { roleOf } from "./part-role.ts";
import { wantedAt } from "./wanted.ts";

type Raw = Record<string, Record<string, unknown>>;

function load(more: Raw = {}): Board {
  const raw = smallDrive();
  Object.assign(raw.parts, more);
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function partOf(board: Board, ref: string) {
  const part = board.parts.get(ref);
  if (part === undefined) throw new Error(`no ${ref}`);
  return part;
}

function role(board: Board, ref: string): string {
  return roleOf(board, deriveRoles(board), partOf(board, ref));
}

/** A boost stage, a supply and what belongs to it, beside the small drive. */
const MORE: Raw = {
  Q9: { kind: "igbt", pins: { g: "G_PFC", c: "SW", e: "NBUS" }, value: { volts: 650, amps: 40 } },
  L9: { kind: "inductor", pins: { "1": "BR_P", "2": "SW" } },
  D9: { kind: "diode", pins: { a: "SW", k: "PBUS" }, value: { type: "fast", volts: 600 } },
  D10: { kind: "diode", pins: { a: "BR_P", k: "PBUS" }, value: { type: "rectifier", volts: 1000 } },
  D11: { kind: "diode", pins: { a: "DRAIN", k: "CLAMP" }, value: { type: "fast", volts: 1000 } },
  R11: { kind: "resistor", pins: { "1": "CLAMP", "2": "PBUS" }, value: { ohms: 100_000, watts: 2 } },
  D12: { kind: "diode", pins: { a: "BS", k: "VB_U" }, value: { type: "fast", volts: 600 }, stage: "drive" },
  C11: {
    kind: "capacitor",
    pins: { plus: "VCC", minus: "NBUS" },
    value: { farads: 33e-6, volts: 35, type: "electrolytic" },
  },
  C12: {
    kind: "capacitor",
    pins: { plus: "L_F", minus: "PE" },
    value: { farads: 3.3e-9, volts: 400, type: "ceramic" },
  },
  R21: { kind: "resistor", pins: { "1": "PBUS", "2": "VS1" }, value: { ohms: 470_000 } },
  R22: { kind: "resistor", pins: { "1": "VS1", "2": "VS2" }, value: { ohms: 470_000 } },
  R23: { kind: "resistor", pins: { "1": "VS2", "2": "SENSE" }, value: { ohms: 470_000 } },
  R24: { kind: "resistor", pins: { "1": "SENSE", "2": "NBUS" }, value: { ohms: 12_000 } },
  R25: {
    kind: "resistor",
    pins: { "1": "PBUS", "2": "FEED" },
    value: { ohms: 4.7, watts: 1 },
    stage: "supply",
  },
  C13: {
    kind: "capacitor",
    pins: { plus: "PBUS", minus: "NBUS" },
    value: { farads: 470e-6, volts: 450, type: "electrolytic" },
  },
  C14: {
    kind: "capacitor",
    pins: { plus: "FEED", minus: "NBUS" },
    value: { farads: 4.7e-6, volts: 450, type: "electrolytic" },
    stage: "supply",
  },
  Q10: { kind: "igbt", pins: { g: "G_PFC2", c: "SW", e: "NBUS" }, value: { volts: 650, amps: 40 } },
};

describe("the role of a part that may be exchanged", () => {
  const board = load(MORE);
  it.each([
    ["F1", "fuse"],
    ["CX1", "X capacitor"],
    ["NTC1", "inrush part"],
    ["K1", "relay"],
    ["BR1", "bridge"],
    ["C13", "bus capacitor"],
    ["C1", "bus capacitor"],
    ["C14", "bus capacitor"],
    ["C3", "film capacitor"],
    ["Q1", "motor switch"],
    ["Q4", "motor switch"],
    ["Q9", "boost switch"],
    ["D9", "boost diode"],
    ["D10", "mains diode"],
    ["D11", "clamp diode"],
    ["D12", "bootstrap diode"],
    ["D1", "secondary diode"],
    ["DZ1", "gate clamp"],
    ["RG1", "resistor"],
    ["RS1", "shunt"],
    ["C4", "rail capacitor"],
    ["C5", "ceramic"],
    ["C11", "supply pin capacitor"],
    ["C12", "Y capacitor"],
    ["R21", "high-voltage resistor"],
    ["R22", "high-voltage resistor"],
    ["R23", "high-voltage resistor"],
    ["R24", "resistor"],
    ["R25", "fuse resistor"],
    ["U1", "off-line switch"],
    ["U2", "regulator"],
    ["U3", "controller"],
    ["U4", "shunt reference"],
    ["U5", "chip"],
    ["L1", "other"],
  ])("%s is the %s", (ref, expected) => {
    expect(role(board, ref)).toBe(expected);
  });

  it("comes with its set: a motor switch with the other five, a bus capacitor with its bank", () => {
    expect(wantedAt(board, partOf(board, "Q1"), null).alike).toEqual(["Q4", "Q2", "Q5", "Q3", "Q6"]);
    expect(wantedAt(board, partOf(board, "C13"), null).alike).toEqual(["C1", "C2"]);
    expect(wantedAt(board, partOf(board, "C14"), null).alike).toEqual([]);
  });

  it("comes with the switch that shares its current, whatever gate that has", () => {
    expect(wantedAt(board, partOf(board, "Q9"), null).parallel).toEqual(["Q10"]);
    expect(wantedAt(board, partOf(board, "Q1"), null).parallel).toEqual([]);
  });

  it("takes the board file's values, and what that leaves open from the original's entry", () => {
    const original = {
      name: "an IGBT",
      kind: "igbt",
      ratings: { volts: 650, gateCoulombs: 1e-7, copack: false },
      source: null,
    } as const;
    const wanted = wantedAt(board, partOf(board, "Q1"), original);
    expect(wanted.ratings).toMatchObject({ volts: 600, amps: 20, gateCoulombs: 1e-7, copack: false });
    expect(wanted.name).toBe("an IGBT");
    expect(wantedAt(board, partOf(board, "Q1"), null).ratings.copack).toBe(true);
  });
});
