/** What closed jobs on a board came to, as counts alone: no customer, no note, no time, no picture is in them. */
import type { Verdict } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import type { Board } from "../board/board.ts";
import { closedAs } from "../job/closed-as.ts";
import type { Job } from "../job/job.ts";
import type { Cause, Symptom } from "../priors/cause.ts";

/** Counts of one shop's closed jobs on one board. */
export interface Outcomes {
  readonly jobs: number;
  readonly verdicts: Readonly<Partial<Record<Verdict, number>>>;
  readonly causes: Readonly<Partial<Record<Cause, number>>>;
  readonly symptoms: Readonly<Partial<Record<Symptom, number>>>;
  /** part -> in how many of the jobs it was replaced */
  readonly replaced: Readonly<Record<string, number>>;
}

/** By the word that the shop goes by in files that are shared. */
export type PooledOutcomes = Readonly<Record<string, Outcomes>>;

function counted<Word extends string>(words: readonly Word[]): Readonly<Record<Word, number>> {
  const counts = new Map<Word, number>();
  for (const word of words) counts.set(word, (counts.get(word) ?? 0) + 1);
  // In the alphabet's order, so that the same jobs in another order are the same file.
  return Object.fromEntries([...counts].sort(([a], [b]) => (a < b ? -1 : 1))) as Record<Word, number>;
}

/** Counts over the closed jobs among `jobs`; an open one says nothing yet. Parts that the board has not are not counted. */
export function outcomesOf(board: Board, jobs: readonly Job[]): Outcomes {
  const closed = jobs.flatMap((job) => {
    const verdict = closedAs(job.log);
    return verdict === null ? [] : [{ job, verdict }];
  });
  return {
    jobs: closed.length,
    verdicts: counted(closed.map(({ verdict }) => verdict)),
    causes: counted(closed.map(({ job }) => job.cause)),
    symptoms: counted(closed.map(({ job }) => job.symptom)),
    replaced: counted(closed.flatMap(({ job }) => replacedIn(job).filter((ref) => board.parts.has(ref)))),
  };
}

function replacedIn(job: Job): readonly string[] {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return [];
  const refs = timeline.value.entries.flatMap(({ event }) => (event.do === "replace" ? [event.part] : []));
  return [...new Set(refs)];
}

/** One shop's counts in the place of what it said before. */
export function pooled(before: PooledOutcomes, shop: string, outcomes: Outcomes): PooledOutcomes {
  const rest = Object.entries(before).filter(([name]) => name !== shop);
  const all = outcomes.jobs === 0 ? rest : [...rest, [shop, outcomes] as const];
  return Object.fromEntries(all.sort(([a], [b]) => (a < b ? -1 : 1)));
}
