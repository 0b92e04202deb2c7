/** Numbers as a SPICE deck writes them. Here `m` is milli whatever its case and `meg` is mega; letters after the suffix are a unit. */
const POWERS: Readonly<Record<string, number>> = {
  t: 12,
  g: 9,
  meg: 6,
  k: 3,
  m: -3,
  u: -6,
  n: -9,
  p: -12,
  f: -15,
};
const NUMBER = /^([+-]?(?:\d+\.?\d*|\.\d+))(?:e([+-]?\d{1,3}))?(meg|[tgkmunpf])?[a-z]*$/i;

/** `4.7k`, `100nF`, `1MEG`, `2e-3`; null where it is no number. Digits and power are joined as text, so that `470n` is exactly 470e-9. */
export function spiceNumber(text: string): number | null {
  const matched = NUMBER.exec(text);
  if (matched === null) return null;
  const [, digits = "", exponent = "0", suffix = ""] = matched;
  const value = Number(`${digits}e${Number(exponent) + (POWERS[suffix.toLowerCase()] ?? 0)}`);
  return Number.isFinite(value) ? value : null;
}
