/** How sure it is that a board works and will go on working: what a verdict of `repaired` says. */
import type { Board } from "../board/board.ts";
import type { Belief, Explanation } from "../diagnosis/belief.ts";
import { viewOf } from "../priors/circuit-view.ts";
import type { FaultPrior } from "../priors/fault-prior.ts";
import { powerEffect } from "../priors/power-effects.ts";

/** Chance that something is left that stops the board or brings it back, by what makes it so. */
export interface Doubt {
  /** P(weak or dead) */
  readonly all: number;
  /** chance of each fault that matters, by its index in the prior table, most first */
  readonly faults: readonly (readonly [number, number])[];
}

/**
 * P(weak or dead) given everything read so far. A fault counts where the board with it alone would not simply work; what stands
 * unseen beside an explanation counts by its chance. What no explanation lists is taken to be like what they do.
 * @param livedWith - faults that nobody would cure
 */
export function doubtOf(belief: Belief, board: Board, livedWith: (fault: FaultPrior) => boolean): Doubt {
  const view = viewOf(board);
  const matters = belief.priors.map(
    (prior) => !livedWith(prior) && powerEffect(view, prior.fault) !== "none",
  );
  const chances = new Float64Array(belief.priors.length);
  let works = 0;
  let total = 0;
  for (const explanation of belief.explanations) {
    total += explanation.probability;
    works += explanation.probability * worksUnder(explanation, matters);
    for (const f of explanation.presentNow) if (matters[f]) chances[f] += explanation.probability;
    explanation.silent.forEach((chance, f) => {
      if (matters[f]) chances[f] += explanation.probability * chance;
    });
  }
  const norm = total > 0 ? total : 1;
  return {
    all: Math.min(1, Math.max(0, 1 - works / norm)),
    faults: [...chances]
      .map((chance, f): readonly [number, number] => [f, chance / norm])
      .filter(([, chance]) => chance > 0)
      .sort((a, b) => b[1] - a[1] || a[0] - b[0]),
  };
}

function worksUnder({ presentNow, silent }: Explanation, matters: readonly boolean[]): number {
  if (presentNow.some((f) => matters[f])) return 0;
  return silent.reduce((works, chance, f) => (matters[f] ? works * (1 - Math.min(chance, 1)) : works), 1);
}
