/**
 * Single-switch quasi-resonant inverter: a small film capacitor for a bus, behind a choke so that the mains is free of the
 * switching current; the work coil with its resonant capacitor from there to the one switch. Values: film bus 8 uF and bridge
 * side as in one published hob teardown, choke 400 uH, resonant capacitor 0.27 uF 1200 V, switch 1350 V with reverse diode
 * (published hob texts); coil 90 uH with 80 mohm, bleeder 2 x 150 kohm and the minutes at its screws from memory.
 */
import type { Composer } from "../composer.ts";
import { pushPullDrive } from "./push-pull-drive.ts";

/** From BR_P to PBUS and the coil; `drive` is the rail of the gate drive, `hold` the controller's net that keeps it off. */
export function resonantInverter(board: Composer, drive: string, hold: string): void {
  board.stage("rectifier");
  board.part("L", "inductor", { "1": "BR_P", "2": "PBUS" }, { henries: 4e-4, ohms: 0.04 }, { price: 3.5 });
  board.stage("bus");
  board.capacitor("PBUS", "NBUS", 8e-6, 400, "film", { price: 2.4 });
  board.resistor("PBUS", "BL1", 150_000, { watts: 2 });
  board.resistor("BL1", "NBUS", 150_000, { watts: 2 });
  board.stage("inverter");
  board.part(
    "L",
    "inductor",
    { "1": "PBUS", "2": "SW" },
    { henries: 9e-5, ohms: 0.08 },
    { plugged: true, price: 24, role: "work coil", minutes: { lift: 1.5, refit: 1.5 } },
  );
  board.capacitor("PBUS", "SW", 0.27e-6, 1200, "film", { price: 2.2, role: "resonant capacitor" });
  board.part(
    "Q",
    "igbt",
    { g: "G_Q", c: "SW", e: "NBUS" },
    { volts: 1350, amps: 25 },
    { price: 4.2, role: "resonant switch" },
  );
  board.stage("drive");
  pushPullDrive(board, { rail: drive, signal: hold, gate: "G_Q", emitter: "NBUS", name: "GD" });
  board.net("BR_P", "bridge +");
  board.net("PBUS", "film bus +, at the coil");
  board.net("NBUS", "bus -");
  board.net("SW", "collector of the switch, at the coil");
  board.net("G_Q", "gate of the switch");
  board.net("GD_B", "bases of the gate drive's pair");
}
