/** Follows every proposal of the engine. */
import { type AssessmentSession, assess } from "../../src/job/assess.ts";
import type { Course } from "./course.ts";

const MOST_STEPS = 150;

/** Plays the job to its verdict; `waited` hears the milliseconds from each entry to the next proposal. */
export async function enginePlayer(
  course: Course,
  session: AssessmentSession,
  clock: () => number = () => 0,
  waited: (milliseconds: number) => void = () => {},
): Promise<void> {
  for (let step = 0; step < MOST_STEPS && course.verdict === null; step++) {
    const started = clock();
    const assessed = assess({ ...course.job, log: course.log }, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    waited(clock() - started);
    const { proposal } = assessed.value;
    for (const action of [proposal.action, ...proposal.row]) await course.take(action);
  }
}
