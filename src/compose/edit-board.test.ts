/** Changes by hand to a board file: the file stays whole, or the change is refused in one line. */

import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import type { Parsed } from "../units/outcome.ts";
import { composeBoard } from "./compose-board.ts";
import { addPart, type BoardContent, markSeen, removePart, rename, rewire } from "./edit-board.ts";

const content = ((): BoardContent => {
  const made = composeBoard({});
  if (!made.ok) throw new Error(made.problem);
  return made.value.board;
})();

function done(changed: Parsed<BoardContent>): BoardContent {
  if (!changed.ok) throw new Error(changed.problem);
  return changed.value;
}

function board(of: BoardContent) {
  const parsed = parseBoard(of);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

describe("a board file changed by hand", () => {
  it("comes back byte for byte where a name is given and taken back, part or net", () => {
    for (const [from, to] of [
      ["U1", "IC301"],
      ["NBUS", "GND_P"],
      ["L_IN", "X1-1"],
      ["V5", "VDD"],
    ]) {
      const there = done(rename(content, from, to));
      const { parts, nets } = board(there);
      expect([from, parts.has(from) || nets.has(from)]).toEqual([from, false]);
      expect(JSON.stringify(done(rename(there, to, from)))).toBe(JSON.stringify(content));
    }
  });

  it("keeps a rail on its source and its net through both names", () => {
    const source = board(content).rails.find((rail) => rail.name === "V5")?.from ?? "";
    const renamed = board(done(rename(done(rename(content, source, "IC7")), "V5", "LOGIC")));
    expect(renamed.rails.find((rail) => rail.name === "V5")).toMatchObject({ from: "IC7", net: "LOGIC" });
  });

  it("loses a part with what only it held: a label, a point, the source of a rail", () => {
    const alone = done(addPart(content, "J9", { kind: "link", pins: { "1": "PBUS", "2": "SPARE" } }));
    const named = { ...alone, points: { TP9: { net: "SPARE" } }, nets: { SPARE: { label: "spare" } } };
    const off = done(removePart(named, "J9"));
    expect(off).toEqual({ ...content, points: {}, nets: {} });
    const source = board(content).rails.find((rail) => rail.name === "V5")?.from ?? "";
    expect(
      board(done(removePart(content, source))).rails.find((rail) => rail.name === "V5")?.from,
    ).toBeNull();
  });

  it("takes what good ones read along to a new name, and loses it with its place", () => {
    const read = { mode: "ohms", red: "R1.2", black: "NBUS", reading: 1000, spread: 0, count: 1 };
    const withRead = { ...content, references: [read] };
    const renamed = done(rename(done(rename(withRead, "R1", "R101")), "NBUS", "GND_P"));
    expect(renamed.references).toEqual([{ ...read, red: "R101.2", black: "GND_P" }]);
    expect(done(removePart(withRead, "R1")).references).toEqual([]);
    expect(done(removePart(withRead, "R2")).references).toEqual([read]);
  });

  it("moves one pin to another net and leaves the others", () => {
    const changed = board(done(rewire(content, "R1.2", "NBUS")));
    expect([...(changed.parts.get("R1")?.pins ?? [])]).toEqual([
      ["1", board(content).parts.get("R1")?.pins.get("1")],
      ["2", "NBUS"],
    ]);
  });

  it("takes a part that was looked at for seen", () => {
    expect(board(content).parts.get("F1")?.assumed).toBe(true);
    expect(board(done(markSeen(content, "F1"))).parts.get("F1")?.assumed).toBe(false);
  });
});

describe("a change that cannot be", () => {
  it.each([
    [rename(content, "U1", "U2"), /there is a part "U2" already/],
    [rename(content, "PBUSS", "P"), /no part or net "PBUSS"; did you mean "PBUS"/],
    [rename(content, "PBUS", "NBUS"), /there is a net "NBUS" already/],
    [rename(content, "PBUS", "bus plus"), /"bus plus" is not a name/],
    [addPart(content, "R1", { kind: "link", pins: { "1": "PBUS", "2": "NBUS" } }), /a part "R1" already/],
    [
      addPart(content, "R999", { kind: "resistor", pins: { a: "PBUS" } }),
      /parts\.R999\.pins\.a: a resistor has no such pin/,
    ],
    [
      removePart(content, "F1"),
      /^F1 holds the net "L_IN", on which the supply comes in; put another part on it first/,
    ],
    [removePart(content, "F99"), /there is no part "F99"/],
    [rewire(content, "R1.3", "NBUS"), /R1 has no pin "3"/],
    [rewire(content, "R1", "NBUS"), /"R1" is no pin; write it as Q1\.g/],
  ])("is refused in one line (%#)", (changed, words) => {
    expect(changed.ok ? "" : plain(changed.problem)).toMatch(words);
  });
});
