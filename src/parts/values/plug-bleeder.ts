import type { Parsed } from "../../units/outcome.ts";
import { ranged, within } from "../range.ts";

/** What may stand at the pins of a pulled plug, and after how long (IEC 60335-1 cl. 22.5, seen at second hand). */
const PLUG_VOLTS = 34;
const PLUG_SECONDS = 1;
/** Capacitors up to this are exempt. */
const EXEMPT_FARADS = 0.1e-6;

/** The highest bleeder across the X capacitors: t / (C ln(peak / 34 V)). Null where they are too small to need one. */
export function plugBleederOhms(farads: number, mainsVolts: number): Parsed<number | null> {
  const inputs = [ranged("capacitance", farads, 0, 1e-4, "F"), ranged("mains", mainsVolts, 50, 500, "V")];
  return within(inputs, () =>
    farads <= EXEMPT_FARADS
      ? null
      : PLUG_SECONDS / (farads * Math.log((mainsVolts * Math.SQRT2) / PLUG_VOLTS)),
  );
}
