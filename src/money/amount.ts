/** Money in exact decimal: nothing that is summed or printed is a floating-point number. */
/** A millionth of the currency's unit, so that shares of a cent survive until a line is rounded. */
const MICROS = 1_000_000n;
const MICRO_DIGITS = 6;
const DECIMAL = /^(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/;

/** An amount in one currency, in millionths. */
export interface Amount {
  readonly micros: bigint;
}

export const NOTHING: Amount = { micros: 0n };

/** Digits behind the point of currencies that have not two (ISO 4217, from memory). */
const DIGITS: Readonly<Record<string, number>> = {
  BHD: 3,
  CLP: 0,
  ISK: 0,
  JOD: 3,
  JPY: 0,
  KRW: 0,
  KWD: 3,
  OMR: 3,
  PYG: 0,
  TND: 3,
  UGX: 0,
  VND: 0,
  XAF: 0,
  XOF: 0,
};

export function currencyDigits(currency: string): number {
  return DIGITS[currency.toUpperCase()] ?? 2;
}

/** A number as it was written: 2.6 is 2.60 and not the binary fraction beside it. Six digits behind the point are kept; 0 or more. */
export function amountOf(written: number): Amount {
  const [, whole = "", fraction = "", power = "0"] = DECIMAL.exec(written.toFixed(MICRO_DIGITS)) ?? [];
  if (whole === "") throw new Error(`${written} is no amount of 0 or more`);
  return { micros: BigInt(whole + fraction) * 10n ** BigInt(MICRO_DIGITS - fraction.length + Number(power)) };
}

export function plus(...amounts: readonly Amount[]): Amount {
  return { micros: amounts.reduce((sum, one) => sum + one.micros, 0n) };
}

/** Divided, half to the even neighbour, as accounts round. Both above 0 or the dividend 0. */
function halfEven(dividend: bigint, divisor: bigint): bigint {
  const [quotient, rest] = [dividend / divisor, dividend % divisor];
  const twice = rest * 2n;
  const up = twice > divisor || (twice === divisor && quotient % 2n === 1n);
  return up ? quotient + 1n : quotient;
}

/** Rounded to what the currency can pay. */
export function rounded(amount: Amount, currency: string): Amount {
  const step = 10n ** BigInt(MICRO_DIGITS - currencyDigits(currency));
  return { micros: halfEven(amount.micros, step) * step };
}

/** Minutes at a rate an hour, each exact as written, rounded once to the currency. */
export function labour(minutes: Amount, ratePerHour: Amount, currency: string): Amount {
  const step = 10n ** BigInt(MICRO_DIGITS - currencyDigits(currency));
  return { micros: halfEven(minutes.micros * ratePerHour.micros, 60n * MICROS * step) * step };
}

/** As paper has it: all the currency's digits, no more. The amount must be rounded already. */
export function amountText(amount: Amount, currency: string): string {
  const digits = currencyDigits(currency);
  const step = 10n ** BigInt(MICRO_DIGITS - digits);
  if (amount.micros % step !== 0n)
    throw new Error(`an amount of ${amount.micros} millionths is not rounded to ${currency}`);
  const text = String(amount.micros / step).padStart(digits + 1, "0");
  return digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`;
}

/** For a picture or an estimate, where a binary fraction does no harm. */
export function amountNumber(amount: Amount): number {
  return Number(amount.micros) / Number(MICROS);
}
