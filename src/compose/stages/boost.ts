/**
 * Single-switch boost: plugged reactor, switch with its gate parts and totem pole, boost and bypass diode, shunt.
 * Values from Common practice: reactor 250 uH 60 mohm, 10 mohm shunt, 22 ohm gate, 10 kohm and 18 V clamp, fast boost
 * diode.
 */
import type { Composer } from "../composer.ts";
import { pushPullDrive } from "./push-pull-drive.ts";

/** From BR_P / BR_N to PBUS / NBUS; `signal` is the controller's net, `drive` the 15 V rail. */
export function boost(board: Composer, drive: string, signal: string): void {
  board.stage("pfc");
  board.capacitor("BR_P", "BR_N", 1e-6, 450, "film", { price: 0.8 });
  board.part(
    "L",
    "inductor",
    { "1": "BR_P", "2": "SW" },
    { henries: 2.5e-4, ohms: 0.06 },
    { plugged: true, price: 14 },
  );
  board.part(
    "Q",
    "igbt",
    { g: "G_PFC", c: "SW", e: "NBUS" },
    { volts: 650, amps: 40 },
    { price: 3.4, role: "boost switch" },
  );
  board.diode("SW", "PBUS", "fast", 600, 20, { price: 1.8, role: "boost diode" });
  board.diode("BR_P", "PBUS", "rectifier", 1000, 10, { price: 0.6, role: "bypass diode" });
  board.resistor("BR_N", "NBUS", 0.01, { watts: 3, tolerance: 0.01 }, { price: 0.4, role: "shunt" });
  pushPullDrive(board, { rail: drive, signal, gate: "G_PFC", emitter: "NBUS", name: "PFC" });
  board.resistor("BR_N", "PFC_IS", 1_000);
  board.ceramic("PFC_IS", "NBUS", 1e-9);
  board.net("BR_P", "bridge +");
  board.net("BR_N", "bridge -");
  board.net("SW", "switching point between reactor and boost diode");
  board.net("G_PFC", "gate of the boost switch");
}
