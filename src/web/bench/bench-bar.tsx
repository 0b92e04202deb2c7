/** The bar above the bench: which job, what it has cost so far, and where its log is kept. */
import type { BenchView } from "../../wire/bench-view.ts";
import { go } from "../route.ts";
import type { OpenJob } from "../use-job.ts";
import { minutes, money } from "../words.ts";

interface Props {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly live: boolean;
  onHelp(): void;
}

export function BenchBar({ open, view, live, onHelp }: Props) {
  const job = open.job === "loading" ? null : open.job;
  return (
    <header className="bench-bar">
      <button type="button" className="quiet" onClick={() => go("#/")}>
        Jobs
      </button>
      <div className="bench-title">
        <h1>{job?.title ?? view.boardName}</h1>
        <p>
          {job?.practice != null && <span className="practice-mark">Practice</span>}
          <span className={live ? "state live" : "state"}>{live ? "POWERED" : offState(view)}</span>
        </p>
      </div>
      <p className="spent">
        <span className="for-readers">Spent so far</span>
        <span className="figure">{minutes(view.minutesSpent)}</span>
        <span className="figure">{money(view.moneySpent, view.currency)}</span>
      </p>
      <button type="button" className="quiet wide-only" onClick={onHelp} aria-label="Keyboard help">
        ?
      </button>
      <div className="working" role="status">
        {open.thinking ? "thinking…" : ""}
      </div>
      <SyncLine open={open} view={view} />
    </header>
  );
}

function offState(view: BenchView): string {
  if (!view.safety.open) return "Off, may be charged";
  return view.safety.overruled === null ? "Off, proven dead" : "Off, proof overruled";
}

/** Where in the file a problem stands says nothing on the page. */
function whatOnly(problem: string): string {
  return problem.replace(/^log\[\d+\](\.\w+)?: /, "");
}

/** The entry in words, where its id is in the log. */
function nameOf(open: OpenJob, view: BenchView, id: string | undefined): string {
  const line = view.log.find((one) => one.id === id);
  if (line !== undefined) return `“${line.words}”`;
  return open.events.some((event) => event.id === id) ? "the last entry" : "this";
}

function SyncLine({ open, view }: { readonly open: OpenJob; readonly view: BenchView }) {
  const { sync } = open;
  if (sync.state === "kept") return null;
  if (sync.state === "waiting")
    return (
      <p className="sync" role="status">
        Kept in this browser, not yet on the bench computer ({sync.waiting.length}). It is sent by itself.
      </p>
    );
  return (
    <p className="sync refused" role="alert">
      The bench computer does not accept {nameOf(open, view, sync.waiting[0])}: {whatOnly(sync.problem)}
      {sync.waiting.length > 1 && ` (${sync.waiting.length - 1} more wait behind it.)`}{" "}
      <button type="button" onClick={open.takeBackRefused}>
        Take it back
      </button>
    </p>
  );
}
