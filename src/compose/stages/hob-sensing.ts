/**
 * What tells a single-switch hob when to switch and when to stop: current transformer in the line, high-ohm chains from both
 * ends of the coil to a quad comparator. Values: current transformer 3000:1, chains of 240 to 820 kohm a resistor, quad
 * comparator (published hob texts); the lower resistors are derived from them: coil ends equal at equal volts, trip at 1.07 kV
 * on the collector and 410 V on the bus. Ramp and set-point parts from memory.
 */
import type { Composer } from "../composer.ts";

/** Current transformer from `from` to `to` in the line, rectified by four small diodes into the controller's net `pin`. */
export function lineCurrentSense(board: Composer, from: string, to: string, pin: string): void {
  board.stage("sensor");
  board.part(
    "CT",
    "transformer",
    { "1": from, "2": to, "3": "CT_A", "4": "CT_B" },
    { windings: { pri: { pins: ["1", "2"], ohms: 0.002 }, sec: { pins: ["3", "4"], ohms: 120 } } },
    { price: 1.6, role: "current transformer" },
  );
  for (const end of ["CT_A", "CT_B"]) board.diode(end, "CT_P", "signal", 100, 0.2);
  for (const end of ["CT_A", "CT_B"]) board.diode("NBUS", end, "signal", 100, 0.2);
  board.resistor("CT_P", "NBUS", 1_000, { tolerance: 0.01 });
  board.resistor("CT_P", pin, 4_700);
  board.ceramic(pin, "NBUS", 1e-6);
  board.net("CT_P", "rectified line current");
}

/** Resistors of `ohms` in series from `from` to `to`, and `lower` from there to the bus minus. */
function chain(board: Composer, from: string, to: string, ohms: readonly number[], lower: number): void {
  let at = from;
  ohms.forEach((one, i) => {
    const next = i === ohms.length - 1 ? to : `${to}_${i + 1}`;
    board.resistor(at, next, one, { watts: 1, tolerance: 0.01 });
    at = next;
  });
  board.resistor(to, "NBUS", lower, { tolerance: 0.01 });
}

export interface HobSignals {
  /** bus volts into the controller */
  readonly bus: string;
  /** the controller's set-point, pulses that a filter smooths */
  readonly power: string;
  /** high where the bus is too high, into the controller */
  readonly surge: string;
}

/** The quad comparator on `rail` with its chains; `logic` is the 5 V of references; the drive's pair hangs on `GD_B`. */
export function hobComparators(board: Composer, rail: string, logic: string, signals: HobSignals): void {
  board.stage("sensor");
  chain(board, "SW", "SYN_SW", [470_000, 470_000], 10_000);
  chain(board, "PBUS", "SYN_P", [240_000, 240_000], 5_100);
  chain(board, "SW", "OVER", [470_000, 470_000], 3_000);
  chain(board, "PBUS", signals.bus, [330_000, 330_000, 330_000], 8_200);
  board.ceramic(signals.bus, "NBUS", 10e-9);
  board.stage("drive");
  board.part(
    "U",
    "ic",
    {
      vcc: rail,
      gnd: "NBUS",
      o1: "SYN_O",
      m1: "SYN_SW",
      p1: "SYN_P",
      o2: "GD_B",
      m2: "RAMP",
      p2: "POWER",
      o3: "POWER",
      m3: "OVER",
      p3: "REF_OV",
      o4: signals.surge,
      m4: "REF_OV",
      p4: signals.bus,
    },
    { volts: 18 },
    { price: 0.4, role: "quad comparator" },
  );
  board.ceramic(rail, "NBUS");
  board.resistor(logic, "REF_OV", 4_700, { tolerance: 0.01 });
  board.resistor("REF_OV", "NBUS", 10_000, { tolerance: 0.01 });
  board.ceramic("REF_OV", "NBUS");
  board.resistor(logic, "SYN_O", 2_200);
  board.ceramic("SYN_O", "RAMP", 470e-12);
  board.resistor(logic, "RAMP", 10_000);
  board.diode("RAMP", logic, "signal", 100, 0.2);
  board.resistor(signals.power, "POWER", 10_000);
  board.resistor("POWER", "NBUS", 47_000);
  board.ceramic("POWER", "NBUS", 1e-6);
  board.resistor(logic, signals.surge, 10_000);
  board.net("SYN_SW", "comparator input from the collector");
  board.net("SYN_P", "comparator input from the bus");
  board.net("OVER", "comparator input that watches the collector's peak");
  board.net("REF_OV", "reference of the comparators");
}
