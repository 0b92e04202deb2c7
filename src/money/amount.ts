import { currencyDigits } from "./currencies.ts";

/** Money in exact decimal: nothing that is summed or printed is a floating-point number. */
/** A millionth of the currency's unit, so that shares of a cent survive until a line is rounded. */
const MICROS = 1_000_000n;
const MICRO_DIGITS = 6;
const DECIMAL = /^(\d+)(?:\.(\d+))?(?:e([+-]?\d+))?$/;

/** An amount in one currency, in millionths; below 0 where something is taken off. */
export interface Amount {
  readonly micros: bigint;
}

export const NOTHING: Amount = { micros: 0n };

/** A number as it was written: 2.6 is 2.60 and not the binary fraction beside it. Six digits behind the point are kept; 0 or more. */
export function amountOf(written: number): Amount {
  const [, whole = "", fraction = "", power = "0"] = DECIMAL.exec(written.toFixed(MICRO_DIGITS)) ?? [];
  if (whole === "") throw new Error(`${written} is no amount of 0 or more`);
  return { micros: BigInt(whole + fraction) * 10n ** BigInt(MICRO_DIGITS - fraction.length + Number(power)) };
}

export function plus(...amounts: readonly Amount[]): Amount {
  return { micros: amounts.reduce((sum, one) => sum + one.micros, 0n) };
}

export function minus(from: Amount, taken: Amount): Amount {
  return { micros: from.micros - taken.micros };
}

/** A share of an amount, both as written: 0.2 of 12.35 is 2.47. Six digits of either are kept; the share is 0 or more. */
export function shareOf(amount: Amount, share: number): Amount {
  return { micros: halfEven(amount.micros * amountOf(share).micros, MICROS) };
}

export function larger(one: Amount, other: Amount): Amount {
  return one.micros >= other.micros ? one : other;
}

export function smaller(one: Amount, other: Amount): Amount {
  return one.micros <= other.micros ? one : other;
}

/** Divided, half to the even neighbour, as accounts round. The divisor is above 0. */
function halfEven(dividend: bigint, divisor: bigint): bigint {
  if (dividend < 0n) return -halfEven(-dividend, divisor);
  const [quotient, rest] = [dividend / divisor, dividend % divisor];
  const twice = rest * 2n;
  const up = twice > divisor || (twice === divisor && quotient % 2n === 1n);
  return up ? quotient + 1n : quotient;
}

/** What the currency's smallest coin is, in millionths. */
function coin(currency: string): bigint {
  return 10n ** BigInt(MICRO_DIGITS - currencyDigits(currency));
}

/** Rounded to what the currency can pay. */
export function rounded(amount: Amount, currency: string): Amount {
  const step = coin(currency);
  return { micros: halfEven(amount.micros, step) * step };
}

/** Minutes at a rate an hour, each exact as written, rounded once to the currency. */
export function labour(minutes: Amount, ratePerHour: Amount, currency: string): Amount {
  const step = coin(currency);
  return { micros: halfEven(minutes.micros * ratePerHour.micros, 60n * MICROS * step) * step };
}

/** As paper has it: all the currency's digits, no more. The amount must be rounded already. */
export function amountText(amount: Amount, currency: string): string {
  const digits = currencyDigits(currency);
  const step = coin(currency);
  if (amount.micros % step !== 0n)
    throw new Error(`an amount of ${amount.micros} millionths is not rounded to ${currency}`);
  const below = amount.micros < 0n;
  const text = String((below ? -amount.micros : amount.micros) / step).padStart(digits + 1, "0");
  return `${below ? "-" : ""}${digits === 0 ? text : `${text.slice(0, -digits)}.${text.slice(-digits)}`}`;
}

/** For a picture or an estimate, where a binary fraction does no harm. */
export function amountNumber(amount: Amount): number {
  return Number(amount.micros) / Number(MICROS);
}
