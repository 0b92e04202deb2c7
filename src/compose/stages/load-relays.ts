/**
 * Relays for loads on the mains, each with its snubber at the contact, and what pulls their coils down. Values: snubber 100 ohm
 * and 22 nF, coils of 400 ohm at 12 V and 720 ohm at 15 V (common practice).
 */
import type { Composer } from "../composer.ts";
import { relayTransistor } from "./controller.ts";
import { relayArray } from "./outdoor-loads.ts";

export interface LoadRelays {
  readonly count: number;
  readonly drivenBy: "transistors" | "array";
  /** the rail of the coils, and its volts */
  readonly rail: string;
  readonly volts: 12 | 15;
  /** the mains net that the contacts pass on, and the one that the loads return to */
  readonly live: string;
  readonly back: string;
}

/** Adds them; returns the controller's nets, one a relay. */
export function loadRelays(board: Composer, relays: LoadRelays): readonly string[] {
  const { count, rail, volts, live, back } = relays;
  const numbers = Array.from({ length: count }, (_, i) => i + 1);
  board.stage("output");
  for (const n of numbers) {
    board.part(
      "K",
      "relay",
      { coil1: rail, coil2: `K_${n}`, com: live, no: `LOAD_${n}` },
      { coilOhms: volts === 12 ? 400 : 720, coilVolts: volts, amps: 10 },
    );
    board.resistor(`LOAD_${n}`, `SNUB_${n}`, 100, { watts: 1 });
    board.capacitor(`SNUB_${n}`, back, 22e-9, 310, "film");
    board.net(`LOAD_${n}`, `switched output ${n}`);
  }
  if (relays.drivenBy === "array")
    relayArray(
      board,
      rail,
      numbers.map((n) => [`D_${n}`, `K_${n}`]),
    );
  else
    for (const n of numbers) {
      board.diode(`K_${n}`, rail, "signal", 100, 0.2);
      relayTransistor(board, `D_${n}`, `K_${n}`);
    }
  return numbers.map((n) => `D_${n}`);
}
