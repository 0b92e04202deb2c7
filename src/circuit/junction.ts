/**
 * The junction law: Shockley's exponential, with the cubic tail that SPICE3 uses for reverse voltages (Nagel 1975; SPICE3f5
 * `dioload.c`), so that a deck run by ngspice solves the very same equation.
 */

/** k/q in volts per kelvin (CODATA 2018). */
export const VOLTS_PER_KELVIN = 8.617333262e-5;
export const ZERO_CELSIUS = 273.15;
/** Temperature at which all models of the board are given and solved: the meter's 25 degC. */
export const ROOM_CELSIUS = 25;

/** kT/q in volts. */
export function thermalVolts(celsius: number): number {
  return VOLTS_PER_KELVIN * (celsius + ZERO_CELSIUS);
}

/** Conductance across every junction (the deck sets `gmin` to the same). */
export const JUNCTION_LEAK_SIEMENS = 1e-12;

/** Current in amps at `volts`, without the junction leak. `emissionVolts` is n kT/q. */
export function junctionAmps(saturationAmps: number, emissionVolts: number, volts: number): number {
  if (volts >= -3 * emissionVolts) return saturationAmps * Math.expm1(volts / emissionVolts);
  const ratio = (3 * emissionVolts) / (volts * Math.E);
  return -saturationAmps * (1 + ratio * ratio * ratio);
}

/** Slope of `junctionAmps` in siemens. */
export function junctionSiemens(saturationAmps: number, emissionVolts: number, volts: number): number {
  if (volts >= -3 * emissionVolts) return (saturationAmps / emissionVolts) * Math.exp(volts / emissionVolts);
  const ratio = (3 * emissionVolts) / (volts * Math.E);
  return (saturationAmps * 3 * ratio * ratio * ratio) / volts;
}

/** Saturation current of a junction that drops `volts` at `amps`. */
export function saturationFor(volts: number, amps: number, emissionVolts: number): number {
  return amps / Math.expm1(volts / emissionVolts);
}

/** Saturation current at another temperature: the SPICE law with XTI 3 and EG 1.11 eV (silicon). */
export function saturationAt(
  saturationAmps: number,
  emission: number,
  celsius: number,
  nominalCelsius: number,
  energyVolts = 1.11,
  exponent = 3,
): number {
  const ratio = (celsius + ZERO_CELSIUS) / (nominalCelsius + ZERO_CELSIUS);
  const gap = ((ratio - 1) * energyVolts) / (emission * thermalVolts(celsius));
  return saturationAmps * Math.exp(gap + (exponent / emission) * Math.log(ratio));
}

/** Voltage above which a step is limited: where the law bends most (Nagel 1975). */
export function criticalVolts(saturationAmps: number, emissionVolts: number): number {
  return emissionVolts * Math.log(emissionVolts / (Math.SQRT2 * saturationAmps));
}

/** SPICE3's `pnjlim`: a junction voltage may grow only by the logarithm of what Newton asked for (Nagel 1975, SPICE3f5). */
export function limitJunction(next: number, last: number, emissionVolts: number, critical: number): number {
  if (next <= critical || Math.abs(next - last) <= 2 * emissionVolts) return next;
  if (last <= 0) return emissionVolts * Math.log(next / emissionVolts);
  const grown = 1 + (next - last) / emissionVolts;
  return grown > 0 ? last + emissionVolts * Math.log(grown) : critical;
}
