/** What may come out of the check, how likely each is, and what it would mean. */
import type { CardView } from "../../wire/bench-view.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { range } from "../words.ts";

export function Expectations({ card }: { readonly card: CardView }) {
  if (card.expect.length === 0) return null;
  return (
    <section className="expectations" aria-label="What it would mean">
      <h3>What it would mean</h3>
      <ul>
        {card.expect.map((outcome) => {
          const span = range(outcome.low, outcome.high, outcome.unit);
          return (
            <li key={`${outcome.if} ${outcome.means}`}>
              <span className="outcome-if">{outcome.if}</span>
              <Likelihood value={outcome.probability} />
              <span className="outcome-means">
                {outcome.means}
                {span !== null && span !== outcome.if && (
                  <span className="figure outcome-span"> ({span})</span>
                )}
              </span>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
