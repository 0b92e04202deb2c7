/** Schematics read from their drawing, beside the netlists that KiCad 9.0.8 itself exported of them (`test/kicad`). */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, test } from "vitest";
import { parseBoard } from "../src/board/parse-board.ts";
import { plain } from "../src/messages/said.ts";
import { readDeck } from "../src/traced/read-deck.ts";
import { readNetlist } from "../src/traced/read-netlist.ts";
import { readSchematic } from "../src/traced/read-schematic.ts";
import { type List, listsOf, readList, textOf } from "../src/traced/s-expression.ts";
import { sheetNets } from "../src/traced/sheet-nets.ts";
import { placedSymbols } from "../src/traced/sheet-symbols.ts";

const file = (name: string) => readFileSync(join(import.meta.dirname, "kicad", name), "utf8");

function listOf(text: string): List {
  const read = readList(text);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

/** KiCad's own nets: name -> pins. */
function exportedNets(name: string): Record<string, string[]> {
  const nets = listsOf(listOf(file(name)), "nets").flatMap((list) => listsOf(list, "net"));
  const pins = (net: List) =>
    listsOf(net, "node").map((pin) => `${textOf(pin, "ref")}.${textOf(pin, "pin")}`);
  return Object.fromEntries(nets.map((net) => [textOf(net, "name") ?? "", pins(net).sort()]));
}

function drawnNets(name: string): Record<string, string[]> {
  const sheet = listOf(file(name));
  const nets = sheetNets(sheet, placedSymbols(sheet));
  return Object.fromEntries(
    nets.map((net) => [net.name, net.pins.map(({ symbol, pin }) => `${symbol.ref}.${pin.number}`).sort()]),
  );
}

test.each([
  ["half-bridge", 24],
  ["turns", 36],
  ["meetings", 50],
])("the nets of %s are those that KiCad exported, names and all", (name, atLeast) => {
  const exported = exportedNets(`${name}.net`);
  expect(Object.keys(exported).length).toBeGreaterThanOrEqual(atLeast);
  expect(drawnNets(`${name}.kicad_sch`)).toEqual(exported);
});

const SUPPLY = { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] };
const MODELS = {
  HALFDRV: {
    kind: "ic",
    byPin: { COM: "gnd" },
    value: {
      floating: [
        ["VB", "VS"],
        ["HO", "VS"],
      ],
    },
  },
  U2: { kind: "ic", byPin: { "8": "vcc", "4": "gnd" } },
  Conn_01x02: null,
};

