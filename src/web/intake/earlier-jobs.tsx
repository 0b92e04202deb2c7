/** What boards of this number, or of its family, had before: shown while the job is taken in. */
import { useEffect, useState } from "react";
import { said } from "../../messages/said.ts";
import type { EarlierList } from "../../wire/job-api.ts";
import { api } from "../api.ts";
import { boardFacts } from "../board-facts.ts";
import { say, sayWith } from "../say.ts";
import { verdictWords } from "../words.ts";
import { CAUSES } from "./intake.ts";

type Earlier = EarlierList["jobs"][number];

/** Lines shown before the rest is unfolded. */
const AT_ONCE = 3;

export function EarlierJobs({ board }: { readonly board: unknown }) {
  const [jobs, setJobs] = useState<readonly Earlier[]>([]);
  const { name, family, identity } = boardFacts(board);
  useEffect(() => {
    setJobs([]);
    if (name === "" && family === "") return;
    let wanted = true;
    // Where the bench computer is away there is nothing to show, and nothing to say: the job starts all the same.
    api.earlier({ name, family, identity }).then(
      (list) => wanted && setJobs(list.jobs),
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [name, family, identity]);
  if (jobs.length === 0) return null;
  const same = jobs.filter(({ sameBoard }) => sameBoard).length;
  return (
    <section aria-label={say`What it had before`}>
      <h2>{say`What it had before`}</h2>
      <p className="aside">{say(knownWords(same, jobs.length - same))}</p>
      <Rows jobs={jobs.slice(0, AT_ONCE)} />
      {jobs.length > AT_ONCE && (
        <details>
          <summary>{say`${jobs.length - AT_ONCE} more`}</summary>
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
            {job.done.length === 0 ? say`Nothing replaced` : doneWords(job.done)}
          </span>
          <span>
            {job.cameBack ? sayWith`${endWords(job)}; ${<b>{say`it came back`}</b>}` : endWords(job)}
          </span>
          <span className="figure aside">
            <bdi>{job.changedAt?.slice(0, 10)}</bdi> {causeWords(job.cause)}
            {!job.sameBoard && (
              <>
                ; <bdi>{say(job.boardName)}</bdi>
              </>
            )}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Jobs on boards of this number, and on others of its family. */
function knownWords(same: number, family: number): string {
  if (family === 0) return said`${same} of this number.`;
  return same === 0
    ? said`No board of this number yet, ${family} of the same family.`
    : said`${same} of this number, ${family} of the same family.`;
}

const endWords = ({ verdict }: Earlier): string =>
  verdict === null ? say`Still open` : say(verdictWords(verdict));

const doneWords = (done: readonly string[]): string => {
  const words = done.map((one) => say(one)).join(", ");
  return words.charAt(0).toUpperCase() + words.slice(1);
};

const causeWords = (cause: string): string => say(CAUSES.find((one) => one.cause === cause)?.words ?? cause);
