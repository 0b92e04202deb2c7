/** What a fault is where the log or the table says no value (board file format). */
import type { Board } from "./board.ts";
import type { Fault } from "./fault.ts";

/** Nominal values of faults, ohms. */
export const FAULT_OHMS = { short: 0.2, leaky: 1000, leakyInSeries: 30 } as const;
/** `drift` doubles a resistance and halves a capacitance. */
export const DRIFT = { ohms: 2, farads: 0.5 } as const;

/** The ohms, of a capacitor's drift the farads, that a fault stands for; undefined where it has none, as an open has. */
export function nominalValue(board: Board, fault: Fault): number | undefined {
  if (fault.mode === "open") return undefined;
  if (fault.value !== null) return fault.value;
  if (fault.of === "nets" || fault.mode !== "drift")
    return FAULT_OHMS[fault.mode === "short" ? "short" : "leaky"];
  const value = board.parts.get(fault.part)?.value;
  if (driftsInFarads(board, fault))
    return value?.farads === undefined ? undefined : value.farads * DRIFT.farads;
  return value?.ohms === undefined ? undefined : value.ohms * DRIFT.ohms;
}

/** Is it the capacitance that has drifted? */
export function driftsInFarads(board: Board, fault: Fault): boolean {
  return fault.of === "part" && fault.mode === "drift" && board.parts.get(fault.part)?.kind === "capacitor";
}
