/** What each closed job taught, kept in this browser, since reading one again takes a second or two. */
import { get, set } from "idb-keyval";
import type { JobList } from "../wire/job-api.ts";
import type { Chained, Lesson } from "../wire/learnt-view.ts";
import { Away, api } from "./api.ts";
import type { Engine } from "./engine.ts";

/** A hash of all that lessons are counted with, put in when the page is built. */
const LESSON_BASIS: string = import.meta.env.LESSON_BASIS;

/** What is known of one closed job; `eventCount` tells whether it went on since. */
export interface JobLesson {
  /** what it was counted with */
  readonly basis: string;
  readonly id: string;
  readonly title: string;
  readonly eventCount: number;
  readonly comebackOf: string | null;
  /** the note that leaves it out; null: it teaches */
  readonly leftOutBy: string | null;
  readonly chained: Chained | null;
  /** null: left out, or not read yet */
  readonly lesson: Lesson | null;
}

export interface BenchLessons {
  readonly jobs: readonly JobLesson[];
  /** jobs still to be read */
  readonly toRead: number;
  readonly away: boolean;
}

const KEPT = "lessons";

async function kept(): Promise<readonly JobLesson[]> {
  const jobs = (await get<readonly JobLesson[]>(KEPT)) ?? [];
  return jobs.filter(({ basis }) => basis === LESSON_BASIS);
}

type JobLine = JobList["jobs"][number];

/**
 * Reads what was not read yet of the closed jobs, one after another, and says after each how it stands. Practice jobs are never read.
 * Stops where `going` says so.
 */
export async function readLessons(
  engine: Engine,
  tell: (lessons: BenchLessons) => void,
  going: () => boolean,
): Promise<void> {
  const known = new Map((await kept()).map((job) => [job.id, job]));
  let lines: readonly JobLine[];
  try {
    lines = (await api.jobs()).jobs;
  } catch (problem) {
    if (!(problem instanceof Away)) throw problem;
    tell({ jobs: [...known.values()], toRead: 0, away: true });
    return;
  }
  const closed = lines.filter(({ practice, verdict }) => practice === null && verdict !== null);
  const jobs: JobLesson[] = [];
  for (const line of closed) {
    const there = known.get(line.id);
    jobs.push(there?.eventCount === line.eventCount ? there : await factsOf(engine, line));
  }
  const chains = await engine.chains(jobs.map(({ id, comebackOf }) => ({ id, comebackOf })));
  const wanted = jobs.filter(
    (job) => job.leftOutBy === null && !sameChain(job.chained, chains[job.id] ?? null),
  );
  let toRead = wanted.length;
  tell({ jobs, toRead, away: false });
  for (const job of wanted) {
    if (!going()) return;
    const chained = chains[job.id] ?? { cameBack: false, again: false };
    const { header, events } = await api.job(job.id);
    const lesson = await engine.lesson({ header, events }, chained).catch(() => null);
    jobs[jobs.findIndex(({ id }) => id === job.id)] = { ...job, chained, lesson };
    await set(KEPT, jobs);
    tell({ jobs: [...jobs], toRead: --toRead, away: false });
  }
  await set(KEPT, jobs);
}

function sameChain(a: Chained | null, b: Chained | null): boolean {
  return a !== null && b !== null && a.cameBack === b.cameBack && a.again === b.again;
}

async function factsOf(engine: Engine, { id, title, eventCount }: JobLine): Promise<JobLesson> {
  const { header, events } = await api.job(id);
  const facts = await engine.lessonFacts({ header, events });
  return { basis: LESSON_BASIS, id, title, eventCount, ...facts, chained: null, lesson: null };
}

/** The lessons that are at hand now, without waiting for the bench computer. */
export async function lessonsAtHand(): Promise<readonly Lesson[]> {
  return (await kept()).flatMap(({ lesson }) => (lesson === null ? [] : [lesson]));
}
