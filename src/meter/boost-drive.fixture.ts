/**
 * A small inverter board for tests, of our own making: mains filter, inrush, bridge, single-switch boost, bus, three-phase power
 * module, off-line supply with 15, 12 and 5 V, controller, relay drive. Values are common practice.
 */
import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";

type Pins = Record<string, string>;
type RawPart = { kind: string; pins: Pins; value?: object; plugged?: boolean };

function two(kind: string, one: string, other: string, value: object = {}): RawPart {
  return { kind, pins: { 1: one, 2: other }, value };
}

function ohms(one: string, other: string, value: number): RawPart {
  return two("resistor", one, other, { ohms: value });
}

function cap(plus: string, minus: string, farads: number, type: string, volts = 25): RawPart {
  return { kind: "capacitor", pins: { plus, minus }, value: { farads, type, volts } };
}

function diode(a: string, k: string, type: string): RawPart {
  return { kind: "diode", pins: { a, k }, value: { type } };
}

const INPUT: Record<string, RawPart> = {
  F1: two("fuse", "L", "L1", { ohms: 0.02 }),
  RV1: two("varistor", "L1", "N_IN", { volts: 560 }),
  R1: ohms("L1", "N_IN", 1e6),
  CX1: cap("L1", "N_IN", 470e-9, "film", 275),
  LF1: { kind: "choke", pins: { 1: "L1", 2: "L2", 3: "N_IN", 4: "N2" }, value: { ohms: 0.03 } },
  PTC1: two("ptc", "L2", "L3", { ohms: 47 }),
  K1: { kind: "relay", pins: { com: "L2", no: "L3", coil1: "V12", coil2: "RLY" }, value: { coilOhms: 400 } },
  BR1: {
    kind: "bridge",
    pins: { ac1: "L3", ac2: "N2", plus: "BRP", minus: "BRN" },
    value: { amps: 25, volts: 800 },
  },
};

const BOOST: Record<string, RawPart> = {
  RS1: ohms("BRN", "N", 0.01),
  L1: { ...two("inductor", "BRP", "SW", { henries: 300e-6, ohms: 0.08 }), plugged: true },
  Q1: { kind: "igbt", pins: { g: "G1", c: "SW", e: "N" }, value: { volts: 650, amps: 40 } },
  R2: ohms("G1", "N", 10e3),
  R3: ohms("G1", "DRV", 22),
  DZ1: { kind: "zener", pins: { a: "N", k: "G1" }, value: { volts: 18 } },
  Q2: { kind: "bjt", pins: { b: "DRVB", c: "V15", e: "DRV" }, value: { polarity: "npn" } },
  Q3: { kind: "bjt", pins: { b: "DRVB", c: "N", e: "DRV" }, value: { polarity: "pnp" } },
  R4: ohms("PWM", "DRVB", 100),
  D1: diode("SW", "P", "fast"),
  D2: diode("BRP", "P", "rectifier"),
  C1: cap("P", "N", 680e-6, "electrolytic", 450),
  C2: cap("P", "N", 680e-6, "electrolytic", 450),
  CS1: cap("P", "N", 100e-9, "film", 630),
  R5: ohms("P", "N", 300e3),
  R6: ohms("P", "VS1", 470e3),
  R7: ohms("VS1", "VS2", 470e3),
  R8: ohms("VS2", "VSENSE", 470e3),
  R9: ohms("VSENSE", "N", 12e3),
};

function inverter(): Record<string, RawPart> {
  const parts: Record<string, RawPart> = {
    M1: {
      kind: "module",
      pins: {
        p: "P",
        nu: "NU",
        nv: "NV",
        nw: "NW",
        u: "U",
        v: "V",
        w: "W",
        vcc: "V15",
        com: "N",
        vbu: "VBU",
        vbv: "VBV",
        vbw: "VBW",
        inup: "IUP",
        invp: "IVP",
        inwp: "IWP",
        inun: "IUN",
        invn: "IVN",
        inwn: "IWN",
        fault: "FO",
        trip: "CIN",
      },
    },
    RT1: ohms("CIN", "NSH", 1e3),
    CT1: cap("CIN", "N", 1e-9, "ceramic"),
    RFO: ohms("FO", "V5", 10e3),
  };
  for (const phase of ["U", "V", "W"]) {
    parts[`RSH${phase}`] = ohms(`N${phase}`, "NSH", 0.02);
    parts[`CB${phase}`] = cap(`VB${phase}`, phase, 22e-6, "electrolytic");
    parts[`RPH${phase}`] = ohms(phase, `SN${phase}`, 1e6);
    parts[`RPL${phase}`] = ohms(`SN${phase}`, "N", 7e3);
    for (const side of ["P", "N"])
      parts[`RI${phase}${side}`] = ohms(`MCU${phase}${side}`, `I${phase}${side}`, 100);
  }
  return { ...parts, RSHN: ohms("NSH", "N", 0.005) };
}

