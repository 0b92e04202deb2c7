/**
 * Three-phase power module with what stands round it. Values (common practice, some from memory): one shunt a leg, 20
 * V clamp and capacitors on its 15 V, bootstrap 22 uF with 100 nF, 100 ohm and 1 nF at the inputs, fault pull-up 4.7
 * kohm, trip filter 1 kohm and 2.2 nF; the 27 mohm shunt that a board may ask for as in one published washing machine.
 */
import type { Composer } from "../composer.ts";
import { PHASES } from "./discrete-inverter.ts";

export const SIGNALS = ["up", "vp", "wp", "un", "vn", "wn"] as const;

/** What changes with the size of the drive; what is left out is a 20 A 600 V module with 20 mohm shunts. */
export interface ModuleRatings {
  readonly volts?: number;
  readonly amps?: number;
  readonly price?: number;
  readonly shuntOhms?: number;
  readonly snubberVolts?: number;
}

/** `drive` is its 15 V, `logic` the rail of the fault pull-up; signals come from the controller's nets `M_up` ... `M_wn`. */
export function moduleInverter(
  board: Composer,
  drive: string,
  logic: string,
  ratings: ModuleRatings = {},
): void {
  const { volts = 600, amps = 20, price = 26, shuntOhms = 0.02, snubberVolts = 630 } = ratings;
  board.stage("inverter");
  const pins: Record<string, string> = {
    p: "PBUS",
    u: "U",
    v: "V",
    w: "W",
    vcc: drive,
    com: "NBUS",
    fault: "FO",
    trip: "CIN",
  };
  for (const phase of PHASES) {
    pins[`n${phase.toLowerCase()}`] = `N_${phase}`;
    pins[`vb${phase.toLowerCase()}`] = `VB_${phase}`;
  }
  for (const signal of SIGNALS) pins[`in${signal}`] = `IN_${signal}`;
  board.part("M", "module", pins, { volts, amps }, { price });
  board.capacitor("PBUS", "NBUS", 0.1e-6, snubberVolts, "film");
  for (const phase of PHASES) {
    board.resistor(
      `N_${phase}`,
      "NBUS",
      shuntOhms,
      { watts: 3, tolerance: 0.01 },
      { price: 0.3, role: "shunt" },
    );
    board.net(phase, `phase ${phase}`);
    board.net(`N_${phase}`, `lower end of phase ${phase} at the module`);
    board.net(`VB_${phase}`, `bootstrap of phase ${phase}`);
  }
  board.stage("drive");
  for (const phase of PHASES) {
    board.capacitor(`VB_${phase}`, phase, 22e-6, 25, "electrolytic", { price: 0.2 });
    board.ceramic(`VB_${phase}`, phase);
  }
  for (const signal of SIGNALS) {
    board.resistor(`M_${signal}`, `IN_${signal}`, 100);
    board.ceramic(`IN_${signal}`, "NBUS", 1e-9);
    board.net(
      `IN_${signal}`,
      `module's input for the ${signal.endsWith("p") ? "upper" : "lower"} switch of phase ${signal[0].toUpperCase()}`,
    );
  }
  board.capacitor(drive, "NBUS", 220e-6, 25, "electrolytic", { price: 0.2 });
  board.ceramic(drive, "NBUS");
  board.zener("NBUS", drive, 22);
  board.resistor(logic, "FO", 4_700);
  board.ceramic("FO", "NBUS", 1e-9);
  board.resistor("N_U", "CIN", 1_000);
  board.resistor("N_V", "CIN", 1_000);
  board.resistor("N_W", "CIN", 1_000);
  board.ceramic("CIN", "NBUS", 2.2e-9);
}
