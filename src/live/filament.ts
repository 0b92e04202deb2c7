/**
 * A filament lamp in series with the board: the resistance of tungsten follows its heat, so that it is a few ohms to a short's
 * first moment and hundreds to the rest of it.
 */
import type { SelfHeating } from "./power-circuit.ts";

/** What the lamp model rests on. */
const FILAMENT = {
  /** hot ohms over cold ones; the trade's table of lamps has 12.9 to 14 at 230 V, common practice */
  hotToCold: 12.9,
  /** amps follow volts to this power near rated volts: 0.53 to 0.58 for gas-filled lamps, from memory (lamp handbooks) */
  ampsExponent: 0.55,
} as const;

/**
 * What an eye makes of it, as the share of the rated watts: a dull red is seen in a lit room from some 1000 K, which with 2550 K at
 * rated watts and watts as the 4.6th power of kelvin is 1.4 %. Where bright begins is from memory.
 */
const SEEN_SHARE = { dim: 0.014, bright: 0.35 } as const;

export interface Lamp {
  readonly watts: number;
  readonly ratedVolts: number;
}

export function hotOhms({ watts, ratedVolts }: Lamp): number {
  return ratedVolts ** 2 / watts;
}

export function coldOhms(lamp: Lamp): number {
  return hotOhms(lamp) / FILAMENT.hotToCold;
}

/** d ln(ohms) / d ln(watts), from amps = volts ^ exponent. */
const OHMS_EXPONENT = (1 - FILAMENT.ampsExponent) / (1 + FILAMENT.ampsExponent);

/** Ohms of the filament in a steady state that turns `watts` to heat and light in it. */
export function filamentOhms(lamp: Lamp, watts: number): number {
  return Math.max(coldOhms(lamp), hotOhms(lamp) * (watts / lamp.watts) ** OHMS_EXPONENT);
}

export function filament(lamp: Lamp): SelfHeating {
  return { ohmsAt: (watts) => filamentOhms(lamp, watts), steepness: 0, slow: false };
}

/** How brightly it glows. */
export function glow(lamp: Lamp, watts: number): "lamp-dark" | "lamp-dim" | "lamp-bright" {
  const share = watts / lamp.watts;
  return share < SEEN_SHARE.dim ? "lamp-dark" : share < SEEN_SHARE.bright ? "lamp-dim" : "lamp-bright";
}
