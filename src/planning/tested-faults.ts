import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { FindingStep } from "./steps.ts";

/** Shares that differ by less lead to the same outcome. */
const SAME_SHARE = 0.01;

/**
 * Faults (indices into the prior table) of which a step says something by itself: of two hypotheses alike but for the fault, the outcomes
 * differ. Others become likelier or less likely only because something else explains the board; that is no reason for a check, and
 * saying that a reading clears them would be false. A fault without such a pair counts as tested.
 */
export function testedFaults(
  { shares }: Pick<FindingStep, "shares">,
  hypotheses: Hypotheses,
): ReadonlySet<number> {
  const at = new Map<string, number>();
  const sets = hypotheses.list.map((hypothesis, h) => {
    const faults = hypothesis.unlisted ? null : [...faultsOf(hypothesis, hypotheses)].sort((a, b) => a - b);
    if (faults !== null) at.set(faults.join(","), h);
    return faults;
  });
  const apart = (a: number, b: number) => shares.some((share) => Math.abs(share[a] - share[b]) > SAME_SHARE);
  const tested = new Set<number>();
  const paired = new Set<number>();
  sets.forEach((faults, h) => {
    for (const fault of faults ?? []) {
      const without = at.get((faults ?? []).filter((other) => other !== fault).join(","));
      if (without === undefined) continue;
      paired.add(fault);
      if (apart(h, without)) tested.add(fault);
    }
  });
  for (const fault of sets.flatMap((faults) => faults ?? [])) if (!paired.has(fault)) tested.add(fault);
  return tested;
}
