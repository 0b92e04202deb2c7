/** The card: what to do next, in the largest words where, then the keys to answer with, then why. */

import { useEffect, useRef, useState } from "react";
import type { BenchView, CardView } from "../../wire/bench-view.ts";
import { Cautions } from "../hands/cautions.tsx";
import { field, type Outcome } from "../job-event.ts";
import { CardPlots } from "../plots/lazy-plots.tsx";
import { say, sayWith } from "../say.ts";
import { SafetyNotice } from "../shell/safety-notice.tsx";
import { listed, minutes, money, restsOnWords } from "../words.ts";
import type { Agenda } from "./agenda.ts";
import { AnswerKeys } from "./answer-keys.tsx";
import type { CardProps } from "./bench-props.ts";
import { Expectations } from "./expectations.tsx";
import { FirstMinute } from "./first-minute.tsx";
import { AtStake } from "./gates.tsx";
import { gateBefore, HeldBack } from "./held-back.tsx";
import { PowerForecast } from "./power-forecast.tsx";
import { Probes } from "./probes.tsx";
import { fittedHere } from "./shelve.tsx";
import { SomethingElse } from "./something-else.tsx";
import { StepOnBoard } from "./step-on-board.tsx";
import { SwitchOn } from "./switch-on.tsx";
import { useGood } from "./use-good.ts";
import { usePartFit } from "./use-part-fit.ts";
import { WhichPart } from "./which-part.tsx";

export function CheckCard(props: CardProps) {
  const { card, view, agenda, hands, desk, switchedOn } = props;
  const gate = gateBefore(view, agenda);
  const fit = usePartFit(props.open, card.action.do === "replace" ? field(card.action, "part") : null);
  const article = useFocusAt(switchedOn);
  // probes, what has to be known, keys: the whole board stands below them, its spots are in the probes
  const keysFirst = card.action.do === "measure" && gate === null;
  const aids = (
    <>
      {!switchedOn && <StepOnBoard card={card} places={view.places} desk={desk} />}
      {gate === null && <PracticeAnswer {...props} />}
    </>
  );
  const before = card.action.do === "power" && gate === null && !switchedOn;
  return (
    <article
      className="card"
      ref={article}
      tabIndex={-1}
      data-do={card.action.do}
      data-entry={props.open.events.length}
      data-waiting={props.waiting}
    >
      <CardHead {...props} />
      {switchedOn ? (
        <h2 className="headline">{say`It is on: hands off`}</h2>
      ) : (
        <Probes card={card} places={view.places} desk={desk} />
      )}
      {!keysFirst && aids}
      {!switchedOn && <BeforeStep open={props.open} card={card} currency={view.currency} />}
      {!switchedOn && <BesideBaseline card={card} view={view} />}
      {card.firstMinute !== null && (switchedOn || card.action.do !== "power") && (
        <FirstMinute watch={card.firstMinute} />
      )}
      {gate === null ? (
        <>
          {before ? (
            <SwitchOn
              watch={card.firstMinute}
              disabled={props.waiting}
              onSwitchedOn={() => hands.throwSwitch(true)}
            />
          ) : (
            <AnswerKeys
              card={card}
              view={view}
              hands={hands}
              disabled={props.waiting}
              fit={fit}
              fitted={card.action.do === "close" ? fittedHere(props.open) : []}
            />
          )}
          {switchedOn && (
            <button type="button" className="quiet" onClick={() => hands.throwSwitch(false)}>
              {say`It is not on yet: back to before`}
            </button>
          )}
        </>
      ) : (
        <HeldBack gate={gate} view={view} hands={hands} />
      )}
      {keysFirst && aids}
      {card.action.do === "replace" && <WhichPart fit={fit} />}
      {!switchedOn && <Reasoning {...props} />}
    </article>
  );
}

/** What is read with power on stands where the eye is: the card goes to its top when the switch has been thrown, and back. */
function useFocusAt(switchedOn: boolean) {
  const article = useRef<HTMLElement>(null);
  const before = useRef(switchedOn);
  useEffect(() => {
    if (before.current !== switchedOn) {
      article.current?.scrollIntoView();
      article.current?.focus({ preventScroll: true });
    }
    before.current = switchedOn;
  }, [switchedOn]);
  return article;
}

