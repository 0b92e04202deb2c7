/** A small boost front end with a 5 V chip: 25 parts, for comparing the diagnosis with a brute force. Invented values. */
const two = (
  kind: string,
  a: string,
  b: string,
  value: Record<string, unknown> = {},
): Record<string, unknown> => ({
  kind,
  pins: { "1": a, "2": b },
  value,
});
const capacitor = (
  plus: string,
  minus: string,
  farads: number,
  volts: number,
  type: string,
): Record<string, unknown> => ({
  kind: "capacitor",
  pins: { plus, minus },
  value: { farads, volts, type },
});
const diode = (a: string, k: string, type: string): Record<string, unknown> => ({
  kind: "diode",
  pins: { a, k },
  value: { type },
});

export const TWENTY_FIVE_PARTS = {
  format: "faultwright-board/1",
  name: "boost front end of 25 parts",
  family: "test",
  supply: { kind: "ac", volts: 230, hz: 50, at: ["L_IN", "N_IN"] },
  zero: "NBUS",
  nets: {},
  parts: {
    F1: two("fuse", "L_IN", "L_F", { amps: 10 }),
    RV1: two("varistor", "L_F", "N_IN", { volts: 470 }),
    C1: capacitor("L_F", "N_IN", 0.47e-6, 310, "film"),
    R1: two("resistor", "L_F", "N_IN", { ohms: 680_000 }),
    RT1: two("ptc", "L_F", "L_B", { ohms: 47 }),
    BR1: {
      kind: "bridge",
      pins: { ac1: "L_B", ac2: "N_IN", plus: "BR_P", minus: "NBUS" },
      value: { amps: 15, volts: 600 },
    },
    L1: two("inductor", "BR_P", "SW", { henries: 3e-4, ohms: 0.08 }),
    Q1: { kind: "igbt", pins: { g: "GATE", c: "SW", e: "NBUS" }, value: { volts: 600, amps: 30 } },
    D1: diode("SW", "PBUS", "fast"),
    C2: capacitor("PBUS", "NBUS", 680e-6, 450, "electrolytic"),
    R2: two("resistor", "PBUS", "NBUS", { ohms: 220_000 }),
    R3: two("resistor", "GATE", "NBUS", { ohms: 10_000 }),
    R4: two("resistor", "GATE", "DRV", { ohms: 22 }),
    ZD1: { kind: "zener", pins: { a: "NBUS", k: "GATE" }, value: { volts: 18, watts: 1 } },
    U1: { kind: "ic", pins: { vcc: "V15", gnd: "NBUS", out: "DRV" }, value: { volts: 15 } },
    C3: capacitor("V15", "NBUS", 47e-6, 25, "electrolytic"),
    U2: { kind: "regulator", pins: { in: "V15", out: "V5", gnd: "NBUS" }, value: { volts: 5, amps: 0.5 } },
    C4: capacitor("V5", "NBUS", 10e-6, 16, "electrolytic"),
    C5: capacitor("V5", "NBUS", 100e-9, 50, "ceramic"),
    U3: {
      kind: "controller",
      pins: { vdd: "V5", gnd: "NBUS", pwm: "PWM", sense: "SENSE" },
      value: { volts: 5 },
    },
    R5: two("resistor", "PWM", "DRV", { ohms: 1_000 }),
    R6: two("resistor", "PBUS", "SENSE", { ohms: 1_000_000 }),
    R7: two("resistor", "SENSE", "NBUS", { ohms: 12_000 }),
    D2: diode("AUX", "V15", "fast"),
    R8: two("resistor", "AUX", "NBUS", { ohms: 4_700 }),
  },
  rails: { V15: { net: "V15", volts: 15, from: "D2" }, V5: { net: "V5", volts: 5, from: "U2" } },
};
