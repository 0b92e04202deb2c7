import type { Board } from "../board/board.ts";
import { parseBoard } from "../board/parse-board.ts";

type Raw = Record<string, unknown>;
const part = (kind: string, pins: Raw, stage: string, value: Raw = {}, more: Raw = {}): Raw => ({
  kind,
  pins,
  stage,
  value,
  ...more,
});
const two = (kind: string, a: string, b: string, stage: string, value: Raw = {}): Raw =>
  part(kind, { 1: a, 2: b }, stage, value);
const cap = (plus: string, minus: string, stage: string, farads: number, volts: number, type: string): Raw =>
  part("capacitor", { plus, minus }, stage, { farads, volts, type });

const FRONT = {
  F1: two("fuse", "L_IN", "L_F", "input", { amps: 10 }),
  RV1: two("varistor", "L_F", "N_IN", "input", { volts: 430 }),
  CX1: cap("L_F", "N_IN", "input", 4.7e-7, 275, "film"),
  NTC1: two("ntc", "L_F", "L_B", "inrush", { ohms: 5 }),
  K1: part("relay", { coil1: "V15", coil2: "K_LOW", com: "L_F", no: "L_B" }, "inrush", { coilOhms: 400 }),
  BR1: part("bridge", { ac1: "L_B", ac2: "N_IN", plus: "PBUS", minus: "NBUS" }, "rectifier", { amps: 15 }),
  C1: cap("PBUS", "NBUS", "bus", 4.7e-4, 400, "electrolytic"),
  C2: cap("PBUS", "NBUS", "bus", 2.2e-7, 630, "film"),
  R1: two("resistor", "PBUS", "NBUS", "bus", { ohms: 150_000, watts: 2 }),
};

const SUPPLY = {
  R10: two("resistor", "PBUS", "SUP_P", "supply", { ohms: 4.7, watts: 2 }),
  T1: part("transformer", { 1: "SUP_P", 2: "DRAIN", 3: "NBUS", 4: "SEC" }, "supply", {
    windings: { pri: { pins: ["1", "2"], ohms: 2 }, sec: { pins: ["3", "4"], ohms: 0.3 } },
  }),
  U10: part("switcher", { d: "DRAIN", s: "NBUS", vcc: "SUP_V", fb: "FB" }, "supply"),
  C10: cap("SUP_V", "NBUS", "supply", 4.7e-5, 25, "electrolytic"),
  D11: part("diode", { a: "DRAIN", k: "CLAMP" }, "supply", { type: "fast" }),
  C11: cap("CLAMP", "SUP_P", "supply", 2.2e-9, 1000, "ceramic"),
  D10: part("diode", { a: "SEC", k: "V15" }, "supply", { type: "fast" }),
  C12: cap("V15", "NBUS", "supply", 4.7e-4, 25, "electrolytic"),
  OC1: part("opto", { a: "V15", k: "REFK", c: "FB", e: "NBUS" }, "supply"),
  U11: part("shuntref", { ref: "REF", k: "REFK", a: "NBUS" }, "supply"),
  R11: two("resistor", "V15", "REF", "supply", { ohms: 12_000 }),
  R12: two("resistor", "REF", "NBUS", "supply", { ohms: 2490 }),
  Z10: part("zener", { a: "NBUS", k: "V15" }, "supply", { volts: 18 }),
  U12: part("regulator", { in: "V15", out: "V5", gnd: "NBUS" }, "standby", { volts: 5 }),
  C13: cap("V5", "NBUS", "standby", 1e-7, 25, "ceramic"),
};

const LOGIC = {
  U20: part(
    "controller",
    { vdd: "V5", gnd: "NBUS", P1: "IN_UP", P2: "IN_UN", P3: "KDRV", P4: "VSENSE" },
    "logic",
  ),
  C20: cap("V5", "NBUS", "logic", 1e-7, 25, "ceramic"),
  R20: two("resistor", "PBUS", "VSENSE", "sensor", { ohms: 1_000_000 }),
  R21: two("resistor", "VSENSE", "NBUS", "sensor", { ohms: 6800 }),
  U21: part("ic", { vcc: "V15", gnd: "NBUS", I1: "KDRV", O1: "K_LOW" }, "output"),
};

const MODULE = {
  M1: part(
    "module",
    {
      p: "PBUS",
      n: "N_M",
      u: "U",
      v: "V",
      w: "W",
      vcc: "V15",
      com: "NBUS",
      vbu: "VBU",
      vbv: "VBV",
      vbw: "VBW",
      inup: "IN_UP",
      inun: "IN_UN",
    },
    "inverter",
    { amps: 15, volts: 600 },
  ),
  RS1: two("resistor", "N_M", "NBUS", "inverter", { ohms: 0.02, watts: 3 }),
  C30: cap("VBU", "U", "drive", 2.2e-5, 25, "electrolytic"),
  M9: part("motor", { u: "U", v: "V", w: "W" }, "output", { ohms: 4 }),
};

function leg(phase: string, index: number): Raw {
  const [g1, g2] = [`G_${phase}H`, `G_${phase}L`];
  const at = (base: number): number => base + index;
  return {
    [`Q${at(1) * 2}`]: part("igbt", { g: g1, c: "PBUS", e: phase }, "inverter", { amps: 20 }),
    [`Q${at(1) * 2 + 1}`]: part("igbt", { g: g2, c: phase, e: "N_M" }, "inverter", { amps: 20 }),
    [`R${at(40) * 2}`]: two("resistor", g1, `HO_${phase}`, "drive", { ohms: 47 }),
    [`R${at(40) * 2 + 1}`]: two("resistor", g2, `LO_${phase}`, "drive", { ohms: 47 }),
    [`Z${at(40) * 2}`]: part("zener", { a: phase, k: g1 }, "drive", { volts: 18 }),
    [`Z${at(40) * 2 + 1}`]: part("zener", { a: "N_M", k: g2 }, "drive", { volts: 18 }),
    [`U${at(40)}`]: part(
      "ic",
      {
        vcc: "V15",
        hin: "IN_UP",
        lin: "IN_UN",
        gnd: "NBUS",
        ho: `HO_${phase}`,
        vb: `VB${phase}`,
        vs: phase,
        lo: `LO_${phase}`,
      },
      "drive",
      {
        floating: [
          ["vb", "vs"],
          ["ho", "vs"],
        ],
      },
    ),
    [`C${at(40)}`]: cap(`VB${phase}`, phase, "drive", 2.2e-5, 25, "electrolytic"),
  };
}

const DISCRETE = {
  ...leg("U", 0),
  ...leg("V", 1),
  ...leg("W", 2),
  RS1: two("resistor", "N_M", "NBUS", "inverter", { ohms: 0.02, watts: 3 }),
};

/** A small drive for the tests of this layer: one rectifier, one bus, one small supply, an inverter of either build. */
export function fixtureBoard(inverter: "module" | "discrete", more: Raw = {}): Board {
  const parsed = parseBoard({
    format: "faultwright-board/1",
    name: `test drive, ${inverter}`,
    family: "test-drive",
    supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
    zero: "NBUS",
    nets: {},
    parts: { ...FRONT, ...SUPPLY, ...LOGIC, ...(inverter === "module" ? MODULE : DISCRETE), ...more },
    rails: { V15: { net: "V15", volts: 15, from: "T1" }, V5: { net: "V5", volts: 5, from: "U12" } },
  });
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}
