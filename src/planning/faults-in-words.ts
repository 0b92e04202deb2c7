import type { Fault } from "../board/fault.ts";

const MODE_WORDS = { short: "shorted", leaky: "leaky", open: "open", drift: "off its value" } as const;

/** A fault as it is said at the bench: `C5 shorted`, `M1 up open`, `dirt between PBUS and U`. */
export function faultWords(fault: Fault): string {
  if (fault.of === "nets") return `dirt between ${fault.nets[0]} and ${fault.nets[1]}`;
  const where = fault.junction === null ? fault.part : `${fault.part} ${fault.junction}`;
  return `${where} ${MODE_WORDS[fault.mode]}`;
}

/** Several of anything, in one breath: `a, b or c`. */
export function orList(words: readonly string[]): string {
  if (words.length <= 1) return words.join("");
  return `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]}`;
}

/** Probability in words a customer could repeat: `3 %`, `under 1 %`. */
export function percent(probability: number): string {
  if (probability > 0 && probability < 0.01) return "under 1 %";
  if (probability > 0.99 && probability < 1) return "over 99 %";
  return `${Math.round(probability * 100)} %`;
}
