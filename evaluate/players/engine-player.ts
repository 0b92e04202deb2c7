/** Follows every proposal of the engine. */
import { type Assessment, type AssessmentSession, assess } from "../../src/job/assess.ts";
import type { Action } from "../../src/planning/proposal.ts";
import type { Course } from "./course.ts";

const MOST_STEPS = 150;

/** Hears of each proposal before it is followed: the milliseconds it took by the clock given, and what it came from. */
export type Onlooker = (milliseconds: number, assessed: Assessment) => void;

/** Plays the job to its verdict. A check that the bench has no answer to is not asked for again: the next best step is taken. */
export async function enginePlayer(
  course: Course,
  session: AssessmentSession,
  clock: () => number = () => 0,
  onlooker: Onlooker = () => {},
): Promise<void> {
  const refused = new Set<string>();
  const open = (action: Action) => !refused.has(JSON.stringify(action));
  for (let step = 0; step < MOST_STEPS && course.verdict === null; step++) {
    const started = clock();
    const assessed = assess(course.job, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    onlooker(clock() - started, assessed.value);
    const { proposal } = assessed.value;
    const wanted = [proposal.action, ...proposal.row].filter(open);
    const instead = proposal.others.map(({ action }) => action).find(open);
    const actions = wanted.length > 0 ? wanted : instead === undefined ? [] : [instead];
    if (actions.length === 0) {
      course.verdict = "broken";
      return;
    }
    const events = await course.takeRow(actions);
    for (const [at, action] of actions.entries())
      if (events[at]?.do === "note") refused.add(JSON.stringify(action));
  }
}
