/** A small drive for the tests of the readers: every stage once, raw as a board file has it. */

interface RawPart {
  kind: string;
  pins: Record<string, string>;
  [field: string]: unknown;
}

function leg(phase: string, n: number): Record<string, RawPart> {
  const out = phase;
  const gate = (side: string) => `G${side}_${phase}`;
  const one = (ref: string, side: string, high: string, low: string): Record<string, RawPart> => ({
    [`Q${ref}`]: { kind: "igbt", pins: { g: gate(side), c: high, e: low }, value: { volts: 600, amps: 20 } },
    [`RG${ref}`]: {
      kind: "resistor",
      pins: { "1": `D${side}_${phase}`, "2": gate(side) },
      value: { ohms: 47 },
    },
    [`RP${ref}`]: { kind: "resistor", pins: { "1": gate(side), "2": low }, value: { ohms: 10000 } },
    [`DZ${ref}`]: { kind: "zener", pins: { a: low, k: gate(side) }, value: { volts: 18 } },
  });
  return { ...one(String(n), "H", "PBUS", out), ...one(String(n + 3), "L", out, "NSH") };
}

const PARTS: Record<string, RawPart> = {
  F1: { kind: "fuse", pins: { "1": "L_IN", "2": "L_F" }, value: { amps: 10 }, stage: "input" },
  CX1: {
    kind: "capacitor",
    pins: { plus: "L_F", minus: "N_IN" },
    value: { farads: 0.47e-6, volts: 275, type: "film" },
  },
  NTC1: { kind: "ntc", pins: { "1": "L_F", "2": "L_B" }, value: { ohms: 5 } },
  BR1: {
    kind: "bridge",
    pins: { ac1: "L_B", ac2: "N_IN", plus: "PBUS", minus: "NBUS" },
    value: { amps: 15, volts: 600 },
    stage: "rectifier",
    price: 2.5,
    minutes: { lift: 3, remove: 6, replace: 10 },
  },
  C1: {
    kind: "capacitor",
    pins: { plus: "PBUS", minus: "MID" },
    value: { farads: 680e-6, volts: 250, type: "electrolytic" },
  },
  C2: {
    kind: "capacitor",
    pins: { plus: "MID", minus: "NBUS" },
    value: { farads: 680e-6, volts: 250, type: "electrolytic" },
  },
  C3: {
    kind: "capacitor",
    pins: { plus: "PBUS", minus: "NBUS" },
    value: { farads: 0.22e-6, volts: 630, type: "film" },
  },
  ...leg("U", 1),
  ...leg("V", 2),
  ...leg("W", 3),
  RS1: { kind: "resistor", pins: { "1": "NSH", "2": "NBUS" }, value: { ohms: 0.02, watts: 3 } },
  M1: { kind: "motor", pins: { u: "U", v: "V", w: "W" }, value: { ohms: 4 }, plugged: true },
  U1: { kind: "switcher", pins: { d: "DRAIN", s: "NBUS", vcc: "VCC", fb: "FB" }, stage: "supply" },
  T1: {
    kind: "transformer",
    pins: { "1": "PBUS", "2": "DRAIN", "3": "SEC", "4": "NBUS" },
    value: { windings: { pri: { pins: ["1", "2"], ohms: 3 }, sec: { pins: ["3", "4"], ohms: 0.2 } } },
  },
  D1: { kind: "diode", pins: { a: "SEC", k: "V15" }, value: { type: "fast", amps: 2 } },
  C4: {
    kind: "capacitor",
    pins: { plus: "V15", minus: "NBUS" },
    value: { farads: 470e-6, volts: 25, type: "electrolytic" },
  },
  U2: { kind: "regulator", pins: { in: "V15", out: "V5", gnd: "NBUS" } },
  C5: {
    kind: "capacitor",
    pins: { plus: "V5", minus: "NBUS" },
    value: { farads: 1e-6, volts: 100, type: "ceramic" },
  },
  U3: { kind: "controller", pins: { vdd: "V5", gnd: "NBUS", pa0: "DL_U", pa1: "DL_V" } },
  U4: { kind: "shuntref", pins: { ref: "REF", k: "FB", a: "NBUS" } },
  U5: {
    kind: "ic",
    pins: { vcc: "V15", gnd: "NBUS", ho: "DH_U", vs: "U", in: "DL_W" },
    value: { floating: [["ho", "vs"]] },
  },
  K1: { kind: "relay", pins: { coil1: "V15", coil2: "RLY", com: "L_F", no: "L_B" } },
  L1: { kind: "choke", pins: { "1": "A1", "2": "A2", "3": "A3", "4": "A4" } },
};

/** A fresh copy each time, so that a test may spoil it. */
export function smallDrive(): Record<string, unknown> & { parts: Record<string, Record<string, unknown>> } {
  return structuredClone({
    format: "faultwright-board/1",
    name: "small drive",
    family: "fan-drive",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
    nets: { PBUS: { label: "DC bus +" }, NBUS: { label: "DC bus -" } },
    parts: { ...PARTS },
    rails: {
      V15: { net: "V15", volts: 15, tolerance: 0.1 },
      V5: { net: "V5", volts: 5, from: "U2" },
    },
    points: { TP1: { net: "PBUS", at: "C1 plus pin", xy: [0.41, 0.22] as [number, number] } },
  });
}
