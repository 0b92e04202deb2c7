/**
 * The control terminals of a frequency drive, on a 0 V of their own: switched inputs through optocouplers, 10 V reference, speed
 * input through an isolating amplifier, relay contact. Values: 4.7 kohm at an input, 10 kohm pull-up behind its optocoupler
 * (common practice); 47 kohm across it, reference, amplifier, clamp and what bridges the barrier from memory.
 */
import type { Composer } from "../composer.ts";

/** One input that a contact joins to the 24 V terminal; `pin` is the controller's net. */
export function switchedInput(
  board: Composer,
  name: string,
  common: string,
  logic: string,
  pin: string,
): void {
  board.stage("output");
  board.resistor(`T_${name}`, common, 47_000);
  board.resistor(`T_${name}`, `A_${name}`, 4_700);
  board.part("OC", "opto", { a: `A_${name}`, k: common, c: pin, e: "NBUS" }, {}, { price: 0.3 });
  board.resistor(logic, pin, 10_000);
  board.net(`T_${name}`, `control terminal ${name}`);
}

/** 10 V for a potentiometer from the control rail; returns the reference of what feeds it. */
export function potentiometerRail(board: Composer, from: string, to: string, common: string): string {
  board.stage("output");
  const feed = board.resistor(from, to, 1_500, { watts: 0.5 });
  board.zener(common, to, 10);
  board.ceramic(to, common);
  board.net(to, "10 V terminal for a potentiometer");
  return feed;
}

/** 0-10 V speed input: divider and clamp on the terminals' side, isolating amplifier, filter at the controller. */
export function speedTerminal(
  board: Composer,
  reference: string,
  common: string,
  logic: string,
  pin: string,
): void {
  board.stage("sensor");
  board.resistor("T_SPEED", common, 20_000);
  board.resistor("T_SPEED", "AMP_IN", 10_000);
  board.resistor("AMP_IN", common, 10_000);
  board.zener(common, "AMP_IN", 5.1);
  board.part(
    "U",
    "ic",
    { vcc: logic, gnd: "NBUS", out: "AMP_OUT", in: "AMP_IN", vin: reference, gin: common },
    {
      volts: 5,
      floating: [
        ["in", "gin"],
        ["vin", "gin"],
      ],
    },
    { price: 2.1, role: "isolating amplifier" },
  );
  board.resistor("AMP_OUT", pin, 1_000);
  board.ceramic(pin, "NBUS", 10e-9);
  board.net("T_SPEED", "control terminal of the speed command");
}

/** A relay that switches the control rail through to a terminal with a clamp; its coil is pulled down by a driver. */
export function contactTerminal(
  board: Composer,
  coilRail: string,
  coilLow: string,
  rail: string,
  common: string,
): void {
  board.stage("output");
  board.part(
    "K",
    "relay",
    { coil1: coilRail, coil2: coilLow, com: rail, no: "T_READY" },
    { coilOhms: 720, coilVolts: 15, amps: 5 },
    { price: 1.1 },
  );
  board.diode(coilLow, coilRail, "signal", 100, 0.2);
  board.zener(common, "T_READY", 33);
  board.net("T_READY", "relay's contact at the terminals");
}

/** Across the barrier between terminals and bus: 2.2 nF, and two resistors in series that let no static charge stand. */
export function barrier(board: Composer, common: string): void {
  board.stage("output");
  board.ceramic(common, "NBUS", 2.2e-9, 400);
  board.resistor(common, "BARRIER", 4.7e6);
  board.resistor("BARRIER", "NBUS", 4.7e6);
}
