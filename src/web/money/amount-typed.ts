/** An amount as somebody types it: a comma or a point; empty is none. */
export function amountTyped(text: string): number | null | "wrong" {
  const plain = text.trim().replace(",", ".");
  if (plain === "") return null;
  return /^\d+(\.\d+)?$/.test(plain) && Number.isFinite(Number(plain)) ? Number(plain) : "wrong";
}
