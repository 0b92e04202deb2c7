/** The front page: a new job, the jobs by what each waits for, and what the shop keeps. */
import { useEffect, useId, useState } from "react";
import { said } from "../../messages/said.ts";
import { scannedId } from "../../wire/job-number.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
import { Wordmark } from "../shell/icons.tsx";
import { findJobs } from "./find-jobs.ts";
import { jobGroups } from "./job-groups.ts";
import { type JobLine, type Listed, listJobs } from "./job-list.ts";
import { JobRows } from "./job-rows.tsx";
import { Newcomer } from "./newcomer.tsx";

/** What the bench keeps beside its jobs. */
const SHOP = [
  { to: "#/drawer", words: said`Parts drawer` },
  { to: "#/boards", words: said`Own boards` },
  { to: "#/shop", words: said`The shop's terms` },
  { to: "#/meter", words: said`Meter on the wire` },
  { to: "#/bench", words: said`This bench` },
  { to: "#/learnt", words: said`What was learnt` },
] as const;

/** A shop has hundreds of closed jobs: the latest are shown, the others found or asked for. */
const CLOSED_SHOWN = 5;

export function JobsScreen() {
  const [listed, setListed] = useState<Listed | null>(null);
  useEffect(() => void listJobs().then(setListed), []);
  const jobs = listed?.jobs ?? [];
  const own = jobs.some(({ practice }) => practice === null);
  const worked = own || jobs.some(({ eventCount }) => eventCount > 0);
  return (
    <div className="jobs-screen">
      <header className="front">
        <h1>
          <Wordmark />
        </h1>
        <p>{say`From a dead board to a verdict: which check next, what it means, what to replace, when to stop.`}</p>
      </header>
      <main>
        {listed !== null && !worked && (
          <Newcomer practiceJob={jobs.find(({ practice }) => practice !== null)?.id ?? null} />
        )}
        <button
          type="button"
          className={listed !== null && !worked ? "tall" : "primary tall"}
          onClick={() => go("#/new")}
        >
          {say`New job`}
        </button>
        {listed?.away === true && (
          <p className="sync" role="status">
            {say`The bench computer does not answer. This is the list as it was last; jobs seen in this browser still open.`}
          </p>
        )}
        {listed === null ? <p role="status">{say`Looking…`}</p> : <Jobs jobs={jobs} />}
        <nav className="shop-keys" aria-label={say`The shop`}>
          {SHOP.map(({ to, words }) => (
            <button type="button" key={to} onClick={() => go(to)}>
              {say(words)}
            </button>
          ))}
        </nav>
      </main>
    </div>
  );
}

function Jobs({ jobs }: { readonly jobs: readonly JobLine[] }) {
  const [typed, setTyped] = useState("");
  const found = findJobs(jobs, typed);
  const looking = typed.trim() !== "";
  return (
    <>
      <h2>{say`Jobs`}</h2>
      {jobs.length > 1 && <Find typed={typed} found={found} onTyped={setTyped} />}
      {jobs.length === 0 && <p className="aside">{say`None yet.`}</p>}
      {jobGroups(found).map((group) => (
        <JobRows
          key={group.of}
          title={say(group.title)}
          jobs={group.jobs}
          most={group.of === "closed" && !looking ? CLOSED_SHOWN : Number.POSITIVE_INFINITY}
        />
      ))}
    </>
  );
}

interface FindProps {
  readonly typed: string;
  readonly found: readonly JobLine[];
  onTyped(typed: string): void;
}

/** One field for all of it. A scanner types the label's code and Enter, which opens the job; so does Enter on the only one found. */
function Find({ typed, found, onTyped }: FindProps) {
  const id = useId();
  const scanned = scannedId(typed);
  const only = found.length === 1 ? (found[0]?.id ?? null) : null;
  const opens = scanned ?? only;
  return (
    <search>
      <form
        className="entry find"
        onSubmit={(event) => {
          event.preventDefault();
          if (opens !== null && typed.trim() !== "") go(`#/job/${opens}`);
        }}
      >
        <label htmlFor={id}>{say`Find a job`}</label>
        <input
          id={id}
          type="search"
          autoComplete="off"
          autoCapitalize="off"
          enterKeyHint="go"
          placeholder={say`unit, customer, part, verdict`}
          value={typed}
          onChange={(event) => onTyped(event.target.value)}
        />
        <p className="aside" role="status">
          {typed.trim() === "" ? "" : say(foundWords(scanned !== null, found.length))}
        </p>
      </form>
    </search>
  );
}

function foundWords(scanned: boolean, found: number): string {
  if (scanned) return said`A label's code: Enter opens its job.`;
  if (found === 0) return said`No job has all of these words. Try fewer.`;
  return found === 1 ? said`1 found: Enter opens it.` : said`${found} found.`;
}
