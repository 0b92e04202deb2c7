/** Jobs as rows: what it is, whose, what it waits for and since when. */
import { useState } from "react";
import { saidCount } from "../../messages/said.ts";
import { jobNumber } from "../../wire/job-number.ts";
import { figure, say } from "../say.ts";
import { when } from "../when.ts";
import { verdictWords } from "../words.ts";
import { waitedWords } from "./job-groups.ts";
import type { JobLine } from "./job-list.ts";

interface RowsProps {
  readonly title: string;
  readonly jobs: readonly JobLine[];
  /** rows shown before they are asked for */
  readonly most: number;
}

export function JobRows({ title, jobs, most }: RowsProps) {
  const [all, setAll] = useState(false);
  const shown = all ? jobs : jobs.slice(0, most);
  return (
    <section aria-label={title}>
      <h3>
        {title} <span className="figure">{figure(jobs.length)}</span>
      </h3>
      <ul className="jobs">
        {shown.map((job) => (
          <JobRow key={job.id} job={job} />
        ))}
      </ul>
      {shown.length < jobs.length && (
        <button type="button" className="quiet" onClick={() => setAll(true)}>
          {say`Show ${jobs.length - shown.length} more`}
        </button>
      )}
    </section>
  );
}

function JobRow({ job }: { readonly job: JobLine }) {
  const { waiting, verdict, customer, unit } = job;
  const since = waiting?.since ?? job.changedAt;
  const whose = [unit, customer].filter((part) => part !== null && !job.title.includes(part));
  return (
    <li>
      <a className="job" href={`#/job/${job.id}`}>
        <bdi className="job-title">{say(job.title)}</bdi>
        <span className="figure job-number">{jobNumber(job.id)}</span>
        <span className="job-board">
          <bdi>{[say(job.boardName), ...whose].join(", ")}</bdi>
          {verdict !== null && `: ${say(verdictWords(verdict))}`}
        </span>
        {waiting === null ? (
          <span className="job-when">
            {job.practice !== null && <span className="practice-mark">{say`Practice`}</span>}
            <span className="figure">
              {say(saidCount(job.eventCount, "1 entry, {1}", "{0} entries, {1}", dayWords(job.changedAt)))}
            </span>
          </span>
        ) : (
          <span className="job-when">
            {waiting.what !== null && (
              <b>
                <bdi>{waiting.what}</bdi>{" "}
              </b>
            )}
            <span className="figure">{say`${waitedWords(since, Date.now())}, since ${dayWords(since)}`}</span>
          </span>
        )}
      </a>
    </li>
  );
}

/** `27 Nov, 11:45`. */
export function dayWords(at: string): string {
  return when(at, { day: "numeric", month: "short", hour: "2-digit", minute: "2-digit" });
}
