/**
 * Conductor spacing by IPC-2221, as transcribed in KiCad's calculator (seen at second hand). Steps by peak or direct volts; above 500 V a
 * length for each further volt.
 */
import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

/** B1 inside, B2 outside bare to 3050 m, B3 above, B4 outside under a coating; A5 coated assembly, A6 bare leads, A7 coated leads. */
export type IpcColumn = "B1" | "B2" | "B3" | "B4" | "A5" | "A6" | "A7";

const COLUMNS: readonly IpcColumn[] = ["B1", "B2", "B3", "B4", "A5", "A6", "A7"];
/** A7 at 251 to 300 V reads 0.8 here and 0.38 in an older list; the larger is kept. */
const STEPS: readonly (readonly [number, readonly number[]])[] = [
  [15, [0.05, 0.1, 0.1, 0.05, 0.13, 0.13, 0.13]],
  [30, [0.05, 0.1, 0.1, 0.05, 0.13, 0.25, 0.13]],
  [50, [0.1, 0.6, 0.6, 0.13, 0.13, 0.4, 0.13]],
  [100, [0.1, 0.6, 1.5, 0.13, 0.13, 0.5, 0.13]],
  [150, [0.2, 0.6, 3.2, 0.4, 0.4, 0.8, 0.4]],
  [170, [0.2, 1.25, 3.2, 0.4, 0.4, 0.8, 0.4]],
  [250, [0.2, 1.25, 6.4, 0.4, 0.4, 0.8, 0.4]],
  [300, [0.2, 1.25, 12.5, 0.4, 0.4, 0.8, 0.8]],
  [500, [0.25, 2.5, 12.5, 0.8, 0.8, 1.5, 0.8]],
];
const PER_VOLT = [0.0025, 0.005, 0.025, 0.00305, 0.00305, 0.00305, 0.00305];
const STEPS_END = 500;
const MOST_VOLTS = 5000;

/** Millimetres between two conductors. */
export function ipcSpacingMm(peakVolts: number, column: IpcColumn): Parsed<number> {
  const at = COLUMNS.indexOf(column);
  return within([ranged("peak voltage", peakVolts, 0, MOST_VOLTS, "V")], () => {
    const row = STEPS.find(([upTo]) => peakVolts <= upTo) ?? STEPS.at(-1);
    return (row?.[1][at] ?? 0) + Math.max(0, peakVolts - STEPS_END) * (PER_VOLT[at] ?? 0);
  });
}

/** Power supplies: 0.6 mm and 0.005 mm a volt (IPC-9592, seen at second hand at smpspowersupply.com). */
export function supplySpacingMm(peakVolts: number): Parsed<number> {
  return within([ranged("peak voltage", peakVolts, 0, MOST_VOLTS, "V")], () => 0.6 + 0.005 * peakVolts);
}
