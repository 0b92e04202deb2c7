/** Jobs as rows: what it is, whose, what it waits for and since when. */
import { useState } from "react";
import { jobNumber } from "../../wire/job-number.ts";
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
        {title} <span className="figure">{jobs.length}</span>
      </h3>
      <ul className="jobs">
        {shown.map((job) => (
          <JobRow key={job.id} job={job} />
        ))}
      </ul>
      {shown.length < jobs.length && (
        <button type="button" className="quiet" onClick={() => setAll(true)}>
          Show {jobs.length - shown.length} more
        </button>
      )}
    </section>
  );
}

function JobRow({ job }: { readonly job: JobLine }) {
  const { waiting, verdict, customer, unit } = job;
  const whose = [unit, customer].filter((part) => part !== null && !job.title.includes(part));
  return (
    <li>
      <a className="job" href={`#/job/${job.id}`}>
        <span className="job-title">{job.title}</span>
        <span className="figure job-number">{jobNumber(job.id)}</span>
        <span className="job-board">
          {[job.boardName, ...whose].join(", ")}
          {verdict !== null && `: ${verdictWords(verdict)}`}
        </span>
        {waiting === null ? (
          <span className="job-when">
            {job.practice !== null && <span className="practice-mark">Practice</span>}
            <span className="figure">
              {job.eventCount === 1 ? "1 entry" : `${job.eventCount} entries`}, {dayWords(job.changedAt)}
            </span>
          </span>
        ) : (
          <span className="job-when">
            {waiting.what !== null && <b>{waiting.what} </b>}
            <span className="figure">
              {waitedWords(waiting.since ?? job.changedAt, Date.now())}, since{" "}
              {dayWords(waiting.since ?? job.changedAt)}
            </span>
          </span>
        )}
      </a>
    </li>
  );
}

export function dayWords(at: string): string {
  return new Date(at).toLocaleString("en-GB", {
    day: "numeric",
    month: "short",
    hour: "2-digit",
    minute: "2-digit",
  });
}
