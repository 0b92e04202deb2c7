/** The end of a job: the verdict, what it cost, and in practice what the board really had. */
import type { BenchView } from "../../wire/bench-view.ts";
import type { PracticeInfo } from "../engine-messages.ts";
import { CameBack } from "../money/came-back.tsx";
import { go } from "../route.ts";
import { say, sayWith } from "../say.ts";
import type { OpenJob } from "../use-job.ts";
import { minutes, money, verdictWords } from "../words.ts";
import type { Hands } from "./bench-props.ts";
import { HiddenFaults } from "./hidden-faults.tsx";
import { Teach } from "./teach.tsx";
import { Ways } from "./ways.tsx";

interface Props {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly hands: Hands;
}

/** What others may learn of it: a real job becomes practice, a practised case is laid beside the recorded way. */
function Taught({ open, practice }: { readonly open: OpenJob; readonly practice: PracticeInfo | null }) {
  if (practice === null) return <Teach open={open} />;
  return practice.recorded === undefined ? null : <Ways open={open} practice={practice} />;
}

export function ClosedCard({ open, view, hands }: Props) {
  const close = view.log.findLast((line) => line.canUndo && !line.undone);
  return (
    <article className="card" data-do="closed" data-entry={open.events.length} data-waiting="false">
      <p className="card-kind">{say`Closed`}</p>
      <h2 className="probes-on">{verdictWords(view.verdict ?? "")}</h2>
      <p>
        {sayWith`${<span className="figure">{minutes(view.minutesSpent)}</span>} at the bench, ${<span className="figure">{money(view.moneySpent, view.currency)}</span>} of parts.`}
      </p>
      {open.job !== null && open.job !== "loading" && open.job.practice !== null && (
        <HiddenFaults open={open} />
      )}
      {open.job !== null && open.job !== "loading" && <Taught open={open} practice={open.job.practice} />}
      {open.job !== null && open.job !== "loading" && <CameBack job={open.job} />}
      <div className="keys">
        <button type="button" className="primary" onClick={() => go("#/")}>
          {say`All jobs`}
        </button>
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/report`)}>
          {say`Papers`}
        </button>
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/bill`)}>
          {say`Bill`}
        </button>
        {close?.id != null && (
          <button type="button" onClick={() => close.id !== null && hands.undo(close.id)}>
            {say`Open it again`}
          </button>
        )}
      </div>
    </article>
  );
}
