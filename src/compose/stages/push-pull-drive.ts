/**
 * The drive of one switch from a low rail: gate resistor, pull-down and clamp at the switch, a push-pull pair of small
 * transistors before it, and a third that holds the pair off. Values (common practice): 22 ohm gate, 10 kohm and 18 V clamp,
 * base pulled up by 2.2 kohm.
 */
import type { Composer } from "../composer.ts";

export interface DriveNets {
  /** the rail that feeds the pair */
  readonly rail: string;
  /** the controller's net; high holds the switch off */
  readonly signal: string;
  readonly gate: string;
  readonly emitter: string;
  /** nets of the drive are `<name>_B` (bases of the pair), `<name>_C` (base of the third) and `<name>_DRV` */
  readonly name: string;
}

/** Adds the drive to the stage that is open. */
export function pushPullDrive(board: Composer, { rail, signal, gate, emitter, name }: DriveNets): void {
  const [base, hold, out] = [`${name}_B`, `${name}_C`, `${name}_DRV`];
  const small = { volts: 40, amps: 1 };
  board.resistor(out, gate, 22);
  board.resistor(gate, emitter, 10_000);
  board.zener(emitter, gate, 18);
  board.part("Q", "bjt", { b: base, c: rail, e: out }, { polarity: "npn", ...small }, { price: 0.2 });
  board.part("Q", "bjt", { b: base, c: "NBUS", e: out }, { polarity: "pnp", ...small }, { price: 0.2 });
  board.part(
    "Q",
    "bjt",
    { b: hold, c: base, e: "NBUS" },
    { polarity: "npn", volts: 45, amps: 0.1 },
    { price: 0.1 },
  );
  board.resistor(rail, base, 2_200);
  board.resistor(signal, hold, 4_700);
  board.ceramic(rail, "NBUS", 1e-6);
}
