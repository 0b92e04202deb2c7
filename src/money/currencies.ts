/** How many digits a currency is paid in. */

/**
 * Currencies whose minor unit has not two digits: none, three or four behind the point (ISO 4217 list one, from memory; held against the
 * table that comes with the language where the two are meant to agree).
 */
const DIGITS: Readonly<Record<string, number>> = {
  BIF: 0,
  CLP: 0,
  DJF: 0,
  GNF: 0,
  ISK: 0,
  JPY: 0,
  KMF: 0,
  KRW: 0,
  PYG: 0,
  RWF: 0,
  UGX: 0,
  UYI: 0,
  VND: 0,
  VUV: 0,
  XAF: 0,
  XOF: 0,
  XPF: 0,
  BHD: 3,
  IQD: 3,
  JOD: 3,
  KWD: 3,
  LYD: 3,
  OMR: 3,
  TND: 3,
  CLF: 4,
  UYW: 4,
};

/** Digits behind the point; two for whatever is not listed. */
export function currencyDigits(currency: string): number {
  return DIGITS[currency.toUpperCase()] ?? 2;
}
