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