const SUPPLY: Record<string, RawPart> = {
  FR1: ohms("P", "PF", 4.7),
  T1: {
    kind: "transformer",
    pins: { 1: "PF", 2: "DR", 3: "S15", 4: "N", 5: "S12", 6: "N", 7: "SA", 8: "N" },
    value: {
      windings: {
        pri: { pins: ["1", "2"], ohms: 1.2 },
        s15: { pins: ["3", "4"], ohms: 0.2 },
        s12: { pins: ["5", "6"], ohms: 0.1 },
        aux: { pins: ["7", "8"], ohms: 0.3 },
      },
    },
  },
  U1: { kind: "switcher", pins: { d: "DR", s: "N", vcc: "VA", fb: "FB" } },
  D5: diode("CLK", "DR", "fast"),
  R10: ohms("CLK", "PF", 100e3),
  D6: diode("SA", "VA1", "signal"),
  R11: ohms("VA1", "VA", 10),
  C10: cap("VA", "N", 22e-6, "electrolytic"),
  OK1: { kind: "opto", pins: { a: "OA", k: "OKK", c: "FB", e: "N" } },
  R12: ohms("V12", "OA", 470),
  U5: { kind: "shuntref", pins: { ref: "REF", k: "OKK", a: "N" } },
  R13: ohms("V12", "REF", 10e3),
  R14: ohms("REF", "N", 2490),
  D3: diode("S15", "V15", "fast"),
  C11: cap("V15", "N", 470e-6, "electrolytic"),
  D4: diode("S12", "V12", "schottky"),
  C12: cap("V12", "N", 1e-3, "electrolytic"),
  U2: { kind: "regulator", pins: { in: "V12", out: "V5", gnd: "N" } },
  C13: cap("V5", "N", 220e-6, "electrolytic"),
  R15: ohms("V15", "N", 22e3),
  R16: ohms("V5", "N", 2200),
};

const LOGIC: Record<string, RawPart> = {
  U3: {
    kind: "controller",
    pins: {
      vdd: "V5",
      gnd: "N",
      up: "MCUUP",
      vp: "MCUVP",
      wp: "MCUWP",
      un: "MCUUN",
      vn: "MCUVN",
      wn: "MCUWN",
      pwm: "PWM",
      fo: "FO",
      vbus: "VSENSE",
      iu: "SNU",
      iv: "SNV",
      iw: "SNW",
      rly: "RLYB",
      ntc: "TH",
    },
    value: { volts: 5 },
  },
  C20: cap("V5", "N", 100e-9, "ceramic"),
  U4: { kind: "ic", pins: { vcc: "V12", gnd: "N", i1: "RLYB", o1: "RLY" }, value: { volts: 12 } },
  TH1: two("ntc", "TH", "N", { ohms: 10e3 }),
  R20: ohms("V5", "TH", 10e3),
  LED1: { kind: "led", pins: { a: "LA", k: "N" } },
  R21: ohms("V5", "LA", 1e3),
};

export const BOOST_DRIVE_FILE = {
  format: "faultwright-board/1",
  name: "boost drive for tests",
  family: "test",
  supply: { kind: "ac", volts: 230, hz: 50, at: ["L", "N_IN"] },
  zero: "N",
  nets: {},
  parts: { ...INPUT, ...BOOST, ...inverter(), ...SUPPLY, ...LOGIC },
  rails: {
    V15: { net: "V15", volts: 15, from: "T1" },
    V12: { net: "V12", volts: 12, from: "T1" },
    V5: { net: "V5", volts: 5, from: "U2" },
  },
};

/** The fixture parsed; throws where it would not be a board. */
export function boostDrive(): Board {
  const board = parseBoard(BOOST_DRIVE_FILE);
  if (!board.ok) throw new Error(board.problem);
  return board.value;
}
