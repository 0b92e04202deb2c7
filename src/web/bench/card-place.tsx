/** Where the card stands: the next check, or the end of the job. Read out when it changes. */
import { useEffect, useRef } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { UndoStrip } from "../hands/undo-strip.tsx";
import { actionKey } from "../job-event.ts";
import { MoneyFold } from "../money/money-fold.tsx";
import type { OpenJob } from "../use-job.ts";
import type { Agenda } from "./agenda.ts";
import type { Hands } from "./bench-props.ts";
import { CheckCard } from "./check-card.tsx";
import { ClosedCard } from "./closed-card.tsx";
import { AsideCard } from "./put-aside.tsx";
import { StoresStrip } from "./stores-strip.tsx";

interface Props {
  readonly open: OpenJob;
  readonly view: BenchView;
  readonly agenda: Agenda;
  readonly hands: Hands;
  readonly switchedOn: boolean;
}

/** The engine has not yet answered for the last entry, and the card is its proposal. */
export function isWaiting(open: OpenJob, agenda: Agenda): boolean {
  return open.behind && agenda.inRow === null && agenda.chosen === null;
}

/** The step that stands on the card, as a screen reader and the voice say it; empty while the engine has not answered. */
export function stepWords(view: BenchView, { card, chosen }: Agenda, waiting: boolean): string {
  if (waiting) return "";
  if (view.waiting !== null && chosen === null) return "The job is put aside.";
  if (card === null) return "The job is closed.";
  return card.wait === null ? card.headline : `${card.headline}. ${card.wait}`;
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

export function CardPlace({ open, view, agenda, hands, switchedOn }: Props) {
  const { card } = agenda;
  const aside = view.waiting !== null && agenda.chosen === null;
  const cardKey = `${card === null ? "" : actionKey(card.action)} ${open.events.length}`;
  const place = useFocusOnNext(cardKey);
  const waiting = isWaiting(open, agenda);
  return (
    <section className="card-place" ref={place} aria-label="Next check" aria-busy={waiting}>
      <p className="for-readers" aria-live="polite">
        {stepWords(view, agenda, waiting)}
      </p>
      {open.problem !== null && (
        <p className="problem" role="alert">
          {open.problem}
        </p>
      )}
      <StoresStrip view={view} hands={hands} />
      {view.verdict === null && <UndoStrip events={open.events} onUndo={hands.undo} />}
      {view.verdict !== null ? (
        <ClosedCard open={open} view={view} hands={hands} />
      ) : view.waiting !== null && aside ? (
        <AsideCard id={open.id} waiting={view.waiting} entries={open.events.length} hands={hands} />
      ) : card === null ? (
        <p className="problem">Nothing is proposed. Enter a check of your own, or close the job.</p>
      ) : (
        <CheckCard
          key={cardKey}
          open={open}
          view={view}
          card={card}
          agenda={agenda}
          hands={hands}
          waiting={waiting}
          switchedOn={switchedOn && card.action.do === "power"}
        />
      )}
      <MoneyFold id={open.id} money={view.money} />
    </section>
  );
}
