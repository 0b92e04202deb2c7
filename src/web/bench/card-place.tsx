/** Where the card stands: the next check, or the end of the job. Read out when it changes. */
import { useEffect, useRef } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { UndoStrip } from "../hands/undo-strip.tsx";
import { actionKey } from "../job-event.ts";
import { MoneyFold } from "../money/money-fold.tsx";
import { say } from "../say.ts";
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

/** The engine has not yet answered for the last entry, and the card is its proposal. */
export function isWaiting(open: OpenJob, agenda: Agenda): boolean {
  return open.behind && agenda.inRow === null && agenda.chosen === null;
}

/** The step that stands on the card, as a screen reader and the voice tell it; empty while the engine has not answered. */
export function stepWords(view: BenchView, { card, chosen }: Agenda, waiting: boolean): string {
  if (waiting) return "";
  if (view.waiting !== null && chosen === null) return say`The job is put aside.`;
  if (card === null) return say`The job is closed.`;
  return card.wait === null ? say(card.headline) : say`${card.headline}. ${card.wait}`;
}

/** A key that was tapped goes with its card: the focus it had goes to the next card, not to the top of the page. */
function useFocusOnNext(card: string) {
  const place = useRef<HTMLElement>(null);
  const before = useRef(card);
  useEffect(() => {
    if (before.current !== card && document.activeElement === document.body)
      place.current?.querySelector<HTMLElement>(".card")?.focus({ preventScroll: true });
    before.current = card;
  }, [card]);
  return place;
}

export function CardPlace({ open, view, agenda, hands, beside, desk, switchedOn }: Props) {
  const { card } = agenda;
  const practice = open.job !== null && open.job !== "loading" && open.job.practice !== null;
  const aside = view.waiting !== null && agenda.chosen === null;
  const cardKey = `${card === null ? "" : actionKey(card.action)} ${open.events.length}`;
  const place = useFocusOnNext(cardKey);
  const waiting = isWaiting(open, agenda);
  return (
    <section className="card-place" ref={place} aria-label={say`Next check`} aria-busy={waiting}>
      <p className="for-readers" aria-live="polite">
        {beside.asked === null
          ? stepWords(view, agenda, waiting)
          : say`The same reading on the good board beside it.`}
      </p>
      {open.problem !== null && (
        <p className="problem" role="alert">
          {say(open.problem)}
        </p>
      )}
      <StoresStrip view={view} hands={hands} />
      <LastCompared beside={beside} view={view} />
      {view.verdict === null && <UndoStrip events={open.events} onUndo={hands.undo} />}
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
        <p className="problem">{say`Nothing is proposed. Enter a check of your own, or close the job.`}</p>
      ) : (
        <CheckCard
          key={cardKey}
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
