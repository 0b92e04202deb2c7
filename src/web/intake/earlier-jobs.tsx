/** What boards of this number, or of its family, had before: shown while the job is taken in. */
import { useEffect, useState } from "react";
import type { EarlierList } from "../../wire/job-api.ts";
import { api } from "../api.ts";
import { boardFacts } from "../board-facts.ts";
import { verdictWords } from "../words.ts";
import { CAUSES } from "./intake.ts";

type Earlier = EarlierList["jobs"][number];

/** Lines shown before the rest is unfolded. */
const AT_ONCE = 3;

export function EarlierJobs({ board }: { readonly board: unknown }) {
  const [jobs, setJobs] = useState<readonly Earlier[]>([]);
  const { name, family } = boardFacts(board);
  useEffect(() => {
    setJobs([]);
    if (name === "" && family === "") return;
    let wanted = true;
    // Where the bench computer is away there is nothing to show, and nothing to say: the job starts all the same.
    api.earlier(name, family).then(
      (list) => wanted && setJobs(list.jobs),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [name, family]);
  if (jobs.length === 0) return null;
  const same = jobs.filter(({ sameBoard }) => sameBoard).length;
  return (
    <section aria-label="What it had before">
      <h2>What it had before</h2>
      <p className="aside">
        {same === 0 ? "No board of this number yet" : `${same} of this number`}
        {jobs.length > same && `, ${jobs.length - same} of the same family`}.
      </p>
      <Rows jobs={jobs.slice(0, AT_ONCE)} />
      {jobs.length > AT_ONCE && (
        <details>
          <summary>{jobs.length - AT_ONCE} more</summary>
          <Rows jobs={jobs.slice(AT_ONCE)} />
        </details>
      )}
    </section>
  );
}

function Rows({ jobs }: { readonly jobs: readonly Earlier[] }) {
  return (
    <ul className="earlier-jobs">
      {jobs.map((job) => (
        <li key={job.id}>
          <span className="earlier-done">
            {job.done.length === 0 ? "Nothing replaced" : doneWords(job.done)}
          </span>
          <span>
            {job.verdict === null ? "Still open" : verdictWords(job.verdict)}
            {job.cameBack && <b>; it came back</b>}
          </span>
          <span className="figure aside">
            {job.changedAt?.slice(0, 10)} {causeWords(job.cause)}
            {!job.sameBoard && `; ${job.boardName}`}
          </span>
        </li>
      ))}
    </ul>
  );
}

const doneWords = (done: readonly string[]): string => {
  const words = done.join(", ");
  return words.charAt(0).toUpperCase() + words.slice(1);
};

const causeWords = (cause: string): string => CAUSES.find((one) => one.cause === cause)?.words ?? cause;
