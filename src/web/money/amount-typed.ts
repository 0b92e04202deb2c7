/** An amount as somebody types it, in Latin or Arabic digits: a comma or a point; empty is none. */
export function amountTyped(text: string): number | null | "wrong" {
  const digits = text.trim().replace(/[\u0660-\u0669]/g, (digit) => String(digit.charCodeAt(0) - 0x660));
  const plain = digits.replace(/[,\u066b]/, ".");
  if (plain === "") return null;
  return /^\d+(\.\d+)?$/.test(plain) && Number.isFinite(Number(plain)) ? Number(plain) : "wrong";
}
