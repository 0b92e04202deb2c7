/** What a capacitor holds, and how it empties. SI units. */

/** Energy at `volts`: C V^2 / 2. */
export function storedJoules(farads: number, volts: number): number {
  return (farads * volts ** 2) / 2;
}

/** Seconds from one voltage to a lower through a resistor: R C ln(from / to). Infinite to zero volts. */
export function bleedSeconds(fromVolts: number, toVolts: number, ohms: number, farads: number): number {
  return ohms * farads * Math.log(fromVolts / toVolts);
}

/** Volts left after `seconds` through a resistor. */
export function bledVolts(fromVolts: number, ohms: number, farads: number, seconds: number): number {
  return fromVolts * Math.exp(-seconds / (ohms * farads));
}

/** Volts left after `seconds` of a load of constant watts, down to `leastVolts`, where it stops; and the seconds that took. */
export function drawnVolts(
  fromVolts: number,
  watts: number,
  farads: number,
  leastVolts: number,
  seconds: number,
): { readonly volts: number; readonly seconds: number } {
  if (fromVolts <= leastVolts) return { volts: fromVolts, seconds: 0 };
  const most = (storedJoules(farads, fromVolts) - storedJoules(farads, leastVolts)) / watts;
  if (seconds >= most) return { volts: leastVolts, seconds: most };
  return { volts: Math.sqrt(fromVolts ** 2 - (2 * watts * seconds) / farads), seconds };
}
