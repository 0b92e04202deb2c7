/** A replacement done: what was fitted, out of the drawer or bought, what it cost, and whether it was new or pulled. */
import { useEffect, useRef, useState } from "react";
import { latinDigits } from "../../units/typed-digits.ts";
import type { ActionView, CardView } from "../../wire/bench-view.ts";
import type { OfferAnswer } from "../../wire/fit-view.ts";
import { field, happened, type KeptEvent, type Outcome } from "../job-event.ts";
import { say } from "../say.ts";
import { AtHand } from "./at-hand.tsx";
import type { AnswerProps } from "./bench-props.ts";
import { IncomingCheck, Mounting } from "./incoming-check.tsx";
import type { PartFit } from "./use-part-fit.ts";

/** The stock's line, as the event names it: `with` and `used` stand beside it. */
function fromOf({ place, donor }: OfferAnswer): Outcome {
  return { ...(place === null ? {} : { place }), ...(donor === null ? {} : { donor }) };
}

/** Is it the very line that the proposal names? */
function isPlanned(action: ActionView, { name, used, place, donor }: OfferAnswer): boolean {
  const from = action.from as { readonly place?: string; readonly donor?: string } | undefined;
  if (from === undefined || action.with !== name || (action.used === true) !== used) return false;
  return (from.place ?? null) === place && (from.donor ?? null) === donor;
}

/** The readings of the part in the hand, as entries of the log. */
function readIncoming({ view }: PartFit, part: string): readonly KeptEvent[] {
  return (view?.reads ?? []).flatMap(({ mode, red, black, reading }) =>
    reading === null ? [] : [happened({ do: "incoming", part, mode, red, black }, { reading })],
  );
}

/** What is fitted, as far as it is chosen or typed. */
function useFitted(card: CardView, fit: PartFit) {
  const [chosen, setChosen] = useState<OfferAnswer | null>(null);
  const [name, setName] = useState(field(card.action, "with") ?? "");
  const [price, setPrice] = useState(
    field(card.action, "price") ?? (card.money > 0 ? String(card.money) : ""),
  );
  const [used, setUsed] = useState(card.action.used === true);
  const { type, typed, view } = fit;
  const marking = name.trim();
  useEffect(() => {
    // the check in the hand and the screw are those of what goes in
    if (view !== null && (typed.fitted ?? "") !== marking) type({ ...typed, fitted: marking });
  }, [marking, typed, type, view]);
  const touched = useRef(false);
  const planned = fit.view?.atHand.find((offer) => isPlanned(card.action, offer)) ?? null;
  useEffect(() => {
    // what the plan counts on lies ready; a tap on it puts it away again
    if (planned !== null && !touched.current) setChosen(planned);
  }, [planned]);
  const choose = (offer: OfferAnswer | null) => {
    touched.current = true;
    setChosen(offer);
    if (offer === null) return;
    setName(offer.name);
    setUsed(offer.used);
    setPrice(offer.price === null ? "" : String(offer.price));
  };
  const amount = Number(latinDigits(price).replace(",", "."));
  const wrong = price.trim() !== "" && !(Number.isFinite(amount) && amount >= 0);
  const outcome: Outcome = {
    ...(name.trim() === "" ? {} : { with: name.trim() }),
    ...(price.trim() === "" ? {} : { price: amount }),
    ...(used ? { used: true } : {}),
    ...(chosen === null ? {} : { from: fromOf(chosen) }),
  };
  return { chosen, name, price, used, wrong, outcome, choose, setName, setPrice, setUsed };
}

export function ReplaceForm({ card, view, hands, disabled, fit }: AnswerProps) {
  const fitted = useFitted(card, fit);
  const { chosen, used, wrong } = fitted;
  const illegible = fit.view?.reads.some(({ problem }) => problem !== null) ?? false;
  const done = () => {
    const before = readIncoming(fit, field(card.action, "part") ?? "");
    // they are in the log now; the next part has readings of its own
    if (before.length > 0) fit.type({ ...fit.typed, incoming: {} });
    hands.done({ do: card.action.do, part: card.action.part }, fitted.outcome, before);
  };
  return (
    <div className="replace">
      <AtHand
        offers={fit.view?.atHand ?? []}
        chosen={chosen}
        currency={view.currency}
        onChoose={fitted.choose}
      />
      <FittedFields fitted={fitted} currency={view.currency} />
      {chosen !== null && (
        <p role="status" className="aside">
          {say`Done takes one ${chosen.name} out of the drawer; undo puts it back.`}
        </p>
      )}
      {fit.view !== null && <IncomingCheck fit={fit} view={fit.view} used={used} />}
      {fit.view !== null && <Mounting view={fit.view} />}
      <button
        type="button"
        className="primary tall"
        data-key="d"
        disabled={disabled || wrong || illegible}
        onClick={done}
      >
        {say`Done`}
      </button>
    </div>
  );
}

interface FieldsProps {
  readonly fitted: ReturnType<typeof useFitted>;
  readonly currency: string;
}

function FittedFields({ fitted, currency }: FieldsProps) {
  const { chosen, name, price, used, wrong } = fitted;
  return (
    <div className="entry">
      <label htmlFor="fitted">{say`What is fitted, as it is marked`}</label>
      <input
        id="fitted"
        autoComplete="off"
        autoCapitalize="off"
        value={name}
        disabled={chosen !== null}
        onChange={(event) => fitted.setName(event.target.value)}
      />
      <label htmlFor="price">{say`Paid for it, ${currency}`}</label>
      <input
        id="price"
        inputMode="decimal"
        autoComplete="off"
        value={price}
        aria-invalid={wrong}
        onChange={(event) => fitted.setPrice(event.target.value)}
      />
      <label className="tick">
        <input
          type="checkbox"
          checked={used}
          disabled={chosen !== null}
          onChange={(event) => fitted.setUsed(event.target.checked)}
        />
        {say`Pulled from a donor board`}
      </label>
    </div>
  );
}
