/**
 * What an outdoor unit's board drives and listens to: darlington array with relay, valve and stepper, fan plug,
 * current loop to the other unit. Values (common practice; stepper 46 ohm a phase from memory).
 */
import type { Composer } from "../composer.ts";

/** A seven-channel darlington array on `rail`; `channels` maps controller net to output net. */
export function relayArray(
  board: Composer,
  rail: string,
  channels: readonly (readonly [string, string])[],
): void {
  board.stage("output");
  const pins: Record<string, string> = { vcc: rail, gnd: "NBUS" };
  channels.forEach(([input, out], i) => {
    pins[`i${i + 1}`] = input;
    pins[`o${i + 1}`] = out;
  });
  board.part("U", "ic", pins, { volts: 12 }, { price: 0.5, role: "darlington array" });
  board.ceramic(rail, "NBUS");
}

/** Four-way valve relay and the stepper of the expansion valve on its plug. */
export function valves(board: Composer, rail: string): void {
  board.stage("output");
  board.part(
    "K",
    "relay",
    { coil1: rail, coil2: "O_VALVE", com: "L_F", no: "VALVE_L" },
    { coilOhms: 400, coilVolts: 12, amps: 5 },
    { price: 1.2 },
  );
  board.resistor("VALVE_L", "VALVE_S", 100, { watts: 1 });
  board.capacitor("VALVE_S", "N_IN", 22e-9, 310, "film");
  for (const phase of ["A", "B", "C", "D"])
    board.resistor(
      rail,
      `O_STEP_${phase}`,
      46,
      { tolerance: 0.07 },
      { plugged: true, role: "valve stepper coil", price: 3 },
    );
}

/** Fan with its own driver: bus, 15 V, speed command and tacho on one plug. */
export function fanPlug(board: Composer, drive: string, command: string, tacho: string, logic: string): void {
  board.stage("output");
  board.resistor("FAN_VSP", command, 1_000);
  board.capacitor("FAN_VSP", "NBUS", 10e-6, 25, "electrolytic");
  board.resistor(logic, "FAN_FG", 10_000);
  board.resistor("FAN_FG", tacho, 1_000);
  board.ceramic(tacho, "NBUS", 1e-9);
  board.ceramic(drive, "NBUS");
}

/** Current loop: receiving and sending optocoupler on the isolated side, a series diode and zener. */
export function currentLoop(board: Composer, logic: string, send: string, receive: string): void {
  board.stage("output");
  board.part("OC", "opto", { a: "LOOP_A", k: "LOOP_K", c: receive, e: "NBUS" }, {}, { price: 0.3 });
  board.part("OC", "opto", { a: "TX_A", k: "NBUS", c: "LOOP_D", e: "LOOP_A" }, {}, { price: 0.3 });
  board.resistor(logic, receive, 10_000);
  board.resistor(send, "TX_A", 470);
  board.diode("LOOP_IN", "LOOP_D", "rectifier", 1000, 1);
  board.resistor("LOOP_K", "N_IN", 4_700, { watts: 1 });
  board.zener("N_IN", "LOOP_IN", 24);
  board.net("LOOP_IN", "signal wire to the other unit");
}
