import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { fixtureBoard } from "./drives.fixture.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";
import { priorTable } from "./prior-table.ts";

const moduleBoard = fixtureBoard("module");
const discreteBoard = fixtureBoard("discrete");

function rate(board: Board, from: string, to: string): number {
  const { faults, knockOns } = priorTable(board, "unknown", "dead");
  const name = (index: number): string => {
    const row = faults[index];
    return row === undefined ? "" : faultName(row.fault);
  };
  return knockOns
    .filter((one) => name(one.parent) === from && name(one.child) === to)
    .reduce((sum, one) => sum + one.rate, 0);
}

describe("knock-ons", () => {
  it("every rule fires on one of the drives", () => {
    const unfused = fixtureBoard("module", {
      R10: { kind: "link", pins: { 1: "PBUS", 2: "SUP_P" }, stage: "supply" },
    });
    const braked = fixtureBoard("module", {
      Q9: {
        kind: "igbt",
        pins: { g: "G_BR", c: "BRAKE", e: "NBUS" },
        stage: "chopper",
        value: { volts: 600 },
      },
      R90: { kind: "resistor", pins: { 1: "PBUS", 2: "BRAKE" }, stage: "chopper", value: { ohms: 100 } },
      C90: { kind: "capacitor", pins: { plus: "PBUS", minus: "BUS_M" }, stage: "bus" },
      C91: { kind: "capacitor", pins: { plus: "BUS_M", minus: "NBUS" }, stage: "bus" },
    });
    const fired = new Set(
      [moduleBoard, discreteBoard, unfused, braked].flatMap((board) =>
        priorTable(board, "water", "dead").knockOns.map((one) => one.rule),
      ),
    );
    const silent = KNOCK_ON_RULES.map((rule) => rule.id).filter((id) => !fired.has(id));
    expect(silent).toEqual([]);
  });

  it("point from one fault to another of the table, never to the same place", () => {
    for (const board of [moduleBoard, discreteBoard]) {
      const { faults, knockOns } = priorTable(board, "unknown", "dead");
      for (const { parent, child, rate: size } of knockOns) {
        expect(faults[parent]?.site).not.toBe(faults[child]?.site);
        expect(size).toBeGreaterThan(0);
        expect(size).toBeLessThanOrEqual(2);
      }
    }
  });

  it("a shorted upper switch takes the lower one of its own leg; another leg only inside one module", () => {
    expect(rate(moduleBoard, "M1.up:short", "M1.un:short")).toBeGreaterThan(0.5);
    expect(rate(moduleBoard, "M1.up:short", "M1.vn:short")).toBeLessThan(0.5);
    expect(rate(discreteBoard, "Q2.ce:short", "Q3.ce:short")).toBeGreaterThan(0.5);
    expect(rate(discreteBoard, "Q2.ce:short", "Q5.ce:short")).toBe(0);
  });

  it("a shorted switch takes its own gate resistor, clamp and driver", () => {
    expect(rate(discreteBoard, "Q2.ce:short", "R80:open")).toBeGreaterThan(0.2);
    expect(rate(discreteBoard, "Q2.ce:short", "Z80:short")).toBeGreaterThan(0.2);
    expect(rate(discreteBoard, "Q2.ce:short", "U40.ho:short")).toBeGreaterThan(0.1);
    expect(rate(discreteBoard, "Q2.ce:short", "R82:open")).toBe(0);
  });

  it("a driver that died leaves its switch to short, not another leg's", () => {
    expect(rate(discreteBoard, "U40.ho:short", "Q2.ce:short")).toBeGreaterThan(0);
    expect(rate(discreteBoard, "U40.ho:short", "Q4.ce:short")).toBe(0);
  });

  it("a shorted varistor opens the fuse; a bus short too, but seldom where a PTC stood in its path", () => {
    const ptc = { kind: "ptc", pins: { 1: "L_F", 2: "L_B" }, stage: "inrush", value: { ohms: 47 } };
    const limited = fixtureBoard("module", { NTC1: ptc });
    expect(rate(moduleBoard, "RV1:short", "F1:open")).toBeGreaterThan(1);
    expect(rate(moduleBoard, "C1:short", "F1:open")).toBeGreaterThan(1);
    expect(rate(limited, "C1:short", "F1:open")).toBeLessThan(0.5);
    expect(rate(limited, "RV1:short", "F1:open")).toBeGreaterThan(1);
  });

  it("a supply switch that shorts opens its fuse resistor and reaches the feedback opto", () => {
    expect(rate(moduleBoard, "U10.ds:short", "R10:open")).toBeGreaterThan(0.5);
    expect(rate(moduleBoard, "U10.ds:short", "OC1.out:short")).toBeGreaterThan(0.1);
  });

  it("an open feedback over-volts what hangs on each rail", () => {
    expect(rate(moduleBoard, "OC1.led:open", "U20.supply:short@5")).toBeGreaterThan(0.05);
    expect(rate(moduleBoard, "OC1.led:open", "Z10:short")).toBeGreaterThan(0.1);
  });

  it("a weak leak breaks nothing", () => {
    const { faults, knockOns } = priorTable(discreteBoard, "water", "dead");
    for (const { parent } of knockOns) {
      const fault = faults[parent]?.fault;
      if (fault?.mode === "leaky") expect(fault.value ?? 1000).toBeLessThanOrEqual(2000);
    }
  });
});
