/** Everything done, oldest first, each line with its undo. Undo appends: nothing is lost. */

import { useState } from "react";
import { saidCount } from "../../messages/said.ts";
import { CoursePlots } from "../plots/lazy-plots.tsx";
import { say } from "../say.ts";
import { restsOnWords } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
import { PicturesStrip } from "./pictures-strip.tsx";

export function LogPanel({ view, hands, open }: PanelProps) {
  const waiting = open.behind ? open.events.length - view.log.length : 0;
  const unsent = new Set(open.sync.state === "kept" ? [] : open.sync.waiting);
  const job = open.job === null || open.job === "loading" ? null : open.job.id;
  return (
    <>
      {view.log.length === 0 ? (
        <p className="aside">{say`Nothing yet.`}</p>
      ) : (
        <Log view={view} hands={hands} waiting={waiting} unsent={unsent} />
      )}
      {view.log.length > 0 && <Course open={open} currency={view.currency} />}
      {job !== null && <PicturesStrip job={job} />}
    </>
  );
}

/** Worked out when it is opened: it takes as long as the job has entries. */
function Course(props: { readonly open: PanelProps["open"]; readonly currency: string }) {
  const [shown, setShown] = useState(false);
  return (
    <details className="course-plots" onToggle={(event) => setShown(event.currentTarget.open)}>
      <summary>{say`How the job has gone, plotted`}</summary>
      {shown && <CoursePlots {...props} />}
    </details>
  );
}

interface LogProps extends Pick<PanelProps, "view" | "hands"> {
  /** entries that the engine has not weighed yet */
  readonly waiting: number;
  /** ids of entries that the bench computer does not have yet */
  readonly unsent: ReadonlySet<string>;
}

function Log({ view, hands, waiting, unsent }: LogProps) {
  return (
    <ol className="log" aria-label={say`Log`}>
      {view.log.map((line) => (
        <li key={line.logIndex} data-undone={line.undone} data-unexplained={line.unexplained}>
          <span className="figure log-number">{line.logIndex + 1}</span>
          <span className="log-words">
            {line.undone ? <s>{say(line.words)}</s> : say(line.words)}
            {line.undone && <span className="log-note">{say`undone`}</span>}
            {line.id !== null && unsent.has(line.id) && (
              <span className="log-note">{say`waits for the bench computer`}</span>
            )}
            {line.unexplained && (
              <span className="log-note">{say`Nothing explains this one. Measure it again.`}</span>
            )}
            {line.restsOn.length > 0 && <span className="log-note">{restsOnWords(line.restsOn)}</span>}
          </span>
          {line.canUndo && !line.undone && line.id !== null && (
            <button
              type="button"
              className="small"
              aria-label={say`Undo: ${line.words}`}
              onClick={() => line.id !== null && hands.undo(line.id)}
            >
              {say`Undo`}
            </button>
          )}
        </li>
      ))}
      {waiting > 0 && (
        <li className="aside">
          {say(saidCount(waiting, "One more entry, being weighed…", "{0} more entries, being weighed…"))}
        </li>
      )}
    </ol>
  );
}
