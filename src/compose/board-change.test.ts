/** One change to a board of one's own at a time, as the page sends it. */

import { describe, expect, it } from "vitest";
import { identityOfContent } from "../board/board-identity.ts";
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import { type BoardChange, changedBoard, ownBoardView } from "./board-change.ts";
import type { BoardContent } from "./edit-board.ts";

const BOARD: BoardContent = {
  format: "faultwright-board/1",
  name: "pump",
  family: "pump",
  supply: { kind: "dc", volts: 24, at: ["A", "B"] },
  zero: "B",
  parts: {
    R1: {
      kind: "resistor",
      pins: { "1": "A", "2": "M" },
      value: { ohms: 4700, tolerance: 0.05 },
      assumed: true,
    },
    C1: { kind: "capacitor", pins: { plus: "M", minus: "B" }, value: { farads: 330e-6, type: "film" } },
    Q1: { kind: "igbt", pins: { g: "M", c: "A", e: "B" } },
  },
};

function changedTo(change: BoardChange, board = BOARD) {
  const changed = changedBoard(board, change);
  if (!changed.ok) throw new Error(changed.problem);
  const view = ownBoardView(changed.value);
  if (!view.ok) throw new Error(view.problem);
  return { content: changed.value, view: view.value };
}
const partOf = (content: BoardContent, ref: string) => (content.parts as Record<string, unknown>)[ref];

describe("a change to a board", () => {
  it.each([
    ["ohms", "10k", { ohms: 10_000, tolerance: 0.05 }],
    ["ohms", "4R7", { ohms: 4.7, tolerance: 0.05 }],
    ["tolerance", "1 %", { ohms: 4700, tolerance: 0.01 }],
    ["watts", "0.5", { ohms: 4700, tolerance: 0.05, watts: 0.5 }],
    ["ohms", "", { tolerance: 0.05 }],
  ])("sets %s as somebody types it: %s", (field, text, value) => {
    expect(partOf(changedTo({ do: "value", ref: "R1", field, text }).content, "R1")).toMatchObject({ value });
  });

  it("takes a part's last value away, a word or a yes where the kind has them, and refuses what is no figure", () => {
    const bare = changedTo({ do: "value", ref: "Q1", field: "diode", text: "false" });
    expect(partOf(bare.content, "Q1")).toMatchObject({ value: { diode: false } });
    const none = changedTo({ do: "value", ref: "Q1", field: "diode", text: "" }, bare.content);
    expect(partOf(none.content, "Q1")).toEqual((BOARD.parts as Record<string, unknown>).Q1);
    const odd = changedBoard(BOARD, { do: "value", ref: "R1", field: "ohms", text: "many" });
    expect(odd.ok ? "" : plain(odd.problem)).toMatch(/^R1: ohms: "many" is no figure/);
    expect(changedBoard(BOARD, { do: "value", ref: "C1", field: "type", text: "paper" }).ok).toBe(false);
  });

  it("marks seen and not seen, names the board, adds, re-wires, renames and removes", () => {
    expect(partOf(changedTo({ do: "seen", ref: "R1", seen: true }).content, "R1")).not.toHaveProperty(
      "assumed",
    );
    expect(partOf(changedTo({ do: "seen", ref: "C1", seen: false }).content, "C1")).toMatchObject({
      assumed: true,
    });
    expect(changedTo({ do: "name", name: " pump, 2 kW " }).view.name).toBe("pump, 2 kW");
    expect(changedBoard(BOARD, { do: "name", name: " " }).ok).toBe(false);
    const once = changedTo({ do: "name", name: "pump, 2 kW" }).content;
    const twice = changedTo({ do: "name", name: "GF-12" }, once).content;
    expect([once, twice].map((content) => identityOfContent(content))).toEqual([BOARD.name, BOARD.name]);
    expect(parseBoard(twice)).toMatchObject({ ok: true, value: { name: "GF-12", identity: BOARD.name } });
    const added = changedTo({ do: "add", ref: "D1", kind: "diode", pins: { a: "M", k: "A" } });
    expect(added.view.parts.map(({ ref }) => ref)).toEqual(["R1", "C1", "Q1", "D1"]);
    expect(
      changedTo({ do: "rewire", place: "D1.a", net: "B" }, added.content).view.parts[3]?.pins[0]?.net,
    ).toBe("B");
    expect(changedTo({ do: "rename-net", from: "M", to: "MID" }).view.nets.map(({ name }) => name)).toContain(
      "MID",
    );
    expect(changedTo({ do: "rename-part", from: "R1", to: "R101" }).view.parts[0]?.ref).toBe("R101");
    expect(changedTo({ do: "remove", ref: "R1" }).view.parts).toHaveLength(2);
  });

  it("shows values as one would type them, and a typed one is the very number again", () => {
    const { view } = changedTo({ do: "seen", ref: "R1", seen: true });
    const shown = (index: number) =>
      Object.fromEntries((view.parts[index]?.values ?? []).map(({ field, text }) => [field, text]));
    expect(shown(0)).toEqual({ ohms: "4.7k", tolerance: "50m", watts: "" });
    expect(shown(1)).toMatchObject({ farads: "330u", type: "film" });
    for (const text of ["0.1", "3.3n", "1e9", "47p", "2.2M", "0.0075"]) {
      const { content, view: again } = changedTo({ do: "value", ref: "R1", field: "ohms", text });
      const typed = again.parts[0]?.values[0]?.text ?? "";
      expect(changedTo({ do: "value", ref: "R1", field: "ohms", text: typed }).content).toEqual(content);
    }
  });
});
