/**
 * The small off-line supply: integrated flyback switch on the bus, clamp, transformer, one diode and capacitor a rail,
 * optocoupler and shunt reference. Values (common practice): fuse resistor 4.7 ohm, clamp 100 kohm with 2.2 nF,
 * primary some ohms, secondaries below half an ohm, LED resistor 1 kohm, divider by the rail, loop capacitor 100 nF.
 * On the bus of 400 V mains a 1500 V switch, fed over two 10 uF in series (from memory).
 */
import type { Composer } from "../composer.ts";

/** A rail made by a winding of the transformer. */
export interface Secondary {
  readonly rail: string;
  readonly volts: number;
  readonly diode: "fast" | "schottky";
  readonly farads: number;
  /** its own 0 V where it is isolated from the bus */
  readonly against?: string;
}

/** The bus that feeds it: behind one phase of 230 V, or behind three of 400 V. */
export type SupplyBus = "325 V" | "565 V";

/** What tells the switch how high the rails are: an optocoupler behind the first one, or the switch's own winding. */
export type Feedback = "optocoupler" | "own winding";

/**
 * Builds the supply, fed from the net `feed`; the first secondary is the regulated one. Returns the references of the rails'
 * diodes.
 */
export function offlineSupply(
  board: Composer,
  secondaries: readonly Secondary[],
  {
    from = "325 V",
    feed = "PBUS",
    feedback = "optocoupler",
  }: { readonly from?: SupplyBus; readonly feed?: string; readonly feedback?: Feedback } = {},
): Map<string, string> {
  board.stage("supply");
  board.resistor(feed, "SUP_P", 4.7, { watts: 1 }, { price: 0.2, role: "fuse resistor" });
  primaryBulk(board, from);
  const windings: Record<string, { pins: readonly [string, string]; ohms: number }> = {
    pri: { pins: ["1", "2"], ohms: 2.2 },
    aux: { pins: ["3", "4"], ohms: 0.4 },
  };
  const pins: Record<string, string> = { "1": "SUP_P", "2": "DRAIN", "3": "AUX", "4": "NBUS" };
  secondaries.forEach(({ rail, against = "NBUS" }, i) => {
    const [a, b] = [`${5 + 2 * i}`, `${6 + 2 * i}`];
    windings[`sec${i + 1}`] = { pins: [a, b], ohms: 0.15 };
    pins[a] = `S_${rail}`;
    pins[b] = against;
  });
  board.part("T", "transformer", pins, { windings }, { price: 4.5 });
  board.part(
    "U",
    "switcher",
    { d: "DRAIN", s: "NBUS", vcc: "VCC_SW", fb: "FB" },
    { volts: from === "325 V" ? 700 : 1500, watts: 15 },
    { price: 1.9 },
  );
  board.diode("DRAIN", "CLAMP", "fast", from === "325 V" ? 1000 : 1600, 1);
  board.resistor("CLAMP", "SUP_P", 100_000, { watts: 2 });
  board.capacitor("CLAMP", "SUP_P", 2.2e-9, 1000, "ceramic");
  board.resistor("AUX", "AUX_R", 10);
  board.diode("AUX_R", "VCC_SW", "signal", 100, 0.2);
  board.capacitor("VCC_SW", "NBUS", 33e-6, 35, "electrolytic", { price: 0.2 });
  board.ceramic("FB", "NBUS", 10e-9);
  const diodes = new Map<string, string>();
  for (const { rail, volts, diode, farads, against = "NBUS" } of secondaries) {
    diodes.set(
      rail,
      board.diode(`S_${rail}`, rail, diode, diode === "schottky" ? 100 : 200, 2, { price: 0.4 }),
    );
    board.capacitor(rail, against, farads, Math.max(16, Math.ceil(volts * 1.6)), "electrolytic", {
      price: 0.4,
    });
    board.ceramic(rail, against);
  }
  if (feedback === "optocoupler") optoLoop(board, secondaries[0]);
  else ownLoop(board);
  board.net("DRAIN", "drain of the off-line switch");
  board.net("SUP_P", "feed of the small supply");
  board.net("VCC_SW", "supply of the off-line switch");
  return diodes;
}

/** Shunt reference and optocoupler that hold the first rail. */
function optoLoop(board: Composer, regulated: Secondary): void {
  board.resistor(regulated.rail, "OPTO_A", 1_000);
  board.part("OC", "opto", { a: "OPTO_A", k: "REF_K", c: "FB", e: "NBUS" }, {}, { price: 0.3 });
  board.part("U", "shuntref", { ref: "REF", k: "REF_K", a: "NBUS" }, { volts: 2.5 }, { price: 0.3 });
  board.resistor(regulated.rail, "REF", 10_000 * (regulated.volts / 2.5 - 1), { tolerance: 0.01 });
  board.resistor("REF", "NBUS", 10_000, { tolerance: 0.01 });
  board.ceramic("REF_K", "REF");
}

/** A divider from the switch's own supply, which follows the rails by the turns; values from memory. */
function ownLoop(board: Composer): void {
  board.resistor("VCC_SW", "FB", 47_000, { tolerance: 0.01 });
  board.resistor("FB", "NBUS", 10_000, { tolerance: 0.01 });
}

/** The supply's own capacitor behind the fuse resistor; at 565 V two in series, each with its resistor. */
function primaryBulk(board: Composer, from: SupplyBus): void {
  if (from === "325 V") {
    board.capacitor("SUP_P", "NBUS", 4.7e-6, 450, "electrolytic", { price: 0.7 });
    return;
  }
  for (const [plus, minus] of [
    ["SUP_P", "SUP_M"],
    ["SUP_M", "NBUS"],
  ] as const) {
    board.capacitor(plus, minus, 10e-6, 400, "electrolytic", { price: 0.7 });
    board.resistor(plus, minus, 470_000, {}, { role: "balancing resistor" });
  }
}

/** A linear regulator with its capacitors; returns its reference. */
export function regulator(board: Composer, from: string, to: string, volts: number): string {
  board.stage("supply");
  const ref = board.part(
    "U",
    "regulator",
    { in: from, out: to, gnd: "NBUS" },
    { volts, amps: 1 },
    { price: 0.6 },
  );
  board.ceramic(from, "NBUS", 330e-9);
  board.capacitor(to, "NBUS", 47e-6, 16, "electrolytic", { price: 0.15 });
  return ref;
}
