/**
 * Six discrete switches with their gate parts, three half-bridge drivers with bootstrap, one shunt a leg. Values
 * (common practice): 600 V switches with co-packed diode, gate 47 ohm, 10 kohm and an 18 V clamp from gate to emitter,
 * bootstrap through a fast diode and 22 ohm into 10 uF.
 */
import type { Composer } from "../composer.ts";

export const PHASES = ["U", "V", "W"] as const;

/**
 * Driver pins `hin_x` and `lin_x` come from the controller through 100 ohm; `drive` is the drivers' rail, `volts` the rating of
 * the switches and of the diodes that stand the bus with them.
 */
export function discreteInverter(board: Composer, drive: string, volts = 600): void {
  for (const phase of PHASES) {
    board.stage("inverter");
    const shunt = `E_${phase}`;
    board.part("Q", "igbt", { g: `G_H${phase}`, c: "PBUS", e: phase }, { volts, amps: 20 }, { price: 2.6 });
    board.part("Q", "igbt", { g: `G_L${phase}`, c: phase, e: shunt }, { volts, amps: 20 }, { price: 2.6 });
    board.resistor(shunt, "NBUS", 0.02, { watts: 2, tolerance: 0.01 }, { price: 0.3, role: "shunt" });
    board.net(phase, `phase ${phase}`);
    board.net(`G_H${phase}`, `gate of the upper switch of phase ${phase}`);
    board.net(`G_L${phase}`, `gate of the lower switch of phase ${phase}`);
    board.stage("drive");
    gate(board, `DH_${phase}`, `G_H${phase}`, phase);
    gate(board, `DL_${phase}`, `G_L${phase}`, shunt);
    board.part(
      "U",
      "ic",
      {
        vcc: drive,
        gnd: "NBUS",
        hin: `HI_${phase}`,
        lin: `LI_${phase}`,
        vb: `VB_${phase}`,
        ho: `DH_${phase}`,
        vs: phase,
        lo: `DL_${phase}`,
      },
      {
        volts: 15,
        floating: [
          ["vb", "vs"],
          ["ho", "vs"],
        ],
      },
      { price: 1.2, role: "half-bridge driver" },
    );
    board.ceramic(drive, "NBUS");
    board.resistor(drive, `BS_${phase}`, 22);
    board.diode(`BS_${phase}`, `VB_${phase}`, "fast", volts, 1, { price: 0.2 });
    board.capacitor(`VB_${phase}`, phase, 10e-6, 25, "electrolytic", { price: 0.2 });
    board.net(`VB_${phase}`, `bootstrap of phase ${phase}`);
  }
}

function gate(board: Composer, driver: string, gateNet: string, emitter: string): void {
  board.resistor(driver, gateNet, 47);
  board.resistor(gateNet, emitter, 10_000);
  board.zener(emitter, gateNet, 18);
}
