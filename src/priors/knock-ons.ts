import type { Board } from "../board/board.ts";
import type { PhysicalKnockOn } from "./arrival-knock-ons.ts";
import { viewOf } from "./circuit-view.ts";
import type { FaultPrior } from "./fault-prior.ts";
import type { Failing } from "./knock-on-rule.ts";
import { KNOCK_ON_RULES } from "./knock-on-rules.ts";

/** A leak weaker than this has not the current to break anything. `from memory`. */
const STRONG_LEAK_OHMS = 2000;
/** Below this a knock-on is not worth a row. */
const LEAST_RATE = 1e-4;

const keyOf = ({ site, mode }: Failing): string => `${site}:${mode}`;

/**
 * The knock-ons of this board, by index into `faults`. A child's strength is shared out over its levels in proportion to their
 * own rates. One pair of faults reached by two rules keeps both.
 */
export function knockOnsOf(board: Board, faults: readonly FaultPrior[]): PhysicalKnockOn[] {
  const rows = new Map<string, number[]>();
  faults.forEach(({ site, fault }, index) => {
    const key = keyOf({ site, mode: fault.mode });
    rows.set(key, [...(rows.get(key) ?? []), index]);
  });
  const view = viewOf(board);
  const knockOns: PhysicalKnockOn[] = [];
  for (const rule of KNOCK_ON_RULES) {
    const seen = new Set<string>();
    for (const link of rule.links(view)) {
      const key = `${keyOf(link.from)}>${keyOf(link.to)}`;
      if (seen.has(key)) continue;
      seen.add(key);
      const parents = (rows.get(keyOf(link.from)) ?? []).filter((index) => isStrong(faults[index]));
      const children = rows.get(keyOf(link.to)) ?? [];
      const total = children.reduce((sum, index) => sum + (faults[index]?.rate ?? 0), 0);
      for (const child of children) {
        const share = total > 0 ? (faults[child]?.rate ?? 0) / total : 1 / children.length;
        const rate = rule.strength * (link.times ?? 1) * share;
        if (rate < LEAST_RATE) continue;
        for (const parent of parents) knockOns.push({ parent, child, rate, rule: rule.id });
      }
    }
  }
  return knockOns;
}

function isStrong(row: FaultPrior | undefined): boolean {
  if (row === undefined) return false;
  return row.fault.mode !== "leaky" || (row.fault.value ?? 1000) <= STRONG_LEAK_OHMS;
}
