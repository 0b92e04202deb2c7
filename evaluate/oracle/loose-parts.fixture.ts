import type { Board } from "../../src/board/board.ts";
import { parseBoard } from "../../src/board/parse-board.ts";

/** One of each kind of part that trade practice gives a band for, each on nets of its own. */
export function looseParts(): Board {
  const diode = (ref: string, type: string) => ({
    kind: "diode",
    pins: { a: `${ref}_A`, k: `${ref}_K` },
    value: { type },
  });
  const parsed = parseBoard({
    format: "faultwright-board/1",
    name: "parts in a drawer",
    family: "test",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L", "N"] },
    zero: "N",
    nets: { N: {} },
    parts: {
      BR1: { kind: "bridge", pins: { ac1: "BR_1", ac2: "BR_2", plus: "BR_P", minus: "BR_M" } },
      D1: diode("D1", "fast"),
      D2: diode("D2", "sic"),
      D3: diode("D3", "schottky"),
      D4: diode("D4", "signal"),
      Q1: { kind: "igbt", pins: { g: "Q1_G", c: "Q1_C", e: "Q1_E" } },
      Z1: { kind: "zener", pins: { a: "Z1_A", k: "Z1_K" }, value: { volts: 15 } },
      U1: { kind: "opto", pins: { a: "U1_A", k: "U1_K", c: "U1_C", e: "U1_E" } },
      R1: { kind: "resistor", pins: { 1: "R1_1", 2: "R1_2" }, value: { ohms: 10_000, tolerance: 0.05 } },
      R2: { kind: "resistor", pins: { 1: "R2_1", 2: "R2_2" }, value: { ohms: 470_000, tolerance: 0.05 } },
      C1: { kind: "capacitor", pins: { plus: "C1_P", minus: "C1_M" }, value: { farads: 470e-6 } },
      C2: { kind: "capacitor", pins: { plus: "C2_P", minus: "C2_M" }, value: { farads: 1e-6, type: "film" } },
      F1: { kind: "fuse", pins: { 1: "L", 2: "F1_2" } },
    },
  });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
