/** The quote: what the customer is offered, and the answer, which goes into the log. */
import { useState } from "react";
import type { BenchView, MoneyView, OfferView } from "../../wire/bench-view.ts";
import { putAside } from "../bench/put-aside.tsx";
import { happened } from "../job-event.ts";
import { go } from "../route.ts";
import { OpenedJob } from "../shell/opened-job.tsx";
import type { OpenJob } from "../use-job.ts";
import { amountTyped } from "./amount-typed.ts";
import { PaperFrame } from "./paper-frame.tsx";

export function QuoteScreen({ id }: { readonly id: string }) {
  return <OpenedJob id={id}>{(open, view) => <QuotePaper open={open} view={view} />}</OpenedJob>;
}

const OFFER_WORDS: Readonly<Record<string, string>> = {
  repair: "Repair this board",
  replace: "A new board",
  decline: "No repair",
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
    <PaperFrame id={open.id} title="Quote">
      <p className="aside">{view.boardName}</p>
      <div className="keys not-printed">
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/quote`)}>
          As a paper for the customer
        </button>
        <button type="button" onClick={() => go(`#/job/${open.id}/papers/message`)}>
          As a short message
        </button>
      </div>
      <p>{money.quote.reason}</p>
      <fieldset>
        <legend>What is offered</legend>
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
                {OFFER_WORDS[one.offer]}
                {one.offer === money.quote.advised && ", advised"}
              </span>
              {one.price !== null && (
                <span className="figure">
                  {one.price} {money.currency}
                </span>
              )}
              <span className="key-hint">{one.why}</span>
            </label>
          ))}
        </div>
      </fieldset>
      <p className="aside">{percent > 0 ? `All sums before tax of ${percent} %.` : "All sums before tax."}</p>
      <Answered money={money} />
      {view.waiting?.for === "answer" && <p role="status">Put aside until the customer has answered.</p>}
      {offer !== undefined && view.verdict === null && (
        <AnswerForm key={chosen} offer={offer} open={open} currency={money.currency} powered={view.powered} />
      )}
    </PaperFrame>
  );
}

function Answered({ money: { quote, currency } }: { readonly money: MoneyView }) {
  const { answered } = quote;
  if (answered === null) return null;
  const sum = answered.price === null ? "" : ` at ${answered.price} ${currency}`;
  const most = answered.cap === null ? "" : `, not above ${answered.cap} ${currency} without asking again`;
  return (
    <p className="answered" role="status">
      {OFFER_WORDS[answered.offer]}
      {sum}
      {most}: <strong>{answered.answer}</strong>.{" "}
      {answered.answer === "accepted" && answered.offer === "repair"
        ? "The bench counts with this price from now on."
        : "Close the job from the bench."}
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
      ? "Type an amount, such as 140 or 139.50."
      : repairs && asked !== null && most !== null && most < asked
        ? "The cap is below the price: it is what the price may rise to."
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
        Price, {currency}
        <input
          inputMode="decimal"
          autoComplete="off"
          value={price}
          onChange={(event) => setPrice(event.target.value)}
        />
      </label>
      {repairs && (
        <label className="entry">
          Not above this without asking again, {currency}
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
          Customer accepts
        </button>
        <button type="button" disabled={problem !== null} onClick={() => answer("refused")}>
          Customer refuses
        </button>
        <button
          type="button"
          disabled={problem !== null || powered}
          onClick={() => open.record([putAside("answer", asked === null ? "" : `${asked} ${currency}`)])}
        >
          They will say: put it aside
        </button>
      </div>
    </form>
  );
}
