import { bleedSeconds, storedJoules } from "../board/stored-charge.ts";
import { EMPTY_BELOW_VOLTS } from "./discharge.ts";

/** A resistor that discharges, as a bench has it. */
export interface KeptResistor {
  readonly ohms: number;
  /** what it bears for ever */
  readonly watts: number;
}

/** A resistor to clip on, and how long it takes. */
interface DischargeResistor extends KeptResistor {
  /** the bench has it; otherwise it is one to choose */
  readonly own: boolean;
  /** seconds to fall below 10 V */
  readonly seconds: number;
  readonly peakWatts: number;
  readonly joules: number;
}

/** What a bench keeps for this where it does not say: 10 W wire-wound, common practice. */
const USUAL_WATTS = 10;
/** Two values in common use among repairers (2.2 and 10 kohm) and those beside them, common practice. */
const USUAL_OHMS = [2200, 4700, 10_000, 22_000] as const;
/** A wire-wound resistor bears a short peak of so many times its watts: 67 W is the customary 2.2 kohm, 10 W, on 385 V (common practice). */
const PEAK_SHARE = 7;
/** Nobody stands and waits longer; 200 kohm, which one article advises, would take 17 minutes (from memory; the minutes computed). */
const MOST_SECONDS = 300;

/** `resistor-4700` (10 W, as is usual) or `resistor-4700-25w`. */
const RESISTOR = /^resistor-([1-9]\d{0,6})(?:-([1-9]\d{0,2})w)?$/;

/** The resistor of an equipment word; null where it is none. */
export function keptResistor(word: string): KeptResistor | null {
  const found = RESISTOR.exec(word);
  return found === null ? null : { ohms: Number(found[1]), watts: Number(found[2] ?? USUAL_WATTS) };
}

/**
 * The quickest resistor whose first peak it bears: of those that the bench has, else of the usual ones, 10 W wire-wound.
 * @param farads - all capacitance that will be emptied through it
 * @param volts - what was read across it
 * @param equipment - the job's list, of which `resistor-...` count here
 */
export function dischargeResistor(
  farads: number,
  volts: number,
  equipment: readonly string[] = [],
): DischargeResistor {
  const from = Math.abs(volts);
  const joules = storedJoules(farads, volts);
  const worked = ({ ohms, watts }: KeptResistor, own: boolean): DischargeResistor => {
    const seconds = from > EMPTY_BELOW_VOLTS ? bleedSeconds(from, EMPTY_BELOW_VOLTS, ohms, farads) : 0;
    return { ohms, watts, own, seconds, peakWatts: volts ** 2 / ohms, joules };
  };
  const bears = ({ peakWatts, watts }: DischargeResistor) => peakWatts <= PEAK_SHARE * watts;
  const owned = equipment
    .flatMap((word) => keptResistor(word) ?? [])
    .sort((a, b) => a.ohms - b.ohms)
    .map((kept) => worked(kept, true))
    .find((one) => bears(one) && one.seconds <= MOST_SECONDS);
  if (owned !== undefined) return owned;
  const usual = USUAL_OHMS.map((ohms) => worked({ ohms, watts: USUAL_WATTS }, false));
  return usual.find(bears) ?? usual[usual.length - 1];
}
