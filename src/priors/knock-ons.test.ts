import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { deriveRoles } from "../board/roles.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { fixtureBoard } from "./drives.fixture.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";
import { priorTable } from "./prior-table.ts";

const moduleBoard = fixtureBoard("module");
const discreteBoard = fixtureBoard("discrete");
const hob = shippedBoard("induction-hob");

function shippedBoard(id: string): Board {
  const parsed = parseBoard(SHIPPED.find((one) => one.id === id)?.board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

/** How strongly one fault brings another, all the resistances together that the other may come with. */
function rate(board: Board, from: string, to: string): number {
  const { faults, knockOns } = priorTable(board, "unknown", "dead");
  const name = (index: number): string => {
    const row = faults[index];
    return row === undefined ? "" : faultName(row.fault);
  };
  return knockOns
    .filter((one) => name(one.parent) === from && faults[one.child]?.reportAs === to)
    .reduce((sum, one) => sum + one.rate, 0);
}

describe("knock-ons", () => {
  it("every rule fires on one of the drives or on the hob", () => {
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
      [moduleBoard, discreteBoard, unfused, braked, hob].flatMap((board) =>
        priorTable(board, "water", "dead").knockOns.map((one) => one.rule),
      ),
    );
    const silent = KNOCK_ON_RULES.map((rule) => rule.id).filter((id) => !fired.has(id));
    expect(silent).toEqual([]);
  });

  it("a shorted supply switch burns the low resistor that feeds its control, not the divider of its feedback", () => {
    const drive = shippedBoard("small-frequency-drive-3ph");
    expect(rate(drive, "U2.ds:short", "R33:open")).toBeCloseTo(0.15, 9);
    expect(rate(drive, "U2.ds:short", "R34:open")).toBe(0);
  });

  it("point from one fault to another of the table, never to the same place", () => {
    for (const board of [moduleBoard, discreteBoard, hob]) {
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
    expect(rate(moduleBoard, "OC1.led:open", "U20.supply:short")).toBeGreaterThan(0.05);
    expect(rate(moduleBoard, "OC1.led:open", "Z10:short")).toBeGreaterThan(0.1);
  });

  it("a weak leak breaks nothing", () => {
    const { faults, knockOns } = priorTable(discreteBoard, "water", "dead");
    for (const { parent } of knockOns) {
      const fault = faults[parent]?.fault;
      if (fault?.mode === "leaky") expect(fault.value ?? 1000).toBeLessThanOrEqual(2000);
    }
  });

  it("a hob's shorted switch takes fuse, bridge, its gate and its drive, and nothing of a small supply that is fed elsewhere", () => {
    const from = (to: string) => rate(hob, "Q1.ce:short", to);
    expect(from("F1:open")).toBeGreaterThan(1);
    for (const junction of ["ac1plus", "ac2plus", "minusac1", "minusac2"])
      expect(from(`BR1.${junction}:short`)).toBeGreaterThan(0.1);
    for (const to of ["Q1.ge:short", "ZD1:short", "R7:open", "Q2.ce:short", "Q3.ce:short"])
      expect([to, from(to) > 0]).toEqual([to, true]);
    expect(from("U1.ds:short")).toBe(0);
  });

  it("weak film, a drifted chain or a sagging drive rail kill a hob's switch; a drive's bus film does not", () => {
    const roles = deriveRoles(hob).resonants[0];
    expect(roles?.sensing.length).toBeGreaterThanOrEqual(4);
    const films = [...(roles?.capacitors ?? []), ...(roles?.busCapacitors ?? [])];
    expect(films).toHaveLength(2);
    for (const ref of [...films, ...(roles?.sensing ?? [])])
      expect([ref, rate(hob, `${ref}:drift`, "Q1.ce:short") > 0]).toEqual([ref, true]);
    expect(rate(hob, "C13:drift", "Q1.ce:short")).toBeGreaterThan(0);
    expect(rate(discreteBoard, "C2:open", "Q2.ce:short")).toBe(0);
  });

  it("a shorted supply switch opens the fuse resistor before it, whether bus or mains diodes feed that", () => {
    const feed = [...hob.parts.values()].find((part) => part.role === "fuse resistor")?.ref;
    expect(rate(hob, "U1.ds:short", `${feed}:open`)).toBeGreaterThan(0.5);
    expect(rate(hob, "U1.ds:short", "F1:open")).toBe(0);
  });
});
