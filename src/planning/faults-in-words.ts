import { plain, said } from "../messages/said.ts";
import { saidTogether, saidWithout } from "../messages/said-alike.ts";

/** A fault as it is spoken of. */
export interface SpokenFault {
  /** the part that has it; null for dirt, which lies between two nets */
  readonly part: string | null;
  /** as it is said at the bench */
  readonly words: string;
  /** the same in English: what orders faults that are alike otherwise, in every language in the same way */
  readonly name: string;
}

type ListOf = (words: readonly string[]) => string;

/** Several of anything, in one breath: `a, b or c`. */
export function orList(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : said`${commaList(words.slice(0, -1))} or ${last}`;
}

/** `a, b and c`. */
export function andList(words: readonly string[]): string {
  const last = words.at(-1) ?? "";
  return words.length < 2 ? last : said`${commaList(words.slice(0, -1))} and ${last}`;
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
  if (probability > 0 && probability < 0.01) return said`under 1 %`;
  if (probability > 0.99 && probability < 1) return said`over 99 %`;
  return `${Math.round(probability * 100)} %`;
}

/**
 * Faults that differ in one place are said in one breath: `M1 upper switch of phase U shorted` and the same of V become `M1 upper switch of
 * phase U or V shorted`; `C5 shorted` and `C6 shorted` become `C5 or C6 shorted`. Each stands where its first fault stood.
 */
export function inOneBreath(faults: readonly SpokenFault[], list: ListOf = orList): readonly string[] {
  // dirt has two nets, and `or` between pairs could be read either way
  const byPart = grouped(faults, ({ part, name }) => part ?? name);
  const ofOnePart = byPart.flatMap((group): readonly SpokenFault[] => {
    const [first] = group;
    const words =
      group.length < 2
        ? null
        : saidTogether(
            group.map((fault) => fault.words),
            list,
          );
    return first === undefined || words === null ? group : [{ ...first, words }];
  });
  const alike = grouped(ofOnePart, ({ part, words }) => (part === null ? words : saidWithout(words, part)));
  return alike.flatMap((group) => {
    const words = group.map((fault) => fault.words);
    const together = words.length < 2 ? null : saidTogether(words, list);
    return together === null ? words : [together];
  });
}

/** Letters of faults named beside each other: more is not read at the bench. */
const MOST_LETTERS = 160;

/** The same, and no more of them than is read at a glance; the first is always named. */
export function brief(faults: readonly SpokenFault[], list: ListOf = orList): readonly string[] {
  let letters = 0;
  return inOneBreath(faults, list).filter((words, i) => {
    // counted in English, so that the same is named in every language
    letters += plain(words).length;
    return i === 0 || letters <= MOST_LETTERS;
  });
}

function grouped(
  faults: readonly SpokenFault[],
  keyOf: (fault: SpokenFault) => string,
): readonly (readonly SpokenFault[])[] {
  const groups = new Map<string, SpokenFault[]>();
  for (const fault of faults) {
    const key = keyOf(fault);
    groups.set(key, [...(groups.get(key) ?? []), fault]);
  }
  return [...groups.values()];
}
