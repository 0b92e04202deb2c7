import { describe, expect, it } from "vitest";
import type { Board } from "./board.ts";
import { parseBoard } from "./parse-board.ts";
import { parseFault } from "./parse-fault.ts";
import { railGroups, railShort } from "./rail-groups.ts";
import { smallDrive } from "./small-drive.fixture.ts";

function boardWith(more: Record<string, unknown> = {}): Board {
  const raw = smallDrive() as { parts: Record<string, unknown> };
  const parsed = parseBoard({ ...raw, parts: { ...raw.parts, ...more } });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function groupOf(board: Board, name: string) {
  const group = railGroups(board).find((one) => one.name === name);
  if (group === undefined) throw new Error(`no rail ${name}`);
  return group;
}

const behind = {
  L9: { kind: "inductor", pins: { "1": "V5", "2": "V5B" }, value: { henries: 1e-6, ohms: 0.1 } },
  C9: { kind: "capacitor", pins: { plus: "V5B", minus: "NBUS" }, value: { farads: 1e-7, type: "ceramic" } },
  L8: { kind: "inductor", pins: { "1": "V15", "2": "V5B" }, value: { henries: 1e-6, ohms: 0.1 } },
};

describe("a rail as whoever looks for its short sees it", () => {
  it("has across it what joins it to its 0 V: capacitors, and chips by their supply", () => {
    const { members, cuts } = groupOf(boardWith(), "V5");
    expect(members.map(({ part, junction }) => [part.ref, junction])).toEqual([
      ["U2", "outgnd"],
      ["C5", null],
      ["U3", "supply"],
    ]);
    expect(cuts).toEqual([]);
  });

  it("goes on behind a bead, at which it can be cut, and never into another rail", () => {
    const board = boardWith(behind);
    const { members, cuts } = groupOf(board, "V5");
    expect(members.find(({ part }) => part.ref === "C9")?.net).toBe("V5B");
    expect(cuts.map(({ part }) => part.ref)).toEqual(["L9"]);
    expect(members.some(({ net }) => net === "V15")).toBe(false);
  });

  it("is shorted by a part across it, not by an open one, a leak of kilohms, or a short elsewhere", () => {
    const board = boardWith(behind);
    const shorts = ["C9:short", "U3.supply:short@10", "C9:open", "C9:leaky@5000", "C4:short"].map((text) => {
      const fault = parseFault(text, board);
      if (!fault.ok) throw new Error(fault.problem);
      return railShort(groupOf(board, "V5"), fault.value)?.member?.part.ref ?? null;
    });
    expect(shorts).toEqual(["C9", "U3", null, null, null]);
  });
});
