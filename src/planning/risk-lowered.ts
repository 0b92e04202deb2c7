/** Which cold checks would see beforehand what power would lose. */
import type { Hypotheses } from "./hypotheses.ts";
import type { Action, Forecast } from "./proposal.ts";
import type { FindingStep } from "./steps.ts";

/** An outcome accuses what power would break where it raises the expected loss so much: nobody would power up then. From memory. */
const ACCUSES = 2;
/** A check that sees less of the loss than this is not named: of a module untouched each of six switches holds about a twelfth. From memory. */
const LEAST_SHARE = 0.05;
const MOST_NAMED = 3;

/**
 * The checks that see most of the expected loss for each of their minutes, best first: of a check the share of the loss that lies
 * behind outcomes which accuse its cause. Not only what the choice of the next step weighs, so it is said with the power card.
 * @param losses - money lost under each hypothesis at the feed in question
 * @param words - what the check is called; null: it is not named
 */
export function riskLowered(
  losses: Float64Array,
  { list }: Hypotheses,
  checks: readonly FindingStep[],
  words: (action: Action) => string | null,
): Forecast["lowers"] {
  let total = 0;
  let weight = 0;
  list.forEach((hypothesis, h) => {
    total += hypothesis.weight * losses[h];
    weight += hypothesis.weight;
  });
  if (total <= 0) return [];
  const found = checks.flatMap((step) => {
    const what = step.row.length > 0 ? null : words(step.action);
    if (what === null) return [];
    let seen = 0;
    for (const shares of step.shares) {
      let lost = 0;
      let reached = 0;
      for (let h = 0; h < shares.length; h++) {
        const own = shares[h] * list[h].weight;
        reached += own;
        lost += own * losses[h];
      }
      if (reached > 0 && lost / reached >= (ACCUSES * total) / weight) seen += lost;
    }
    const share = seen / total;
    return share < LEAST_SHARE ? [] : [{ what, minutes: step.allMinutes, share }];
  });
  return found.sort((a, b) => b.share / b.minutes - a.share / a.minutes).slice(0, MOST_NAMED);
}
