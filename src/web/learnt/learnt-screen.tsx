/** What this bench has learnt: each figure beside the default that it takes the place of, and the jobs it comes from. */
import { useState } from "react";
import { plain, saidCount } from "../../messages/said.ts";
import type { LearntView } from "../../wire/learnt-view.ts";
import { LEFT_OUT } from "../../wire/note-words.ts";
import { api } from "../api.ts";
import { happened } from "../job-event.ts";
import type { JobLesson } from "../lessons.ts";
import { go } from "../route.ts";
import { forms, say, sayWith } from "../say.ts";
import { useEngine } from "../use-engine.ts";
import { useLearnt, useLessons } from "./use-lessons.ts";

export function LearntScreen() {
  const engine = useEngine();
  const { lessons, problem, again } = useLessons(engine);
  const learnt = useLearnt(engine, lessons);
  return (
    <div className="learnt-screen">
      <header className="bench-bar">
        <button type="button" className="quiet" onClick={() => go("#/")}>
          {say`Jobs`}
        </button>
        <h1>{say`What this bench has learnt`}</h1>
      </header>
      <main>
        <p className="aside">
          {say`Counted from closed jobs: what was found, replaced and cured. Practice never counts. A job keeps the figures that it was begun with.`}
        </p>
        {problem !== null && (
          <p role="alert" className="problem">
            {say(problem)}
          </p>
        )}
        <p role="status" className={lessons?.toRead === 0 && !lessons.away ? "aside" : "sync"}>
          {lessons === null ? say`Looking…` : statusWords(lessons.toRead, lessons.away)}
        </p>
        {learnt !== null && <Learnt learnt={learnt} />}
        {lessons !== null && <JobsBehind jobs={lessons.jobs} onChange={again} />}
      </main>
    </div>
  );
}

function statusWords(toRead: number, away: boolean): string {
  if (away) return say`The bench computer does not answer: what was read before is shown.`;
  if (toRead === 0) return say`All closed jobs are read.`;
  return say(saidCount(toRead, "Reading 1 job more…", "Reading {0} jobs more…"));
}

function Learnt({ learnt }: { readonly learnt: LearntView }) {
  if (learnt.jobs === 0)
    return (
      <p>{say`Nothing yet: every figure is the program's own until a job on a real board is closed.`}</p>
    );
  const jobs = saidCount(learnt.jobs, "1 closed job", "{0} closed jobs");
  const boards = saidCount(learnt.boards, "1 board", "{0} boards");
  return (
    <>
      <p>{say`From ${jobs} on ${boards}.`}</p>
      {learnt.sections
        .filter(({ rows, unchanged }) => rows.length + unchanged > 0)
        .map((section) => (
          <Section key={section.title} section={section} />
        ))}
    </>
  );
}

function Section({ section }: { readonly section: LearntView["sections"][number] }) {
  const { title, note, rows, unchanged } = section;
  return (
    <section aria-label={say(title)}>
      <h2>{say(title)}</h2>
      <p className="aside">{say(note)}</p>
      {rows.length > 0 && (
        <ul className="learnt-rows">
          {rows.map((row) => (
            <li key={row.what}>
              <span className="learnt-what">{say(row.what)}</span>
              <span className="figure">{sayWith`${say(row.before)} → ${<b>{say(row.now)}</b>}`}</span>
              <span className="figure aside">
                {forms().list([row.between, row.seen].filter((text) => text !== "").map((text) => say(text)))}
              </span>
            </li>
          ))}
        </ul>
      )}
      {unchanged > 0 && <p className="aside">{say`${unchanged} as before.`}</p>}
    </section>
  );
}

interface JobsBehindProps {
  readonly jobs: readonly JobLesson[];
  onChange(): void;
}

/** Each closed job with a key that leaves it out: a note in its own log, so that it can be taken in again anywhere. */
function JobsBehind({ jobs, onChange }: JobsBehindProps) {
  const [problem, setProblem] = useState<string | null>(null);
  if (jobs.length === 0) return null;
  const turn = async ({ id, leftOutBy }: JobLesson) => {
    const event =
      leftOutBy === null
        ? happened({ do: "note", text: plain(LEFT_OUT), leftOut: true })
        : happened({ do: "undo", of: leftOutBy });
    try {
      await api.append(id, [event]);
      setProblem(null);
      onChange();
    } catch (error) {
      setProblem(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <section aria-label={say`The jobs behind it`}>
      <h2>{say`The jobs behind it`}</h2>
      {problem !== null && (
        <p role="alert" className="problem">
          {say`Not changed: ${problem}`}
        </p>
      )}
      <ul className="learnt-jobs">
        {jobs.map((job) => (
          <li key={job.id} data-out={job.leftOutBy !== null}>
            <a href={`#/job/${job.id}`}>{job.title}</a>
            <button type="button" onClick={() => void turn(job)}>
              {job.leftOutBy === null ? say`Leave out` : say`Take in again`}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
