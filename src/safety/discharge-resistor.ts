import { bleedSeconds, storedJoules } from "../board/stored-charge.ts";
import { EMPTY_BELOW_VOLTS } from "./discharge.ts";

/** A resistor to clip on, and how long it takes. */
interface DischargeResistor {
  readonly ohms: number;
  /** seconds to fall below 10 V */
  readonly seconds: number;
  readonly peakWatts: number;
  readonly joules: number;
}

/** Resistors a bench keeps for this, 10 W wire-wound: two values in common use among repairers and one between, common practice. */
const KEPT_OHMS = [2200, 4700, 10_000, 22_000] as const;
/** Short peak that a 10 W wire-wound part bears: 67 W is the customary 2.2 kohm on 385 V (common practice; the watts computed). */
const PEAK_WATTS = 70;

/**
 * The smallest kept resistor whose first peak a 10 W wire-wound part bears.
 * @param farads - all capacitance that will be emptied through it
 * @param volts - what was read across it
 */
export function dischargeResistor(farads: number, volts: number): DischargeResistor {
  const ohms = KEPT_OHMS.find((kept) => volts ** 2 / kept <= PEAK_WATTS) ?? KEPT_OHMS[KEPT_OHMS.length - 1];
  const from = Math.abs(volts);
  const seconds = from > EMPTY_BELOW_VOLTS ? bleedSeconds(from, EMPTY_BELOW_VOLTS, ohms, farads) : 0;
  return { ohms, seconds, peakWatts: volts ** 2 / ohms, joules: storedJoules(farads, volts) };
}
