/** The end of a job: the verdict, what it cost, and in practice what the board really had. */
import { useEffect, useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import type { HiddenFaults } from "../engine-messages.ts";
import { go } from "../route.ts";
import type { OpenJob } from "../use-job.ts";
import { minutes, money, verdictWords } from "../words.ts";
import type { Hands } from "./bench-screen.tsx";

interface Props {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly hands: Hands;
}

export function ClosedCard({ open, view, hands }: Props) {
  const close = view.log.findLast((line) => line.canUndo && !line.undone);
  return (
    <article className="card" data-do="closed">
      <p className="card-kind">Closed</p>
      <h2 className="probes-on">{verdictWords(view.verdict ?? "")}</h2>
      <p>
        <span className="figure">{minutes(view.minutesSpent)}</span> at the bench,{" "}
        <span className="figure">{money(view.moneySpent, view.currency)}</span> of parts.
      </p>
      {open.job !== null && open.job !== "loading" && open.job.practice !== null && <Hidden open={open} />}
      <div className="keys">
        <button type="button" className="primary" onClick={() => go("#/")}>
          All jobs
        </button>
        {close?.id != null && (
          <button type="button" onClick={() => close.id !== null && hands.undo(close.id)}>
            Open it again
          </button>
        )}
      </div>
    </article>
  );
}

function Hidden({ open }: { readonly open: OpenJob }) {
  const [told, setTold] = useState<HiddenFaults | null>(null);
  // Asked once the engine has the closed log; the same log gives the same answer.
  useEffect(() => {
    let left = false;
    open.hidden().then(
      (faults) => left || setTold(faults),
      () => left || setTold(null),
    );
    return () => {
      left = true;
    };
  }, [open.hidden]);
  if (told === null) return null;
  return (
    <section className="gate" aria-label="What the practice board had">
      <h3>What the practice board had</h3>
      <ul className="plain">
        {told.faults.map((fault) => (
          <li key={fault}>
            <code>{fault}</code> {told.present.includes(fault) ? "still there" : "cured"}
          </li>
        ))}
      </ul>
    </section>
  );
}
