/**
 * The fixed walk given our inference: the same checks in the same order, but it stops when the sum says that the repair will not
 * pay, and buys what the inference names instead of lifting one part after another.
 */
import { type Assessment, type AssessmentSession, assess } from "../../src/job/assess.ts";
import { isObtainable } from "../../src/money/prices.ts";
import type { Course } from "./course.ts";
import { fixedWalk, type WalkAdvice } from "./fixed-walk.ts";

/** So sure the inference has to be of a part before the walk buys it unlifted. */
const SURE = 0.85;

export async function walkWithInference(course: Course, session: AssessmentSession): Promise<void> {
  let last: { readonly length: number; readonly assessed: Assessment } | null = null;
  const now = (): Assessment => {
    if (last?.length === course.log.length) return last.assessed;
    const assessed = assess(course.job, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    last = { length: course.log.length, assessed: assessed.value };
    return assessed.value;
  };
  const advice: WalkAdvice = {
    stop: () => {
      const { action } = now().proposal;
      if (action.do !== "close") return null;
      return action.verdict === "not-repairable" || action.verdict === "not-economic" ? action.verdict : null;
    },
    culprit: () => {
      const { board } = course.job;
      const named = now().belief.suspects.find(({ part, probability }) => {
        const there = board.parts.get(part);
        return probability >= SURE && there !== undefined && isObtainable(there);
      });
      return named?.part ?? null;
    },
  };
  await fixedWalk(course, advice);
}
