/** The jobs on this bench, latest first, and the way to a new one. */
import { get, set } from "idb-keyval";
import { useEffect, useState } from "react";
import type { JobList } from "../../wire/job-api.ts";
import { Away, api } from "../api.ts";
import { unsentJobs } from "../keeper.ts";
import { go } from "../route.ts";
import { Wordmark } from "../shell/icons.tsx";
import { verdictWords } from "../words.ts";

type JobLine = JobList["jobs"][number];

interface Listed {
  readonly jobs: readonly JobLine[] | null;
  readonly problem: string | null;
}

const LAST_SEEN = "jobs-list";

async function listJobs(): Promise<Listed> {
  const unsent = (await unsentJobs()).map((job) => ({
    id: job.id,
    title: job.title,
    practice: job.practice,
    boardName: "kept in this browser",
    createdAt: job.createdAt,
    changedAt: job.createdAt,
    eventCount: job.events.length,
    verdict: null,
  }));
  const all = (jobs: readonly JobLine[]) => {
    const known = new Set(jobs.map(({ id }) => id));
    return [...unsent.filter(({ id }) => !known.has(id)), ...jobs];
  };
  try {
    const { jobs } = await api.jobs();
    await set(LAST_SEEN, jobs);
    return { jobs: all(jobs), problem: null };
  } catch (problem) {
    if (!(problem instanceof Away)) throw problem;
    return {
      jobs: all((await get<readonly JobLine[]>(LAST_SEEN)) ?? []),
      problem: "The bench computer does not answer. Jobs that were opened in this browser still open.",
    };
  }
}

/** What the bench keeps beside its jobs. */
const SHOP = [
  { to: "#/drawer", words: "Parts drawer" },
  { to: "#/boards", words: "Own boards" },
  { to: "#/shop", words: "The shop's terms" },
  { to: "#/meter", words: "Meter on the wire" },
  { to: "#/learnt", words: "What was learnt" },
] as const;

export function JobsScreen() {
  const [{ jobs, problem }, setListed] = useState<Listed>({ jobs: null, problem: null });
  useEffect(() => void listJobs().then(setListed), []);
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>
          <Wordmark />
        </h1>
        <p>From a dead board to a verdict: which check next, what it means, what to replace, when to stop.</p>
      </header>
      <main>
        <button type="button" className="primary tall" onClick={() => go("#/new")}>
          New job
        </button>
        <nav className="shop-keys" aria-label="The shop">
          {SHOP.map(({ to, words }) => (
            <button type="button" key={to} onClick={() => go(to)}>
              {words}
            </button>
          ))}
        </nav>
        {problem !== null && (
          <p className="sync" role="status">
            {problem}
          </p>
        )}
        <h2>Jobs</h2>
        {jobs === null ? (
          <p role="status">Looking…</p>
        ) : jobs.length === 0 ? (
          <p className="aside">
            None yet. Start one with a dead board in front of you, or choose practice in the new job to work a
            whole one without.
          </p>
        ) : (
          <>
            <JobRows title="On the bench" jobs={jobs.filter(({ verdict }) => verdict === null)} />
            <JobRows title="Closed" jobs={jobs.filter(({ verdict }) => verdict !== null)} />
          </>
        )}
      </main>
    </div>
  );
}

function JobRows({ title, jobs }: { readonly title: string; readonly jobs: readonly JobLine[] }) {
  if (jobs.length === 0) return null;
  return (
    <section aria-label={title}>
      <h3>{title}</h3>
      <ul className="jobs">
        {jobs.map((job) => (
          <JobRow key={job.id} job={job} />
        ))}
      </ul>
    </section>
  );
}

function JobRow({ job }: { readonly job: JobLine }) {
  const day = new Date(job.changedAt);
  return (
    <li>
      <a className="job" href={`#/job/${job.id}`}>
        <span className="job-title">{job.title}</span>
        {job.practice !== null && <span className="practice-mark">Practice</span>}
        <span className="job-board">
          {job.boardName}
          {job.verdict !== null && `: ${verdictWords(job.verdict)}`}
        </span>
        <span className="figure job-when">
          {job.eventCount === 1 ? "1 entry" : `${job.eventCount} entries`},{" "}
          {day.toLocaleString("en-GB", {
            day: "numeric",
            month: "short",
            hour: "2-digit",
            minute: "2-digit",
          })}
        </span>
      </a>
    </li>
  );
}
