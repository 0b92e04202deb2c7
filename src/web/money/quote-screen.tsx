/** The quote: what the customer is offered, and the answer, which goes into the log. */
import { useState } from "react";
import { said } from "../../messages/said.ts";
import type { BenchView, MoneyView, OfferView } from "../../wire/bench-view.ts";
import { putAside } from "../bench/put-aside.tsx";
import { happened } from "../job-event.ts";
import { go } from "../route.ts";
import { figure, say, sayWith } from "../say.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import type { OpenJob } from "../use-job.ts";
import { amountTyped } from "./amount-typed.ts";
import { PaperFrame } from "./paper-frame.tsx";

export function QuoteScreen({ id }: { readonly id: string }) {
  return <OpenedJob id={id}>{(open, view) => <QuotePaper open={open} view={view} />}</OpenedJob>;
}

const OFFER_WORDS: Readonly<Record<string, string>> = {
  repair: said`Repair this board`,
  replace: said`A new board`,
  decline: said`No repair`,
};

const ANSWER_WORDS: Readonly<Record<string, string>> = {
  accepted: said`accepted`,
  refused: said`refused`,
};

interface PaperProps {
  readonly open: OpenJob;
  readonly view: BenchView;
}

function QuotePaper({ open, view }: PaperProps) {
  const { money } = view;
  const [chosen, setChosen] = useState<string>(money.quote.answered?.offer ?? money.quote.advised);
  const offer = money.quote.offers.find((one) => one.offer === chosen);
  const percent = money.bill.taxPercent;
  return (
    <PaperFrame id={open.id} title={say`Quote`}>
      <p className="aside">{say(view.boardName)}</p>
      <div className="keys not-printed">
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/quote`)}>
          {say`As a paper for the customer`}
        </button>
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/message`)}>
          {say`As a short message`}
        </button>
      </div>
      <p>{say(money.quote.reason)}</p>
      <fieldset>
        <legend>{say`What is offered`}</legend>
        <div className="offers">
          {money.quote.offers.map((one) => (
            <label className="choice" key={one.offer}>
              <input
                type="radio"
                name="offer"
                checked={one.offer === chosen}
                onChange={() => setChosen(one.offer)}
              />
              <span className="key-words">
                {one.offer === money.quote.advised
                  ? say`${offerWords(one.offer)}, advised`
                  : say(offerWords(one.offer))}
              </span>
              {one.price !== null && (
                <span className="figure">
                  {figure(one.price)} {money.currency}
                </span>
              )}
              <span className="key-hint">{say(one.why)}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p className="aside">
        {percent > 0 ? say`All sums before tax of ${percent} %.` : say`All sums before tax.`}
      </p>
      <Answered money={money} />
      {view.waiting?.for === "answer" && (
        <p role="status">{say`Put aside until the customer has answered.`}</p>
      )}
      {offer !== undefined && view.verdict === null && (
        <AnswerForm key={chosen} offer={offer} open={open} currency={money.currency} powered={view.powered} />
      )}
    </PaperFrame>
  );
}

const offerWords = (offer: string): string => OFFER_WORDS[offer] ?? offer;

function Answered({ money: { quote, currency } }: { readonly money: MoneyView }) {
  const { answered } = quote;
  if (answered === null) return null;
  const { price, cap } = answered;
  const offer = offerWords(answered.offer);
  const priced = price === null ? offer : said`${offer} at ${price} ${currency}`;
  const what = cap === null ? priced : said`${priced}, not above ${cap} ${currency} without asking again`;
  const answer = <strong>{say(ANSWER_WORDS[answered.answer] ?? answered.answer)}</strong>;
  return (
    <p className="answered" role="status">
      {answered.answer === "accepted" && answered.offer === "repair"
        ? sayWith`${say(what)}: ${answer}. The bench counts with this price from now on.`
        : sayWith`${say(what)}: ${answer}. Close the job from the bench.`}
    </p>
  );
}

interface FormProps {
  readonly offer: OfferView;
  readonly open: OpenJob;
  readonly currency: string;
  readonly powered: boolean;
}

function AnswerForm({ offer, open, currency, powered }: FormProps) {
  const [price, setPrice] = useState(offer.price ?? "");
  const [cap, setCap] = useState(offer.cap ?? "");
  const asked = amountTyped(price);
  const most = amountTyped(cap);
  const repairs = offer.offer === "repair";
  const problem =
    asked === "wrong" || most === "wrong"
      ? say`Type an amount, such as ${"140"} or ${"139.50"}.`
      : repairs && asked !== null && most !== null && most < asked
        ? say`The cap is below the price: it is what the price may rise to.`
        : null;
  const answer = (given: "accepted" | "refused") =>
    open.record([
      happened(
        { do: "quote", offer: offer.offer, answer: given },
        { ...(asked === null ? {} : { price: asked }), ...(repairs && most !== null ? { cap: most } : {}) },
      ),
    ]);
  return (
    <form className="quote-form not-printed" onSubmit={(event) => event.preventDefault()}>
      <label className="entry">
        {say`Price, ${currency}`}
        <input
          inputMode="decimal"
          autoComplete="off"
          value={price}
          onChange={(event) => setPrice(event.target.value)}
        />
      </label>
      {repairs && (
        <label className="entry">
          {say`Not above this without asking again, ${currency}`}
          <input
            inputMode="decimal"
            autoComplete="off"
            value={cap}
            onChange={(event) => setCap(event.target.value)}
          />
        </label>
      )}
      {problem !== null && (
        <p className="entry-problem" role="alert">
          {problem}
        </p>
      )}
      <div className="keys">
        <button
          type="button"
          className="primary"
          disabled={problem !== null}
          onClick={() => answer("accepted")}
        >
          {say`Customer accepts`}
        </button>
        <button type="button" disabled={problem !== null} onClick={() => answer("refused")}>
          {say`Customer refuses`}
        </button>
        <button
          type="button"
          disabled={problem !== null || powered}
          onClick={() => open.record([putAside("answer", asked === null ? "" : `${asked} ${currency}`)])}
        >
          {say`They will say: put it aside`}
        </button>
      </div>
    </form>
  );
}
