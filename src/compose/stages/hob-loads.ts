/**
 * What a hob's power board feeds and listens to: cooling fan on a plug, the key and display board on another. Values (common
 * practice): fan pulled down by a transistor with a diode across it, 470 ohm and 1 nF at each line to the key board.
 */
import type { Composer } from "../composer.ts";
import { relayTransistor } from "./controller.ts";

/** A fan on `rail`, its other wire pulled down from the controller's net `pin`. The fan itself is not on the board. */
export function switchedFan(board: Composer, rail: string, pin: string): void {
  relayTransistor(board, pin, "FAN_LOW");
  board.diode("FAN_LOW", rail, "signal", 100, 0.2);
  board.ceramic("FAN_LOW", "NBUS");
  board.net("FAN_LOW", "fan plug, the wire that is switched");
}

/** The key and display board on its plug: feed, ground, and one line for each of `lines`, the controller's nets. */
export function keyBoard(board: Composer, rail: string, lines: readonly string[]): void {
  board.stage("output");
  const pins: Record<string, string> = { vcc: rail, gnd: "NBUS" };
  for (const line of lines) {
    pins[line.toLowerCase()] = `KEY_${line}`;
    board.resistor(line, `KEY_${line}`, 470);
    board.ceramic(`KEY_${line}`, "NBUS", 1e-9);
  }
  board.part("U", "ic", pins, { volts: 5 }, { price: 15, plugged: true, role: "key and display board" });
}
