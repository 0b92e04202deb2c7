/** What lies at hand for a part that is to be fitted. */

import type { ReplaceEvent } from "../bench/event.ts";
import { said, saidCount } from "../messages/said.ts";
import { lotOf, type Terms } from "../money/terms.ts";
import { present } from "../units/fields.ts";
import { andList } from "./faults-in-words.ts";

/** Where the first of these parts comes from, where anybody told, and which of them the same lot does not serve any more. */
export function whereFrom(names: readonly string[], { atHand, waitCost }: Terms): readonly string[] {
  const [name = ""] = names;
  const lying = atHand.get(name);
  if (lying === undefined) return waitCost > 0 ? [said`${name} has to be ordered.`] : [];
  const lot = lotOf(lying);
  const sharing = names.filter((one) => lot !== null && lotOf(atHand.get(one) ?? {})?.key === lot.key);
  const short = lot === null ? [] : sharing.slice(lot.count);
  const there = lying.used === true ? pulledAtHand(name, lying.with) : newAtHand(name, lying.with);
  if (lot === null || short.length === 0) return [there];
  const next = nextFor(short, atHand);
  return [there, next === null ? tooFew(lot.count, short) : instead(lot.count, short, next)];
}

/** The type that lies at hand for all that are short; null where there is none, or nobody named it. */
function nextFor(short: readonly string[], atHand: Terms["atHand"]): string | null {
  const [first, ...others] = short.map((name) => atHand.get(name)?.next?.with);
  return first !== undefined && others.every((other) => other === first) ? first : null;
}

function instead(count: number, short: readonly string[], type: string): string {
  return saidCount(
    count,
    "There is one; for {1} {2} lies at hand.",
    "There are {0}; for {1} {2} lies at hand.",
    andList(short),
    type,
  );
}

function newAtHand(name: string, type: string | undefined): string {
  return type === undefined ? said`For ${name} one lies at hand.` : said`For ${name} ${type} lies at hand.`;
}

function pulledAtHand(name: string, type: string | undefined): string {
  return type === undefined
    ? said`For ${name} one lies at hand, pulled: read it in the hand before it goes in.`
    : said`For ${name} ${type} lies at hand, pulled: read it in the hand before it goes in.`;
}

function tooFew(count: number, short: readonly string[]): string {
  const parts = andList(short);
  return short.length === 1
    ? saidCount(count, "There is one: {1} needs another.", "There are {0}: {1} needs another.", parts)
    : saidCount(count, "There is one: {1} need others.", "There are {0}: {1} need others.", parts);
}

/** What lies at hand for the place, as the event names it. */
export function fittedWith(
  name: string,
  { atHand }: Terms,
): Partial<Pick<ReplaceEvent, "with" | "used" | "from">> {
  const { with: lying, used, from } = atHand.get(name) ?? {};
  return present({ with: lying, used, from });
}
