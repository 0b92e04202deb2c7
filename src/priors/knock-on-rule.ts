import type { Part } from "../board/board.ts";
import type { FaultMode } from "../board/fault.ts";
import type { Sourced } from "../units/mark.ts";
import type { CircuitView } from "./circuit-view.ts";
import { junctionsOf } from "./junctions.ts";

/** A place where something fails, and how. */
export interface Failing {
  readonly site: string;
  readonly mode: FaultMode;
}

/** One parent, one child; `times` scales the rule's strength for this pair (default 1). */
export interface Link {
  readonly from: Failing;
  readonly to: Failing;
  readonly times?: number;
}

/**
 * A fault that causes faults. `strength` is the child's rate given the parent (its chance is 1 - exp(-strength)). Which parts go
 * together is common practice; the strengths are judged `from memory`.
 */
export interface KnockOnRule extends Sourced {
  readonly strength: number;
  links(view: CircuitView): Link[];
}

export const short = (site: string): Failing => ({ site, mode: "short" });
export const open = (site: string): Failing => ({ site, mode: "open" });
export const pair = (from: Failing, to: Failing, times = 1): Link => ({ from, to, times });

export function every(from: readonly Failing[], to: readonly Failing[], times = 1): Link[] {
  return from.flatMap((parent) =>
    to.filter((child) => child.site !== parent.site).map((child) => pair(parent, child, times)),
  );
}

export function sitesOf(part: Part): string[] {
  return junctionsOf(part).map(({ junction }) => (junction === null ? part.ref : `${part.ref}.${junction}`));
}

export const shortsOf = (parts: readonly Part[]): Failing[] => parts.flatMap(sitesOf).map(short);
export const opensOf = (parts: readonly Part[]): Failing[] => parts.flatMap(sitesOf).map(open);
export const ofKind = (parts: readonly Part[], ...kinds: readonly string[]): Part[] =>
  parts.filter((part) => kinds.includes(part.kind));

export const rule = (
  id: string,
  strength: number,
  words: string,
  links: KnockOnRule["links"],
): KnockOnRule => ({
  id,
  mark: "from memory",
  words,
  strength,
  links,
});