/** At the cold re-check: what the part read here before it went in, and what has been read again. */
function BesideBaseline({ card: { action }, view }: { readonly card: CardView; readonly view: BenchView }) {
  const had = view.baselines.find(
    ({ mode, red, black }) => action.mode === mode && action.red === red && action.black === black,
  );
  const told =
    action.do === "power" || had !== undefined ? view.recheck : view.recheck.filter(({ amiss }) => amiss);
  if (had === undefined && told.length === 0) return null;
  return (
    <section className="recheck" aria-label={say`Before it went in`}>
      {had !== undefined && (
        <p>
          {sayWith`Before it went in ${<span className="ref">{had.part}</span>} read ${<b className="figure">{say(had.words)}</b>} here.`}
        </p>
      )}
      {told.length > 0 && (
        <ul className="plain">
          {told.map(({ words, amiss }) => (
            <li key={words} data-amiss={amiss}>
              {say`${words}.`}
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What has to be known and done before the step; once the power is on it is out of the way. */
function BeforeStep({
  open,
  card,
  currency,
}: Pick<CardProps, "open" | "card"> & { readonly currency: string }) {
  return (
    <>
      {needsNotice(card) && <SafetyNotice />}
      <Cautions
        job={open.id}
        events={open.events}
        cautions={card.cautions}
        beforePower={card.action.do === "power"}
      />
      {card.wait !== null && (
        <p className="wait">
          <strong>{say`Wait.`}</strong> {say(card.wait)}
        </p>
      )}
      {card.atStake !== null && <AtStake stake={card.atStake} currency={currency} />}
      {card.forecast !== null && <PowerForecast forecast={card.forecast} currency={currency} />}
    </>
  );
}

/** Why this step, what it is expected to show, and what else could be done. */
function Reasoning({ open, card, view, agenda, hands }: CardProps) {
  const { good, restsOn } = useGood(open, card, agenda.chosen === null && agenda.inRow === null);
  return (
    <>
      {card.why !== "" && <p className="why">{say(card.why)}</p>}
      {good !== null && (
        <p className="why">
          {sayWith`A good board shows ${<span className="figure">{say(good)}</span>}.`}
          {restsOn.length > 0 && ` ${restsOnWords(restsOn)}`}
        </p>
      )}
      <CardPlots open={open} card={card} powered={view.powered} />
      <Expectations card={card} />
      {card.others.length + card.outlook.repairProbability > 0 && <Outlook card={card} view={view} />}
      <SomethingElse card={card} view={view} agenda={agenda} hands={hands} />
    </>
  );
}

/** A card of the person's own has no cautions of the engine's: near charge or power the notice stands in for them. */
function needsNotice(card: CardView): boolean {
  if (card.cautions.length > 0) return false;
  const mode = field(card.action, "mode");
  return card.action.do === "power" || (card.action.do === "measure" && (mode === "dcv" || mode === "acv"));
}

function kindWords({ row }: CardView, { inRow, chosen }: Agenda): string {
  if (inRow !== null) return say`Same set-up: ${inRow.number} of ${inRow.of}`;
  if (chosen !== null) return say`Your own choice`;
  return row.length > 0 ? say`Next, first of a row of ${row.length + 1}` : say`Next`;
}

function CardHead({ card, view, agenda }: CardProps) {
  const cost = [
    // a bare figure was taken for a clock
    card.minutes > 0 ? say`about ${minutes(card.minutes)}` : "",
    card.money > 0 ? money(card.money, view.currency) : "",
  ];
  return (
    <div className="card-head">
      <p className="card-kind">{kindWords(card, agenda)}</p>
      {(agenda.inRow !== null || agenda.chosen !== null) && (
        <button type="button" className="quiet small" onClick={agenda.clear}>
          {agenda.inRow !== null ? say`Leave the row` : say`Back to the proposal`}
        </button>
      )}
      <p className="figure card-cost">{listed(cost.filter((part) => part !== ""))}</p>
    </div>
  );
}

function Outlook({ card, view }: CardProps | { card: CardView; view: BenchView }) {
  const { expectedMargin, repairProbability } = card.outlook;
  return (
    <p className="outlook">
      {sayWith`From here: repaired in ${<b className="figure">{say`${Math.round(repairProbability * 100)} of 100`}</b>} such jobs, worth ${<b className="figure">{money(expectedMargin, view.currency)}</b>} on the average.`}
    </p>
  );
}

function PracticeAnswer({ open, card, hands, waiting }: CardProps) {
  const [problem, setProblem] = useState<string | null>(null);
  const [asking, setAsking] = useState(false);
  if (open.job === null || open.job === "loading" || open.job.practice === null) return null;
  if (card.action.do === "close") return null;
  const ask = () => {
    setAsking(true);
    open.practice(card.action).then(
      (outcome: Outcome) => hands.done(card.action, outcome),
      (error: Error) => {
        setAsking(false);
        setProblem(error.message);
      },
    );
  };
  return (
    <div className="practice-answer">
      <button type="button" data-key="p" onClick={ask} disabled={waiting || asking}>
        {asking ? say`The practice board is answering…` : say`Let the practice board answer`}
      </button>
      {problem !== null && <p role="alert">{say(problem)}</p>}
    </div>
  );
}
