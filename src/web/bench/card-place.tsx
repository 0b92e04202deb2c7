/** Where the card stands: the next check, or the end of the job. Read out when it changes. */
import type { BenchView } from "../../wire/bench-view.ts";
import { actionKey } from "../job-event.ts";
import { MoneyFold } from "../money/money-fold.tsx";
import type { OpenJob } from "../use-job.ts";
import type { Agenda } from "./agenda.ts";
import type { BoardDesk, Hands } from "./bench-props.ts";
import { BesideCard } from "./beside-card.tsx";
import { BesideFold, LastCompared } from "./beside-fold.tsx";
import { CheckCard } from "./check-card.tsx";
import { ClosedCard } from "./closed-card.tsx";
import { AsideCard } from "./put-aside.tsx";
import { StoresStrip } from "./stores-strip.tsx";
import type { Beside } from "./use-beside.ts";

interface Props {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly agenda: Agenda;
  readonly hands: Hands;
  readonly beside: Beside;
  readonly desk: BoardDesk;
  readonly switchedOn: boolean;
}

export function CardPlace({ open, view, agenda, hands, beside, desk, switchedOn }: Props) {
  const { card } = agenda;
  const practice = open.job !== null && open.job !== "loading" && open.job.practice !== null;
  const aside = view.waiting !== null && agenda.chosen === null;
  const headline =
    beside.asked !== null
      ? "The same reading on the good board beside it."
      : aside
        ? "The job is put aside."
        : (card?.headline ?? "The job is closed.");
  const waiting = open.behind && agenda.inRow === null && agenda.chosen === null;
  return (
    <section className="card-place" aria-label="Next check" aria-busy={waiting}>
      <p className="for-readers" aria-live="polite">
        {waiting && beside.asked === null ? "" : headline}
      </p>
      {open.problem !== null && (
        <p className="problem" role="alert">
          {open.problem}
        </p>
      )}
      <StoresStrip view={view} hands={hands} />
      <LastCompared beside={beside} view={view} />
      {view.verdict !== null ? (
        <ClosedCard open={open} view={view} hands={hands} />
      ) : beside.asked !== null ? (
        <BesideCard
          key={`${actionKey(beside.asked.check)} ${open.events.length}`}
          asked={beside.asked}
          beside={beside}
          view={view}
          hands={hands}
          desk={desk}
        />
      ) : view.waiting !== null && aside ? (
        <AsideCard id={open.id} waiting={view.waiting} entries={open.events.length} hands={hands} />
      ) : card === null ? (
        <p className="problem">Nothing is proposed. Enter a check of your own, or close the job.</p>
      ) : (
        <CheckCard
          key={`${actionKey(card.action)} ${open.events.length}`}
          open={open}
          view={view}
          card={card}
          agenda={agenda}
          hands={hands}
          desk={desk}
          waiting={waiting}
          switchedOn={switchedOn && card.action.do === "power"}
        />
      )}
      {view.verdict === null && !practice && <BesideFold beside={beside} view={view} />}
      <MoneyFold id={open.id} money={view.money} />
    </section>
  );
}
