/** The list of jobs by what each waits for, those that have waited longest first. */

import { said, saidCount } from "../../messages/said.ts";
import type { Waiting } from "../../wire/job-line.ts";
import { say } from "../say.ts";
import type { JobLine } from "./job-list.ts";

export interface JobGroup {
  readonly of: "bench" | Waiting["for"] | "closed";
  readonly title: string;
  readonly jobs: readonly JobLine[];
}

export const WAITS_FOR_WORDS: Readonly<Record<Waiting["for"], string>> = {
  answer: said`Waiting for the customer's yes`,
  part: said`Waiting for a part`,
  drying: said`Drying`,
};

/** In the order in which they ask for a hand: what is on the bench, what may have come meanwhile, what needs none. */
export function jobGroups(jobs: readonly JobLine[]): readonly JobGroup[] {
  const open = jobs.filter(({ verdict }) => verdict === null);
  const waiting = (["answer", "part", "drying"] as const).map((of) => ({
    of,
    title: WAITS_FOR_WORDS[of],
    jobs: open.filter((job) => job.waiting?.for === of).sort(longestFirst),
  }));
  const groups: readonly JobGroup[] = [
    { of: "bench", title: said`On the bench`, jobs: open.filter((job) => job.waiting === null) },
    ...waiting,
    { of: "closed", title: said`Closed`, jobs: jobs.filter(({ verdict }) => verdict !== null) },
  ];
  return groups.filter((group) => group.jobs.length > 0);
}

const since = ({ waiting, changedAt }: JobLine): number => Date.parse(waiting?.since ?? changedAt);
const longestFirst = (one: JobLine, other: JobLine): number => since(one) - since(other);

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;
const DAY_MS = 24 * HOUR_MS;
/** From here days are counted: nobody thinks in more hours than that. */
const MOST_HOURS = 48;

/** How long it has waited: `for 25 min`, `for 7 h`, `for 3 days`. */
export function waitedWords(from: string, now: number): string {
  const waited = Math.max(0, now - Date.parse(from));
  if (waited < HOUR_MS) return say`for ${Math.max(1, Math.round(waited / MINUTE_MS))} min`;
  const hours = Math.round(waited / HOUR_MS);
  return hours < MOST_HOURS
    ? say`for ${hours} h`
    : say(saidCount(Math.round(waited / DAY_MS), "for one day", "for {0} days"));
}
