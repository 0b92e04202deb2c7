/** The bar above the bench: which job, what it has cost so far, and where its log is kept. */
import { saidCount } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { go } from "../route.ts";
import { say } from "../say.ts";
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
        {say`Jobs`}
      </button>
      <div className="bench-title">
        <h1>{say(job?.title ?? view.boardName)}</h1>
        <p>
          {job?.practice != null && <span className="practice-mark">{say`Practice`}</span>}
          <span className={live ? "state live" : "state"}>{live ? say`POWERED` : offState(view)}</span>
        </p>
      </div>
      <p className="spent">
        <span className="for-readers">{say`Spent so far`}</span>
        <span className="figure">{minutes(view.minutesSpent)}</span>
        <span className="figure">{money(view.moneySpent, view.currency)}</span>
      </p>
      <button type="button" className="quiet wide-only" onClick={onHelp} aria-label={say`Keyboard help`}>
        ?
      </button>
      <div className="working" role="status">
        {open.thinking ? say`thinking…` : ""}
      </div>
      <SyncLine open={open} view={view} />
    </header>
  );
}

function offState(view: BenchView): string {
  if (!view.safety.open) return say`Off, may be charged`;
  return view.safety.overruled === null ? say`Off, proven dead` : say`Off, proof overruled`;
}

/** Where in the file a problem stands says nothing on the page. */
function whatOnly(problem: string): string {
  return problem.replace(/log\[\d+\](\.\w+)?: /, "");
}

/** The entry in words, where its id is in the log. */
function nameOf(open: OpenJob, view: BenchView, id: string | undefined): string {
  const line = view.log.find((one) => one.id === id);
  if (line !== undefined) return say`“${line.words}”`;
  return open.events.some((event) => event.id === id) ? say`the last entry` : say`this`;
}

function SyncLine({ open, view }: { readonly open: OpenJob; readonly view: BenchView }) {
  const { sync } = open;
  if (sync.state === "kept") return null;
  if (sync.state === "waiting")
    return (
      <p className="sync" role="status">
        {say`Kept in this browser, not yet on the bench computer (${sync.waiting.length}). It is sent by itself.`}
      </p>
    );
  const behind = sync.waiting.length - 1;
  return (
    <p className="sync refused" role="alert">
      {say`The bench computer does not accept ${nameOf(open, view, sync.waiting[0])}: ${whatOnly(sync.problem)}`}{" "}
      {behind > 0 &&
        `${say(saidCount(behind, "({0} more waits behind it.)", "({0} more wait behind it.)"))} `}
      <button type="button" onClick={open.takeBackRefused}>
        {say`Take it back`}
      </button>
    </p>
  );
}
