/**
 * Brake chopper: one switch from the brake terminal to bus minus with its gate parts and driver, the diode back to bus plus, the
 * resistor on its terminals. Values: gate 47 ohm, 10 kohm and 18 V clamp (common practice); resistor from memory.
 */
import type { Composer } from "../composer.ts";

/** `signal` is the controller's net, `drive` the 15 V rail; `volts` the rating of switch and diode. */
export function brakeChopper(
  board: Composer,
  drive: string,
  signal: string,
  volts: number,
  resistorOhms: number,
): void {
  board.stage("chopper");
  board.part(
    "Q",
    "igbt",
    { g: "G_BR", c: "BRAKE", e: "NBUS" },
    { volts, amps: 15 },
    { price: 2.4, role: "brake switch" },
  );
  board.diode("BRAKE", "PBUS", "fast", volts, 8, { price: 0.8, role: "brake diode" });
  board.resistor(
    "PBUS",
    "BRAKE",
    resistorOhms,
    { watts: 200 },
    { plugged: true, price: 24, role: "brake resistor on its terminals" },
  );
  board.resistor("BR_DRV", "G_BR", 47);
  board.resistor("G_BR", "NBUS", 10_000);
  board.zener("NBUS", "G_BR", 18);
  board.part(
    "U",
    "ic",
    { vcc: drive, gnd: "NBUS", in: "BR_IN", out: "BR_DRV" },
    { volts: 15 },
    { price: 0.7, role: "gate driver" },
  );
  board.ceramic(drive, "NBUS");
  board.resistor(signal, "BR_IN", 100);
  board.net("BRAKE", "brake terminal");
  board.net("G_BR", "gate of the brake switch");
}
