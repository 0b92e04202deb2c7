import { describe, expect, it } from "vitest";
import { SHIPPED } from "../shipped/shipped.ts";
import type { Board } from "./board.ts";
import { parseBoard } from "./parse-board.ts";
import { deriveRoles } from "./roles.ts";
import { rolesInWords } from "./roles-in-words.ts";

type Raw = { parts: Record<string, Record<string, unknown>> };

function shipped(id: string, change: (raw: Raw) => void = () => undefined): Board {
  const raw = structuredClone(SHIPPED.find((one) => one.id === id)?.board) as unknown as Raw;
  change(raw);
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const bare = (raw: Raw): void => {
  for (const part of Object.values(raw.parts)) {
    delete part.stage;
    delete part.role;
  }
};

describe("a single-switch resonant inverter", () => {
  it("is found by its circuit: switch, coil to the bus, capacitor across the coil, chains to the comparator", () => {
    const [found, ...others] = deriveRoles(shipped("induction-hob")).resonants;
    expect(others).toEqual([]);
    expect(found).toMatchObject({ coil: "L2", capacitors: ["C7"], busCapacitors: ["C6"] });
    expect(found?.switch).toMatchObject({ part: "Q1", high: "SW", low: "NBUS", gate: "G_Q" });
    const board = shipped("induction-hob");
    expect(found?.sensing.map((ref) => board.parts.get(ref)?.value.ohms)).toEqual(Array(4).fill(470_000));
  });

  it("does not depend on what the board says of stages and roles", () => {
    expect(rolesInWords(shipped("induction-hob", bare))).toEqual(rolesInWords(shipped("induction-hob")));
  });

  it("may have its capacitor across the switch instead of the coil", () => {
    const board = shipped("induction-hob", ({ parts }) => {
      parts.C7.pins = { plus: "SW", minus: "NBUS" };
    });
    expect(deriveRoles(board).resonants[0]?.capacitors).toEqual(["C7"]);
  });

  it("is no boost and no leg: those have a diode to the bus, or a second switch", () => {
    for (const id of ["greenhouse-fan-drive", "outdoor-unit-inverter"])
      expect(deriveRoles(shipped(id)).resonants).toEqual([]);
    const half = shipped("induction-hob", ({ parts }) => {
      parts.Q9 = { kind: "igbt", pins: { g: "G_9", c: "PBUS", e: "SW" }, value: { volts: 600 } };
    });
    expect(deriveRoles(half).resonants).toEqual([]);
    expect(deriveRoles(half).motorSwitches.map((one) => one.part)).toEqual(["Q9", "Q1"]);
  });
});

describe("a current transformer in the line", () => {
  it("carries the mains on to the bridge, and the small supply's transformer does not", () => {
    const { line } = deriveRoles(shipped("induction-hob"));
    expect(line).toContain("L_B");
    for (const net of ["CT_A", "CT_B", "DRAIN", "SUP_P"]) expect(line).not.toContain(net);
  });
});
