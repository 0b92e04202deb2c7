/**
 * The controller with its decoupling, the parts round its pins, and what hangs on them. Values (common practice): 100
 * nF a supply pin and 10 uF, 100 ohm and 10 kohm at the drive signals, 10 kohm thermistor against 10 kohm, relay
 * through a transistor with 2.2 kohm.
 */
import type { Composer } from "../composer.ts";

/** The controller; `pins` are its inputs and outputs, pin name to net. Never sold programmed: not obtainable. */
export function controller(
  board: Composer,
  rail: string,
  volts: number,
  pins: Readonly<Record<string, string>>,
  ceramics: number,
): string {
  board.stage("logic");
  const ref = board.part(
    "U",
    "controller",
    { vdd: rail, gnd: "NBUS", ...pins },
    { volts, amps: 0.05 },
    { obtainable: false },
  );
  for (let i = 0; i < ceramics; i++) board.ceramic(rail, "NBUS");
  board.capacitor(rail, "NBUS", 10e-6, 16, "ceramic");
  board.resistor(rail, "NRST", 10_000);
  board.ceramic("NRST", "NBUS");
  return ref;
}

/** A drive signal: series resistor from the controller, pull-down at the driver. */
export function driveSignal(board: Composer, from: string, to: string): void {
  board.stage("drive");
  board.resistor(from, to, 100);
  board.resistor(to, "NBUS", 10_000);
}

/** A thermistor input: plug, pull-up, series resistor, capacitor. `value` where the sensor is not the usual 10 kohm. */
export function thermistor(
  board: Composer,
  rail: string,
  pin: string,
  name: string,
  value: { readonly ohms: number; readonly beta: number } = { ohms: 10_000, beta: 3435 },
): void {
  board.stage("sensor");
  board.part("TH", "ntc", { "1": `TH_${name}`, "2": "NBUS" }, value, { price: 0.8, plugged: true });
  board.resistor(rail, `TH_${name}`, 10_000, { tolerance: 0.01 });
  board.resistor(`TH_${name}`, pin, 1_000);
  board.ceramic(pin, "NBUS");
}

/** Current sense of the summed shunts: filter into a controller pin, biased to half the rail. */
export function currentSense(board: Composer, rail: string, shunt: string, pin: string): void {
  board.stage("sensor");
  board.resistor(shunt, pin, 1_000, { tolerance: 0.01 });
  board.resistor(rail, pin, 10_000, { tolerance: 0.01 });
  board.ceramic(pin, "NBUS", 1e-9);
}

/** A relay coil pulled down by a transistor from a controller pin. */
export function relayTransistor(board: Composer, pin: string, coilLow: string): void {
  board.stage("output");
  board.resistor(pin, `B_${coilLow}`, 2_200);
  board.resistor(`B_${coilLow}`, "NBUS", 10_000);
  board.part(
    "Q",
    "bjt",
    { b: `B_${coilLow}`, c: coilLow, e: "NBUS" },
    { polarity: "npn", volts: 45, amps: 0.5 },
    { price: 0.1 },
  );
}

/** A status light on a rail. */
export function statusLight(board: Composer, pin: string): void {
  board.stage("logic");
  board.resistor(pin, "LED_A", 1_000);
  board.part("LED", "led", { a: "LED_A", k: "NBUS" }, { volts: 1.8 }, { price: 0.1 });
}
