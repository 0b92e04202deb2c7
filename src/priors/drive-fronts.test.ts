/** Fronts that differ from the boosted single-phase one: charge resistor behind the bridge, brake switch, three wires of mains, loads on the line. */
import { describe, expect, it } from "vitest";
import type { Board } from "../board/board.ts";
import { faultName } from "../board/fault.ts";
import { parseBoard } from "../board/parse-board.ts";
import { parseFaultList } from "../board/parse-fault.ts";
import { SHIPPED } from "../shipped/shipped.ts";
import { acrossMains, limitsBridge, limitsShorts, viewOf } from "./circuit-view.ts";
import { boardEffect } from "./power-effects.ts";
import { observedLikelihood } from "./power-outcomes.ts";
import { priorTable } from "./prior-table.ts";

function shipped(id: string, without: readonly string[] = []): Board {
  const content = SHIPPED.find((one) => one.id === id)?.board;
  const parts = Object.entries(content?.parts ?? {}).filter(([ref]) => !without.includes(ref));
  const parsed = parseBoard({ ...content, parts: Object.fromEntries(parts) });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const washer = shipped("washing-machine-drive");
const drive = shipped("small-frequency-drive");
const three = shipped("small-frequency-drive-3ph");

function effect(board: Board, text: string, off: readonly string[] = []): string {
  const parsed = parseFaultList(text, board);
  if (!parsed.ok) throw new Error(parsed.problem);
  return boardEffect(board, parsed.value, new Set(off));
}

function rate(board: Board, from: string, to: string): number {
  const { faults, knockOns } = priorTable(board, "unknown", "dead");
  const name = (index: number): string => faultName(faults[index].fault);
  return knockOns
    .filter((one) => name(one.parent) === from && name(one.child) === to)
    .reduce((sum, one) => sum + one.rate, 0);
}

/** The brake resistor, and capacitors that hold the bus. */
const [BRAKE, UPPER, LOWER] = ["R25", "C7", "C8"];

describe("a charge resistor between bridge and bus", () => {
  it("holds back a short of the bus, not one of the bridge before it", () => {
    expect([limitsShorts(viewOf(drive)), limitsBridge(viewOf(drive))]).toEqual([true, false]);
    expect(effect(drive, "C5:short")).toBe("bus-short");
    expect(effect(drive, "BR1.ac1plus:short")).toBe("line-short");
    expect(effect(drive, "C9:short")).toBe("line-short");
    expect(rate(drive, "C5:short", "F1:open")).toBeLessThan(0.5);
    for (const text of ["BR1.ac1plus:short", "C9:short"])
      expect(rate(drive, text, "F1:open")).toBeGreaterThan(1);
  });

  it("burns open behind a shorted bus or leg, not with a shorted bridge", () => {
    expect(rate(drive, "C5:short", "R9:open")).toBeGreaterThan(0);
    expect(rate(drive, "M1.up:short", "R9:open")).toBeGreaterThan(0);
    expect(rate(drive, "BR1.ac1plus:short", "R9:open")).toBe(0);
  });

  it("leaves the board dead when open, running for a while when its relay never closes or never opens", () => {
    expect(effect(drive, "R9:open")).toBe("feed-open");
    for (const text of ["K1.coil:open", "K1.contact:open", "K1.contact:short", "R9:short"])
      expect(effect(drive, text)).toBe("weak");
    expect(rate(drive, "K1.contact:open", "R9:open")).toBeGreaterThan(0);
  });
});

describe("an NTC alone", () => {
  it("limits no short, and stops everything when open", () => {
    expect(limitsShorts(viewOf(washer))).toBe(false);
    expect(effect(washer, "RT1:open")).toBe("feed-open");
    expect(rate(washer, "C5:short", "F1:open")).toBeGreaterThan(1);
  });
});

describe("a brake switch", () => {
  it("that shorts puts its resistor across the bus and cooks it, and is no short of the bus", () => {
    expect(effect(drive, "Q2.ce:short")).toBe("bus-leak");
    expect(rate(drive, "Q2.ce:short", `${BRAKE}:open`)).toBeGreaterThan(0);
    expect(rate(drive, "Q2.ce:short", "F1:open")).toBe(0);
  });

  it("does nothing where no resistor is connected", () => {
    const bare = shipped("small-frequency-drive", [BRAKE]);
    expect(effect(bare, "Q2.ce:short")).toBe("none");
    expect(rate(bare, "Q2.ce:short", "R9:open")).toBe(0);
  });

  it("that opens, or its resistor, leaves a drive that runs", () => {
    for (const text of ["Q2.ce:open", `${BRAKE}:open`, "R26:open"]) expect(effect(drive, text)).toBe("weak");
  });
});

describe("bus capacitors", () => {
  it("in series: one shorted leaves its partner the whole bus, both are a short", () => {
    expect(effect(three, `${UPPER}:short`)).toBe("bus-leak");
    expect(effect(three, `${UPPER}:short,${LOWER}:short`)).toBe("bus-short");
    expect(rate(three, `${UPPER}:short`, `${LOWER}:short`)).toBeGreaterThan(0.3);
    expect(rate(three, `${UPPER}:short`, "F1:open")).toBe(0);
  });

  it("one open is felt where it stands alone, in series or as half of a pair; one that has lost half of itself in a pair is not", () => {
    expect(effect(washer, "C5:open")).toBe("weak");
    expect(effect(three, `${LOWER}:open`)).toBe("weak");
    expect(effect(drive, "C5:open")).toBe("weak");
    expect(effect(drive, "C5:drift")).toBe("none");
  });
});

describe("three wires of mains", () => {
  it("run on two, and stop when a second is open", () => {
    expect(effect(three, "F1:open")).toBe("weak");
    expect(effect(three, "F1:open,LF1:open")).toBe("weak");
    expect(effect(three, "F1:open,F2:open")).toBe("input-open");
    expect(effect(three, "LF2:open", ["F3"])).toBe("input-open");
    expect(effect(drive, "F1:open")).toBe("input-open");
  });

  it("do not bring a board in dead by one open fuse", () => {
    const parsed = parseFaultList("F1:open", three);
    if (!parsed.ok) throw new Error(parsed.problem);
    const runs = (board: Board): number => observedLikelihood(board, parsed.value, { feed: "mains" }, "runs");
    expect(runs(three)).toBeGreaterThan(0.4);
    expect(runs(drive)).toBeLessThan(0.1);
  });

  it("have a bridge that lives while one junction to plus and one from minus of another wire are whole", () => {
    expect(effect(three, "BR1.ac1plus:open,BR1.ac2plus:open")).toBe("weak");
    expect(effect(three, "BR1.ac1plus:open,BR1.ac2plus:open,BR1.ac3plus:open")).toBe("feed-open");
    expect(effect(drive, "BR1.ac1plus:open,BR1.ac2plus:open")).toBe("feed-open");
    expect(effect(drive, "BR1.ac1plus:open,BR1.minusac2:open")).toBe("weak");
    expect(effect(drive, "BR1.ac1plus:open,BR1.minusac1:open")).toBe("feed-open");
  });

  it("are shorted by a varistor or capacitor between any two of them; one to earth trips the breaker", () => {
    for (const text of ["RV1:short", "RV2:short", "RV3:short", "C1:short", "C5:short"])
      expect(effect(three, text)).toBe("line-short");
    for (const text of ["RV4:short", "C2:short"]) expect(effect(three, text)).toBe("earth-short");
  });

  it("lose a short between two of them with either one's fuse, and run on the rest", () => {
    expect(effect(three, "RV3:short,F1:open")).toBe("weak");
    expect(effect(three, "RV3:short,F2:open")).toBe("line-short");
    expect(effect(three, "RV3:short,LF1:open")).toBe("line-short");
    expect(effect(three, "RV3:short,F1:open,F3:open")).toBe("input-open");
    expect(effect(drive, "RV1:short,F1:open")).toBe("input-open");
  });

  it("have a fuse each, opened by a varistor on its own wire", () => {
    expect(rate(three, "RV3:short", "F1:open")).toBeGreaterThan(1);
    expect(rate(three, "RV3:short", "F3:open")).toBeGreaterThan(1);
    expect(rate(three, "RV3:short", "F2:open")).toBe(0);
    expect(rate(drive, "RV1:short", "F1:open")).toBeGreaterThan(1);
    expect(rate(drive, "RV2:short", "F1:open")).toBe(0);
  });
});

describe("loads on the line", () => {
  it("do not make its two wires one", () => {
    const view = viewOf(washer);
    expect(acrossMains(view, ["L_F", "N_C"])).toBe(true);
    expect(acrossMains(view, ["L_F", "L_B"])).toBe(false);
    for (const net of ["O_PUMP", "O_HEATER", "L_LOCK"]) expect(view.poleOf.has(net)).toBe(false);
  });

  it("that short take no line fuse at switch-on: the relay or triac before them is open", () => {
    for (const text of ["R41:short", "L1:short", "C43:short"])
      expect(effect(washer, text)).not.toBe("line-short");
  });
});
