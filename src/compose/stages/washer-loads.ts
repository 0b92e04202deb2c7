/**
 * What a washing machine's board switches and listens to: triac outputs for valve and pump, the door lock, heater relay, tacho,
 * water level. Values: snubber 100 ohm and 22 nF, array and relay coils (common practice); coils of valve, pump, lock and
 * tacho, heating element and the divider of the lock's sense chain from memory.
 */
import type { Composer } from "../composer.ts";

/** A mains load on its plug. */
export interface MainsLoad {
  readonly name: string;
  readonly words: string;
  readonly ohms: number;
  readonly price: number;
}

/** A triac with its triac optocoupler and snubber, from the `live` net to `out`. The opto's LED is lit from the controller's pin. */
export function triacOutput(board: Composer, name: string, pin: string, live: string): void {
  board.stage("output");
  const out = `O_${name}`;
  board.resistor(pin, `A_${name}`, 470);
  board.part(
    "OC",
    "opto",
    { a: `A_${name}`, k: "NBUS", c: `P_${name}`, e: `G_${name}` },
    {},
    { price: 0.5, role: "triac optocoupler" },
  );
  board.resistor(live, `P_${name}`, 330, { watts: 0.5 });
  board.part("TR", "triac", { g: `G_${name}`, "1": out, "2": live }, { volts: 800, amps: 4 }, { price: 0.7 });
  board.resistor(live, `N_${name}`, 100, { watts: 1 });
  board.capacitor(`N_${name}`, out, 22e-9, 310, "film");
  board.net(out, `output ${name.toLowerCase()} at its plug`);
}

/** The coil of a load, from its output to neutral, on its plug. */
export function coil(board: Composer, { name, words, ohms, price }: MainsLoad): void {
  board.stage("output");
  board.part(
    "L",
    "inductor",
    { "1": `O_${name}`, "2": "N_IN" },
    { ohms },
    { plugged: true, role: words, price },
  );
}

/** The lock's heated or magnet coil on its output; its contact passes the line on to the loads once the door is held. */
export function doorLock(board: Composer, name: string, live: string, behind: string): void {
  board.stage("output");
  board.part(
    "S",
    "relay",
    { coil1: `O_${name}`, coil2: "N_IN", com: live, no: behind },
    { coilOhms: 1_000, coilVolts: 230, amps: 16 },
    { plugged: true, role: "door lock", price: 14 },
  );
  board.net(behind, "line behind the door lock");
}

/** Tells the controller that the line behind the lock is live: chain of resistors, clamp, capacitor. */
export function lockSense(board: Composer, behind: string, pin: string): void {
  board.stage("sensor");
  board.resistor(behind, "LS1", 330_000);
  board.resistor("LS1", pin, 330_000);
  board.resistor(pin, "NBUS", 10_000);
  board.zener("NBUS", pin, 5.1);
  board.ceramic(pin, "NBUS", 10e-9);
}

/** A relay from the line behind the lock to a load on its plug; its coil hangs on the array's output. */
export function loadRelay(
  board: Composer,
  rail: string,
  coilLow: string,
  live: string,
  amps: number,
  { name, words, ohms, price }: MainsLoad,
): void {
  board.stage("output");
  board.part(
    "K",
    "relay",
    { coil1: rail, coil2: coilLow, com: live, no: `O_${name}` },
    { coilOhms: amps > 10 ? 360 : 400, coilVolts: 12, amps },
    { price: amps > 10 ? 2.2 : 1.2 },
  );
  board.resistor(`O_${name}`, "N_IN", ohms, { tolerance: 0.07 }, { plugged: true, role: words, price });
  board.net(`O_${name}`, `output ${name.toLowerCase()} at its plug`);
}

/** The motor's tacho coil on its plug, and the transistor that squares it for the controller. */
export function tacho(board: Composer, rail: string, pin: string): void {
  board.stage("sensor");
  board.part(
    "L",
    "inductor",
    { "1": "TACHO", "2": "NBUS" },
    { ohms: 120 },
    { plugged: true, role: "tacho coil", price: 8 },
  );
  board.resistor("TACHO", "TACHO_B", 4_700);
  board.diode("NBUS", "TACHO_B", "signal", 100, 0.2);
  board.ceramic("TACHO_B", "NBUS", 10e-9);
  board.part(
    "Q",
    "bjt",
    { b: "TACHO_B", c: pin, e: "NBUS" },
    { polarity: "npn", volts: 45, amps: 0.1 },
    { price: 0.1 },
  );
  board.resistor(rail, pin, 10_000);
  board.net("TACHO", "tacho at its plug");
}

/** The water level sensor's signal at its plug: pull-up, series resistor, capacitor. */
export function levelInput(board: Composer, rail: string, pin: string): void {
  board.stage("sensor");
  board.resistor(rail, "LEVEL_IN", 10_000);
  board.resistor("LEVEL_IN", pin, 1_000);
  board.ceramic(pin, "NBUS");
  board.net("LEVEL_IN", "water level signal at its plug");
}
