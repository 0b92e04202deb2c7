/** Signs of life at a power-up, weighed before it: which hypotheses they would tell apart. */
import type { PowerEvent } from "../bench/event.ts";
import { signShown, signsOf } from "../live/signs.ts";
import { said } from "../messages/said.ts";
import type { Outcome, Partition } from "./check-outcomes.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import { boardUnder } from "./live-partition.ts";
import type { PlanningInput } from "./planning-input.ts";

/** Of a board on which nothing is missing. */
export const AS_IT_SHOULD = said`all signs of life`;

/**
 * Hypotheses by the signs that the board would give under this power-up, taken as sure: what is missed or misheard is weighed when it is
 * noted. Null without a live model, and where all give the same.
 */
export function signsPartition(
  input: PlanningInput,
  hypotheses: Hypotheses,
  power: PowerEvent,
): Partition | null {
  const live = boardUnder(input, power);
  const signs = signsOf(input.board);
  if (live === null || signs.length === 0) return null;
  const classes = new Map<string, number>();
  const outcomes: Outcome[] = [];
  const classOf = Int16Array.from(hypotheses.list, (hypothesis) => {
    const state = live.state(faultsOf(hypothesis, hypotheses).map((f) => hypotheses.priors[f].fault));
    const missing = signs.filter((sign) => state.givesSign(sign) === false);
    const key = missing.map(({ part }) => part).join(",");
    const known = classes.get(key);
    if (known !== undefined) return known;
    const words = missing.map((sign) => signShown(sign, false));
    const word = words.length === 0 ? AS_IT_SHOULD : words.reduce((before, next) => said`${before}, ${next}`);
    classes.set(key, outcomes.push({ word, low: null, high: null }) - 1);
    return outcomes.length - 1;
  });
  return outcomes.length < 2 ? null : { classOf, outcomes };
}
