/** Several of anything, in one breath: `a, b or c`. */
export function orList(words: readonly string[]): string {
  return listed(words, "or");
}

/** `a, b and c`. */
export function andList(words: readonly string[]): string {
  return listed(words, "and");
}

function listed(words: readonly string[], last: string): string {
  if (words.length <= 1) return words.join("");
  return `${words.slice(0, -1).join(", ")} ${last} ${words[words.length - 1]}`;
}

/** Probability in words a customer could repeat: `3 %`, `under 1 %`. */
export function percent(probability: number): string {
  if (probability > 0 && probability < 0.01) return "under 1 %";
  if (probability > 0.99 && probability < 1) return "over 99 %";
  return `${Math.round(probability * 100)} %`;
}

/**
 * Faults of one part that differ in one place are said in one breath: `M1 upper switch of phase U shorted` and the same of V become
 * `M1 upper switch of phase U or V shorted`. Order is kept by each part's first fault.
 */
export function inOneBreath(faults: readonly string[]): readonly string[] {
  const byPart = new Map<string, string[][]>();
  for (const fault of faults) {
    const tokens = fault.split(" ");
    // dirt has two nets, and `or` between pairs could be read either way
    const key = tokens[0] === "dirt" ? fault : tokens[0];
    byPart.set(key, [...(byPart.get(key) ?? []), tokens]);
  }
  return [...byPart.values()].flatMap((group) => merged(group) ?? group.map((tokens) => tokens.join(" ")));
}

function merged(group: readonly (readonly string[])[]): readonly string[] | null {
  const [first] = group;
  if (group.length < 2 || first === undefined) return null;
  const shortest = Math.min(...group.map(({ length }) => length));
  let head = 0;
  while (head < shortest && group.every((tokens) => tokens[head] === first[head])) head++;
  let tail = 0;
  while (tail < shortest - head && group.every((tokens) => tokens.at(-1 - tail) === first.at(-1 - tail)))
    tail++;
  const middles = group.map((tokens) => tokens.slice(head, tokens.length - tail).join(" "));
  if (middles.some((middle) => middle === "")) return null;
  return [[...first.slice(0, head), orList(middles), ...first.slice(first.length - tail)].join(" ")];
}
