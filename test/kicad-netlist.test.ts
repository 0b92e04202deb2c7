/** A KiCad netlist as a board. The fixture is written by hand after the exported format, from memory. */
import { describe, expect, it } from "vitest";
import { parseBoard } from "../src/board/parse-board.ts";
import { plain } from "../src/messages/said.ts";
import { readNetlist } from "../src/traced/read-netlist.ts";

const part = (ref: string, value: string, symbol: string) =>
  `(comp (ref "${ref}") (value "${value}")\n (libsource (lib "Device") (part "${symbol}") (description "a \\"part\\"")))\n`;
const net = (name: string, ...pins: readonly string[]) =>
  `(net (code "1") (name "${name}") ${pins
    .map((pin) => `(node (ref "${pin.split(".")[0]}") (pin "${pin.split(".")[1]}"))`)
    .join(" ")})\n`;

const NETLIST = `(export (version "E")
(design (source "front end"))
(components
${[
  part("F1", "10A", "Fuse"),
  part("R1", "4k7", "R_Small"),
  part("C1", "330uF/450V", "C_Polarized"),
  part("D1", "MUR860", "D"),
  part("D2", "18V", "D_Zener"),
  part("Q1", "IRG4", "Q_NIGBT_GCE"),
  part("Q2", "BC847", "Q_NPN_BCE"),
  part("U1", "PWMCHIP", "PWMCHIP"),
  part("R2", "jumper", "R"),
  part("X1", "conn", "Conn_01x02"),
].join("")})
(nets
${[
  net("/L", "F1.1", "X1.1"),
  net("/mains/LF", "F1.2", "R1.1"),
  net("Net-(D1-A)", "R1.2", "D1.2", "Q1.2"),
  net("PBUS", "D1.1", "C1.1", "U1.1", "R2.1"),
  net("GATE", "Q1.1", "D2.1", "Q2.2"),
  net("BASE", "Q2.1", "U1.2"),
  net("GND", "C1.2", "Q1.3", "D2.2", "Q2.3", "U1.3", "R2.2", "X1.2"),
].join("")}))
`;
const SUPPLY = { kind: "ac", volts: 230, hz: 50, at: ["L", "GND"] };

describe("a KiCad netlist (fixture from memory)", () => {
  it("becomes a board: kinds by symbol, pins by number, values as typed, names that a board file takes", () => {
    const models = { PWMCHIP: { kind: "ic", pins: ["vcc", "out", "gnd"] } };
    const traced = readNetlist(NETLIST, { supply: SUPPLY, models });
    if (!traced.ok) throw new Error(traced.problem);
    const board = parseBoard(traced.value.board);
    if (!board.ok) throw new Error(board.problem);
    const said = (ref: string) => {
      const { kind, pins, value } = board.value.parts.get(ref) ?? {
        kind: "none",
        pins: new Map(),
        value: {},
      };
      return [kind, Object.fromEntries(pins), value];
    };
    expect(said("R1")).toEqual(["resistor", { "1": "mains_LF", "2": "Net-_D1-A_" }, { ohms: 4700 }]);
    expect(said("C1")).toEqual(["capacitor", { plus: "PBUS", minus: "GND" }, { farads: 330e-6, volts: 450 }]);
    expect(said("D1")).toEqual(["diode", { k: "PBUS", a: "Net-_D1-A_" }, {}]);
    expect(said("D2")).toEqual(["zener", { k: "GATE", a: "GND" }, { volts: 18 }]);
    expect(said("Q1")).toEqual(["igbt", { g: "GATE", c: "Net-_D1-A_", e: "GND" }, {}]);
    expect(said("Q2")).toEqual(["bjt", { b: "BASE", c: "GATE", e: "GND" }, { polarity: "npn" }]);
    expect(said("F1")).toEqual(["fuse", { "1": "L", "2": "mains_LF" }, { amps: 10 }]);
    expect(traced.value.notUnderstood.map(({ text, why }) => [text, plain(why)])).toEqual([
      ["D1", 'its type "MUR860" has no place in a board file'],
      ["Q1", 'its type "IRG4" has no place in a board file'],
      ["Q2", 'its type "BC847" has no place in a board file'],
      ["U1", 'its type "PWMCHIP" has no place in a board file'],
      ["R2", 'its value "jumper" is not read: the kind\'s usual counts'],
      ["X1", "nobody says what a Conn_01x02 is: map it"],
    ]);
    expect(board.value.name).toBe("front end");
  });

  it("lists what nobody mapped, and says what stands in the way of a board", () => {
    const traced = readNetlist(NETLIST, { supply: SUPPLY });
    const unknown = traced.ok
      ? traced.value.notUnderstood.filter(({ why }) => /map it/.test(plain(why)))
      : [];
    expect(unknown.map(({ text }) => text)).toEqual(["U1", "X1"]);
    const broken = readNetlist("(export (components (comp", {});
    expect(broken.ok ? "" : plain(broken.problem)).toBe("line 1: this bracket is not closed");
    expect(readNetlist("* a deck", { supply: SUPPLY }).ok).toBe(false);
    expect(readNetlist("(".repeat(5000), { supply: SUPPLY }).ok).toBe(false);
  });
});
