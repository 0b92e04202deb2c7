/** What may come out of the check, how likely each is, and what it would mean. */
import { saidCount } from "../../messages/said.ts";
import type { CardView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { range, sightWords } from "../words.ts";

/** Outcomes rarer than this are folded away: a list of a dozen is not read at the bench. */
const RARE = 0.01;

export function Expectations({ card }: { readonly card: CardView }) {
  if (card.expect.length === 0) return null;
  const rare = card.expect.filter(({ probability }) => probability < RARE);
  const folded = rare.length > 1 ? rare : [];
  return (
    <section className="expectations" aria-label={say`What it would mean`}>
      <h3>{say`What it would mean`}</h3>
      <ul>
        {card.expect
          .filter((outcome) => !folded.includes(outcome))
          .map((outcome) => (
            <OutcomeLine key={`${outcome.if} ${outcome.means}`} outcome={outcome} />
          ))}
      </ul>
      {folded.length > 0 && (
        <details>
          <summary>{say(saidCount(folded.length, "{0} rarer outcome", "{0} rarer outcomes"))}</summary>
          <ul>
            {folded.map((outcome) => (
              <OutcomeLine key={`${outcome.if} ${outcome.means}`} outcome={outcome} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function OutcomeLine({ outcome }: { readonly outcome: CardView["expect"][number] }) {
  const shows = sightWords(outcome.if);
  const span = range(outcome.low, outcome.high, outcome.unit);
  return (
    <li>
      <span className="outcome-if">{shows}</span>
      <Likelihood value={outcome.probability} />
      <span className="outcome-means">
        {say(outcome.means)}
        {span !== null && span !== shows && <span className="figure outcome-span"> ({span})</span>}
      </span>
    </li>
  );
}
