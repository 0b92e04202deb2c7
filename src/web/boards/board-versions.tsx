/** Versions of the board that are kept, what changed in each, and the jobs worked on it: a job replays with its own. */
import { useState } from "react";
import { saidCount } from "../../messages/said.ts";
import { api } from "../api.ts";
import { sendBoards } from "../board-keeper.ts";
import type { VersionsAnswer } from "../engine-messages.ts";
import { say } from "../say.ts";
import { useEngine } from "../use-engine.ts";
import { when } from "../when.ts";

interface Props {
  readonly id: string;
  readonly title: string;
  /** puts the content of an earlier version on top, as a new one */
  onBack(content: Readonly<Record<string, unknown>>): Promise<void>;
}

type Content = Readonly<Record<string, unknown>>;

interface Loaded {
  readonly answer: VersionsAnswer;
  readonly contents: ReadonlyMap<string, Content | null>;
}

const SHOWN = 12;
const CHANGES_SHOWN = 4;

export function BoardVersions({ id, title, onBack }: Props) {
  const engine = useEngine();
  const [loaded, setLoaded] = useState<Loaded | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const look = async () => {
    if (engine === null) return;
    try {
      // what was changed a moment ago is a version too
      await sendBoards();
      const { versions } = await api.ownBoard(id);
      const kept = versions.map((version) => ({ ...version, content: version.content as Content | null }));
      const answer = await engine.versions({
        kept,
        jobs: await jobsOn(new Set([title, ...versions.map((one) => one.title)])),
      });
      setLoaded({ answer, contents: new Map(kept.map((one) => [one.id, one.content])) });
      setProblem(null);
    } catch (error) {
      setProblem((error as Error).message);
    }
  };
  const back = async (content: Content) => {
    await onBack(content);
    await look();
  };
  const lines = loaded?.answer.versions ?? [];
  // one with a job is shown however old it is
  const shown = all ? lines : lines.filter(({ jobs }, at) => at < SHOWN || jobs.length > 0);
  return (
    <details onToggle={(event) => event.currentTarget.open && void look()}>
      <summary>{say`Versions kept`}</summary>
      {problem !== null && (
        <p role="alert" className="problem">
          {say(problem)}
        </p>
      )}
      {loaded === null && problem === null && <p role="status">{say`Looking…`}</p>}
      {loaded !== null && (
        <>
          <p className="aside">{say`Each change made one. A job keeps the version that it was worked on.`}</p>
          <ol className="versions" aria-label={say`Versions kept`}>
            {shown.map((line, at) => {
              const content = loaded.contents.get(line.id) ?? null;
              return (
                <li key={line.id}>
                  <Version line={line} />
                  {at > 0 && content !== null && (
                    <button type="button" onClick={() => void back(content)}>
                      {say`Go back to version ${line.number}`}
                    </button>
                  )}
                </li>
              );
            })}
          </ol>
          {shown.length < lines.length && (
            <button type="button" onClick={() => setAll(true)}>
              {say`${lines.length - shown.length} more`}
            </button>
          )}
          <OtherJobs jobs={loaded.answer.otherJobs} />
        </>
      )}
    </details>
  );
}

function Version({ line }: { readonly line: VersionsAnswer["versions"][number] }) {
  const { number, receivedAt, parts, changes, jobs } = line;
  return (
    <div>
      <b>{say`Version ${number}`}</b>{" "}
      <span className="figure aside">
        {say(
          saidCount(
            parts,
            "{1}, {0} part",
            "{1}, {0} parts",
            when(receivedAt, { dateStyle: "short", timeStyle: "short" }),
          ),
        )}
      </span>
      {changes.slice(0, CHANGES_SHOWN).map((change) => (
        <p key={change} className="version-change">
          {say(change)}
        </p>
      ))}
      {changes.length > CHANGES_SHOWN && (
        <p className="aside">{say`and ${changes.length - CHANGES_SHOWN} more`}</p>
      )}
      {jobs.map((job) => (
        <a key={job.id} className="job-link" href={`#/job/${job.id}`}>
          {job.title}
        </a>
      ))}
    </div>
  );
}

function OtherJobs({ jobs }: { readonly jobs: VersionsAnswer["otherJobs"] }) {
  if (jobs.length === 0) return null;
  return (
    <section aria-label={say`Jobs on another board of this name`}>
      <h3>{say`On another board of this name`}</h3>
      {jobs.map((job) => (
        <a key={job.id} className="job-link" href={`#/job/${job.id}`}>
          {job.title}
        </a>
      ))}
    </section>
  );
}

/** Jobs on a board of one of these names, practice left out. */
async function jobsOn(names: ReadonlySet<string>) {
  const { jobs } = await api.jobs();
  const named = jobs.filter(({ practice, boardName }) => practice === null && names.has(boardName));
  return Promise.all(
    named.map(async ({ id, title, createdAt }) => {
      const { header } = await api.job(id);
      return { id, title, createdAt, board: header.board as Content };
    }),
  );
}