describe("the half bridge", () => {
  const options = { supply: SUPPLY, models: MODELS };
  const drawn = readSchematic(file("half-bridge.kicad_sch"), options);
  const listed = readNetlist(file("half-bridge.net"), options);
  if (!drawn.ok || !listed.ok) throw new Error("not read");
  const board = parseBoard(drawn.value.board);
  if (!board.ok) throw new Error(board.problem);
  const said = (ref: string) => {
    const part = board.value.parts.get(ref);
    return [part?.kind, Object.fromEntries(part?.pins ?? []), part?.value];
  };

  it("is one board, read from the drawing or from the netlist", () => {
    expect(drawn.value.board).toEqual(listed.value.board);
    expect(board.value.parts.size).toBe(30);
    expect(board.value.name).toBe("half-bridge");
  });

  it("has its parts by the names of the library's symbols and pins", () => {
    expect(said("BR1")).toEqual([
      "bridge",
      { plus: "PBUS", minus: "GND", ac1: "Net-_BR1-Pad3_", ac2: "N" },
      {},
    ]);
    expect(said("C1")).toEqual(["capacitor", { plus: "PBUS", minus: "GND" }, { farads: 330e-6, volts: 400 }]);
    expect(said("Q2")).toEqual(["igbt", { g: "Net-_Q2-G_", c: "OUT", e: "ISENSE" }, {}]);
    expect(said("Q3")).toEqual(["bjt", { b: "_LIN_", c: "LEDA", e: "+15V" }, { polarity: "pnp" }]);
    expect(said("D2")).toEqual(["diode", { k: "OUT", a: "ISENSE" }, {}]);
    expect(said("RV1")).toEqual(["varistor", { "1": "LF", "2": "N" }, { volts: 275 }]);
    expect(said("TH1")).toEqual(["ntc", { "1": "LF", "2": "Net-_BR1-Pad3_" }, { ohms: 5 }]);
  });

  it("takes from the mapping what cannot be guessed, by symbol or by part", () => {
    expect(said("U1")[1]).toMatchObject({ vcc: "+15V", gnd: "GND", VB: "VB", VS: "OUT" });
    // The second comparator is drawn and goes nowhere; its inputs are pins all the same.
    expect(said("U2")[1]).toMatchObject({ vcc: "+15V", gnd: "GND", "1": "HIN" });
  });

  it("lists whatever is not in the board", () => {
    const left = drawn.value.notUnderstood.map(({ text, why }) => plain(`${text}: ${why}`));
    expect(left.filter((line) => /^(J\d|R11)/.test(line)).sort()).toEqual([
      "J1: left out, as the mapping says",
      "J2: left out, as the mapping says",
      "J3: left out, as the mapping says",
      "R11: drawn as not fitted",
    ]);
    expect(left).toContain('BR1: its type "GBU15" has no place in a board file');
    const drawnRefs = placedSymbols(listOf(file("half-bridge.kicad_sch"))).map(({ ref }) => ref);
    const kept = new Set([...board.value.parts.keys(), ...drawn.value.notUnderstood.map(({ text }) => text)]);
    expect(drawnRefs.filter((ref) => !ref.startsWith("#") && !kept.has(ref))).toEqual([]);
  });

  it("lists the same parts with nobody mapping anything", () => {
    const bare = readSchematic(file("half-bridge.kicad_sch"), { supply: SUPPLY });
    const unknown = bare.ok ? bare.value.notUnderstood.filter(({ why }) => /map it/.test(why)) : [];
    expect(unknown.map(({ text }) => text).sort()).toEqual(["J1", "J2", "J3", "U1", "U2"]);
  });

  it("has the resistors, capacitors and coils of KiCad's own SPICE export, net by net", () => {
    const read = readDeck(file("half-bridge.cir"), {
      supply: { ...SUPPLY, at: ["PBUS", "GND"] },
      zero: "GND",
    });
    if (!read.ok) throw new Error(read.problem);
    const exported = Object.entries(
      read.value.board.parts as Record<string, { pins: Record<string, string> }>,
    );
    const refs = ["R1", "R2", "R3", "R4", "R5", "R6", "R7", "R9", "R10", "C2", "C3", "C4", "C5", "L1"];
    // The export has what is not fitted too; 1k0, 275V and 330uF/400V are no numbers in SPICE.
    expect(exported.map(([ref]) => ref).sort()).toEqual([...refs, "R11"].sort());
    for (const [ref, { pins }] of exported.filter(([ref]) => ref !== "R11"))
      expect(said(ref)[1], ref).toEqual(pins);
  });
});

describe("a schematic that cannot be followed", () => {
  const sheet = (inside: string) => `(kicad_sch (uuid "u") (lib_symbols
    (symbol "Device:R_Network03" (symbol "R_Network03_1_1" ${[1, 2, 3, 4].map(pinText).join("")}))
    (symbol "Device:R" (symbol "R_1_1" ${[1, 2].map(pinText).join("")}))) ${inside})`;
  const pinText = (n: number) =>
    `(pin passive line (at ${n * 2.54} 0 0) (length 1) (name "~") (number "${n}"))`;
  const symbol = (ref: string, id: string, y: number) =>
    `(symbol (lib_id "Device:${id}") (at 0 ${y} 0) (unit 1) (property "Reference" "${ref}") (property "Value" "1k"))`;
  const labels = [1, 2].map((n) => `(label "N${n}" (at ${n * 2.54} 0 0))`).join("");
  const supply = { kind: "dc", volts: 24, at: ["N1", "N2"] };

  it("says which parts are not those that their name begins like, which stand twice, and that sheets and buses are not read", () => {
    const text = sheet(
      `${symbol("R1", "R", 0)}${symbol("R1", "R", 20)}${symbol("RN1", "R_Network03", 40)}${symbol("R?", "R", 60)}
      ${labels}(sheet (at 0 0) (size 1 1))(bus (pts (xy 0 0) (xy 1 1)))`,
    );
    const read = readSchematic(text, { supply, zero: "N2" });
    if (!read.ok) throw new Error(read.problem);
    expect(Object.keys(read.value.board.parts as object)).toEqual(["R1"]);
    expect(read.value.notUnderstood.map(({ text: what, why }) => plain(`${what}: ${why}`))).toEqual([
      "R1: stands twice",
      "RN1: nobody says what a R_Network03 is: map it",
      "R?: is no reference (letters, digits, _ + - only): annotate the schematic",
      expect.stringMatching(/^sheet: a sheet inside this one is not read/),
      expect.stringMatching(/^bus: a bus is not followed/),
    ]);
  });

  it("refuses what is no schematic in one line", () => {
    for (const text of ["", "(export)", "(kicad_sch)", "(kicad_sch (symbol", sheet("")])
      expect(readSchematic(text, { supply })).toMatchObject({
        ok: false,
        problem: expect.not.stringContaining("\n"),
      });
  });
});
