import { describe, expect, it } from "vitest";
import type { BenchState } from "../bench/bench-state.ts";
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";
import { smallDrive } from "../board/small-drive.fixture.ts";
import { actionMinutes } from "./minutes.ts";
import { isObtainable, partPrice } from "./prices.ts";

function load(): Board {
  const raw = smallDrive();
  raw.parts.IPM1 = { kind: "module", pins: { p: "P", n: "N", u: "A", v: "B", w: "C" } };
  const legs = Object.fromEntries(["a", "b", "c", "d", "e"].map((pin) => [pin, `X${pin}`]));
  raw.parts.U9 = { kind: "ic", pins: { vcc: "V5", gnd: "NBUS", ...legs } };
  const parsed = parseBoard(raw);
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

const BOARD = load();
const BENCH: BenchState = { lifted: new Set(), off: new Set(), clips: [], powered: false };
const minutes = (action: Parameters<typeof actionMinutes>[2], bench = BENCH) =>
  actionMinutes(BOARD, bench, action);

function part(ref: string) {
  const found = BOARD.parts.get(ref);
  if (found === undefined) throw new Error(ref);
  return found;
}

describe("how long the hands take", () => {
  it("for a reading, a look, a clip, power and its end", () => {
    expect(minutes({ do: "measure", mode: "diode", red: "PBUS", black: "NBUS" })).toBe(0.4);
    expect(minutes({ do: "look", part: "C1", finding: "clean" })).toBe(0.2);
    expect(minutes({ do: "clip", at: ["PBUS", "NBUS"], ohms: 2200 })).toBe(0.5);
    expect(minutes({ do: "power", feed: "mains" })).toBe(3);
    expect(minutes({ do: "unpower" })).toBe(0.5);
    expect(minutes({ do: "note", text: "" })).toBe(0);
    expect(minutes({ do: "resolder", part: "C1" })).toBe(0);
  });

  it("for one leg, or half a minute where it comes off by a plug", () => {
    expect(minutes({ do: "lift", place: "Q1.c" })).toBe(3);
    expect(minutes({ do: "refit", place: "Q1.c" })).toBe(2);
    expect(minutes({ do: "lift", place: "M1.u" })).toBe(0.5);
    expect(minutes({ do: "refit", place: "M1.u" })).toBe(0.5);
  });

  it("for a part, by its size", () => {
    expect(["Q1", "U9", "IPM1", "U3"].map((ref) => minutes({ do: "remove", part: ref }))).toEqual([
      5, 8, 12, 12,
    ]);
    expect(["Q1", "U9", "IPM1", "U3"].map((ref) => minutes({ do: "replace", part: ref }))).toEqual([
      10, 13, 20, 20,
    ]);
    expect(minutes({ do: "restore", part: "IPM1" })).toBe(5);
  });

  it("for replacing a part that is off already, less its removal", () => {
    const off = { ...BENCH, off: new Set(["Q1", "IPM1", "BR1"]) };
    expect(minutes({ do: "replace", part: "Q1" }, off)).toBe(5);
    expect(minutes({ do: "replace", part: "IPM1" }, off)).toBe(8);
    expect(minutes({ do: "replace", part: "BR1" }, off)).toBe(4);
  });

  it("for a part that still sits on a donor board, with its removal there; one in a drawer is off already", () => {
    const donor = "heat pump 12";
    expect(minutes({ do: "replace", part: "Q1", with: "K40", used: true, from: { donor } })).toBe(10 + 5);
    expect(
      minutes({ do: "replace", part: "Q1", with: "K40", used: true, from: { donor, place: "shelf" } }),
    ).toBe(10);
  });

  it("for what comes off again at the close and goes back onto the shelf", () => {
    const close = { do: "close", verdict: "not-economic" } as const;
    expect(minutes(close)).toBe(0);
    expect(minutes({ ...close, shelved: ["Q1", "IPM1"] })).toBe(5 + 12);
    expect(minutes({ ...close, shelved: ["Q1", "IPM1"] }, { ...BENCH, off: new Set(["IPM1"]) })).toBe(5);
  });

  it("as the board itself says where it does", () => {
    expect(minutes({ do: "remove", part: "BR1" })).toBe(6);
    expect(minutes({ do: "refit", place: "BR1.plus" })).toBe(2);
  });
});

describe("what a part costs", () => {
  it("is what the board says, else the kind's share of a new board", () => {
    expect(partPrice(part("BR1"))).toBe(2.5);
    expect(partPrice(part("Q1"))).toBe(6.5);
    expect(partPrice(part("Q1"), 100)).toBe(2.5);
    expect(partPrice(part("IPM1"), 100)).toBe(17);
  });

  it("is more for a bus capacitor than for a ceramic", () => {
    expect(partPrice(part("C1"), 100)).toBe(3);
    expect(partPrice(part("C5"), 100)).toBe(0.1);
  });

  it("cannot be paid at all for a programmed controller", () => {
    expect(isObtainable(part("U3"))).toBe(false);
    expect(isObtainable(part("Q1"))).toBe(true);
  });
});
