/** Circuits traced elsewhere: a deck becomes a board, what was not understood is listed, a board comes back from its own deck. */

import { describe, expect, it } from "vitest";
import { parseBoard } from "../board/parse-board.ts";
import { plain } from "../messages/said.ts";
import { readDeck } from "./read-deck.ts";
import { spiceNumber } from "./spice-number.ts";
import type { TraceOptions } from "./traced-part.ts";
import { writeDeck } from "./write-deck.ts";

const SUPPLY = { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] };

/** A small front end as somebody would trace it. */
const TRACED = `* front end, traced
.model 1N4007 D(Is=7n Rs=0.03 BV=1000)
.model BZX18 D(BV=18)
.model BC847 NPN
.model IRFX NMOS
.subckt bridge ac1 ac2 plus minus
D1 ac1 plus 1N4007
.ends
R1 L LF 4.7
Rntc LF LB 10 ; cold
XBR1 LB N P 0 bridge
C1 P 0 330uF
C2 P 0
+ 100n
L1 P SW 0.25m
M1 SW G 0 0 IRFX
D1 SW P 1N4007
D2 0 G BZX18
Q1 G B 0 BC847
XU1 P G 0 PWMCHIP
V1 L N SIN(0 325 50)
R9 P 0 4R7
.tran 1m
.end
never read
`;

function read(text: string, options: TraceOptions = { supply: SUPPLY }) {
  const traced = readDeck(text, options);
  if (!traced.ok) throw new Error(traced.problem);
  const board = parseBoard(traced.value.board);
  if (!board.ok) throw new Error(board.problem);
  return { ...traced.value, parts: board.value.parts };
}

describe("a traced deck", () => {
  it("becomes a board: kinds by letter, model and subcircuit, values with their suffixes", () => {
    const { parts, board } = read(TRACED);
    expect(board).toMatchObject({ name: "front end, traced", zero: "0" });
    const value = (ref: string) => parts.get(ref)?.value;
    expect(value("C1")).toEqual({ farads: 330e-6 });
    expect(value("C2")).toEqual({ farads: 100e-9 });
    expect(value("L1")).toEqual({ henries: 0.25e-3 });
    expect(parts.get("BR1")?.kind).toBe("bridge");
    expect(parts.get("D1")?.kind).toBe("diode");
    expect([parts.get("D2")?.kind, value("D2")]).toEqual(["zener", { volts: 18 }]);
    expect([parts.get("Q1")?.kind, value("Q1")]).toEqual(["bjt", { polarity: "npn" }]);
    expect([...(parts.get("M1")?.pins ?? [])]).toEqual([
      ["d", "SW"],
      ["g", "G"],
      ["s", "0"],
    ]);
    expect([...(parts.get("Q1")?.pins ?? [])]).toEqual([
      ["c", "G"],
      ["b", "B"],
      ["e", "0"],
    ]);
  });

  it("lists what it did not understand, with the line and what would help", () => {
    const { notUnderstood, parts } = read(TRACED);
    expect(notUnderstood.map(({ line, why }) => [line, plain(why)])).toEqual([
      [20, "nobody says which pins PWMCHIP has: map it"],
      [21, "no part of a board is written with V"],
      [22, "no number behind the two nets of R9"],
      [23, "a command, not a part"],
    ]);
    expect(parts.size).toBe(10);
  });

  it("takes kinds that cannot be guessed from a mapping, over what the deck says", () => {
    const { parts, notUnderstood } = read(TRACED, {
      supply: SUPPLY,
      models: {
        pwmchip: { kind: "ic", pins: ["vcc", "out", "gnd"], value: { volts: 15 } },
        IRFX: { kind: "igbt", pins: ["c", "g", "e"] },
      },
    });
    expect(parts.get("U1")).toMatchObject({ kind: "ic", value: { volts: 15 } });
    expect([...(parts.get("M1")?.pins.keys() ?? [])]).toEqual(["c", "g", "e"]);
    expect(notUnderstood.map(({ line }) => line)).toEqual([21, 22, 23]);
  });

  it("says what is missing where it cannot be a board", () => {
    expect(readDeck(TRACED, {})).toMatchObject({ ok: false });
    const elsewhere = readDeck(TRACED, { supply: { ...SUPPLY, at: ["L", "NOT"] } });
    expect(elsewhere.ok ? "" : plain(elsewhere.problem)).toMatch(
      /supply\.at\[1\]: there is no net "NOT".*\(left out: 4 lines, first line 20: nobody says which pins PWMCHIP has/,
    );
  });
});

it("reads numbers as SPICE does: m is milli in either case, meg is mega, a unit behind it is let be", () => {
  const read = ["4.7k", "1MEG", "1M", "470nF", "2e-3", "10", ".5u", "3f", "-1.5", "4R7", "k", ""].map(
    spiceNumber,
  );
  expect(read).toEqual([4700, 1e6, 1e-3, 470e-9, 2e-3, 10, 0.5e-6, 3e-15, -1.5, null, null, null]);
});

it("takes a value and a net that were changed in the deck, and leaves what SPICE has no word for", () => {
  const own = {
    format: "faultwright-board/1",
    name: "own",
    family: "test",
    supply: SUPPLY,
    zero: "N",
    parts: {
      R1: { kind: "resistor", pins: { "1": "L", "2": "N" }, value: { ohms: 470, watts: 2 }, price: 0.1 },
    },
  };
  const deck = writeDeck(own).replace("R1 L N 470\n", "R1 L MID 1k\nR2 MID N 2.2k\n");
  expect(read(deck, {}).board).toMatchObject({
    parts: {
      R1: { pins: { "1": "L", "2": "MID" }, value: { ohms: 1000, watts: 2 }, price: 0.1 },
      R2: { pins: { "1": "MID", "2": "N" }, value: { ohms: 2200 } },
    },
  });
});
