/** What lies at hand for a part that is to be fitted. */
import type { ReplaceEvent } from "../bench/event.ts";
import { lotOf, type Terms } from "../money/terms.ts";
import { present } from "../units/fields.ts";
import { andList } from "./faults-in-words.ts";

/**
 * Where the first of these parts comes from, where anybody told, and which of them the same lot does not serve any more; begins with a
 * space.
 */
export function whereFrom(names: readonly string[], { atHand, waitCost }: Terms): string {
  const [name = ""] = names;
  const lying = atHand.get(name);
  if (lying !== undefined) {
    const lot = lotOf(lying);
    const sharing = names.filter((one) => lot !== null && lotOf(atHand.get(one) ?? {})?.key === lot.key);
    const short = lot === null ? [] : sharing.slice(lot.count);
    const rest =
      short.length === 0
        ? ""
        : ` There ${lot?.count === 1 ? "is one" : `are ${lot?.count}`}: ${andList(short)} ${short.length === 1 ? "needs another" : "need others"}.`;
    return ` For ${name} ${lying.with ?? "one"} lies at hand${lying.used === true ? ", pulled" : ""}.${rest}`;
  }
  return waitCost > 0 ? ` ${name} has to be ordered.` : "";
}

/** What lies at hand for the place, as the event names it. */
export function fittedWith(
  name: string,
  { atHand }: Terms,
): Partial<Pick<ReplaceEvent, "with" | "used" | "from">> {
  const { with: lying, used, from } = atHand.get(name) ?? {};
  return present({ with: lying, used, from });
}
