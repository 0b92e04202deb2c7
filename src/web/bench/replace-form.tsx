/** A replacement done: what it cost, and whether the part was new or pulled from a donor. */
import { useState } from "react";
import { field } from "../job-event.ts";
import type { AnswerProps } from "./bench-props.ts";

export function ReplaceForm({ card, view, hands, disabled }: AnswerProps) {
  const [price, setPrice] = useState(
    field(card.action, "price") ?? (card.money > 0 ? String(card.money) : ""),
  );
  const [used, setUsed] = useState(card.action.used === true);
  const amount = Number(price.replace(",", "."));
  const wrong = price.trim() !== "" && !(Number.isFinite(amount) && amount >= 0);
  const done = () =>
    hands.done(card.action, {
      ...(price.trim() === "" ? {} : { price: amount }),
      ...(used ? { used: true } : {}),
    });
  return (
    <div className="replace">
      <div className="entry">
        <label htmlFor="price">Paid for it, {view.currency}</label>
        <input
          id="price"
          inputMode="decimal"
          autoComplete="off"
          value={price}
          aria-invalid={wrong}
          onChange={(event) => setPrice(event.target.value)}
        />
        <label className="tick">
          <input type="checkbox" checked={used} onChange={(event) => setUsed(event.target.checked)} />
          Pulled from a donor board
        </label>
      </div>
      <button type="button" className="primary tall" data-key="d" disabled={disabled || wrong} onClick={done}>
        Done
      </button>
    </div>
  );
}
