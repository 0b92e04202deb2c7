import { said } from "../messages/said.ts";

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

/** `a, b, c`. */
export function commaList([first = "", ...rest]: readonly string[]): string {
  return rest.reduce((list, next) => said`${list}, ${next}`, first);
}

/** `a; b; c`: of what has commas in itself. */
export function semicolonList([first = "", ...rest]: readonly string[]): string {
  return rest.reduce((list, next) => said`${list}; ${next}`, first);
}

/** Probability in words a customer could repeat: `3 %`, `under 1 %`. */
export function percent(probability: number): string {
  if (probability > 0 && probability < 0.01) return "under 1 %";
  if (probability > 0.99 && probability < 1) return "over 99 %";
  return `${Math.round(probability * 100)} %`;
}

const REFERENCE = /^[A-Z]+[0-9]+$/;

/**
 * Faults that differ in one place are said in one breath: `M1 upper switch of phase U shorted` and the same of V become `M1 upper switch of
 * phase U or V shorted`; `C5 shorted` and `C6 shorted` become `C5 or C6 shorted`. Each stands where its first fault stood.
 */
export function inOneBreath(faults: readonly string[], last: "or" | "and" = "or"): readonly string[] {
  const byPart = grouped(faults, (fault) => {
    const [ref] = fault.split(" ", 1);
    // dirt has two nets, and `or` between pairs could be read either way
    return REFERENCE.test(ref) ? ref : fault;
  });
  const ofOnePart = byPart.flatMap((group) => merged(group, last) ?? group);
  const alike = grouped(ofOnePart, (fault) => {
    const gap = fault.indexOf(" ");
    return REFERENCE.test(fault.slice(0, gap)) ? fault.slice(gap) : fault;
  });
  return alike.map((group) => {
    const [first] = group;
    const gap = first.indexOf(" ");
    if (group.length < 2 || gap < 0) return first;
    return `${listed(
      group.map((fault) => fault.slice(0, fault.indexOf(" "))),
      last,
    )}${first.slice(gap)}`;
  });
}

/** Letters of faults named beside each other: more is not read at the bench. */
const MOST_LETTERS = 160;

/** The same, and no more of them than is read at a glance; the first is always named. */
export function brief(faults: readonly string[], last: "or" | "and" = "or"): readonly string[] {
  let letters = 0;
  return inOneBreath(faults, last).filter((words, i) => {
    letters += words.length;
    return i === 0 || letters <= MOST_LETTERS;
  });
}

function grouped(
  faults: readonly string[],
  keyOf: (fault: string) => string,
): readonly (readonly string[])[] {
  const groups = new Map<string, string[]>();
  for (const fault of faults) {
    const key = keyOf(fault);
    groups.set(key, [...(groups.get(key) ?? []), fault]);
  }
  return [...groups.values()];
}

/** Null where the faults do not differ in one place only. */
function merged(group: readonly string[], last: "or" | "and"): readonly string[] | null {
  const split = group.map((fault) => fault.split(" "));
  const [first] = split;
  if (split.length < 2 || first === undefined) return null;
  const shortest = Math.min(...split.map(({ length }) => length));
  let head = 0;
  while (head < shortest && split.every((tokens) => tokens[head] === first[head])) head++;
  let tail = 0;
  while (tail < shortest - head && split.every((tokens) => tokens.at(-1 - tail) === first.at(-1 - tail)))
    tail++;
  const middles = split.map((tokens) => tokens.slice(head, tokens.length - tail).join(" "));
  if (middles.some((middle) => middle === "")) return null;
  return [[...first.slice(0, head), listed(middles, last), ...first.slice(first.length - tail)].join(" ")];
}
