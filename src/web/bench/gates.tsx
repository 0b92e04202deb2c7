/** The two gates on a card: what could still waste the money, and what power would break. */
import type { CardView } from "../../wire/bench-view.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { minutes, money, percent } from "../words.ts";

interface StakeProps {
  readonly stake: NonNullable<CardView["atStake"]>;
  readonly currency: string;
}

export function AtStake({ stake, currency }: StakeProps) {
  return (
    <section className="gate" aria-label="What could still waste this money">
      <h3>
        Before you spend <span className="figure">{money(stake.money, currency)}</span>
      </h3>
      {stake.risks.length === 0 && <p>Nothing known would still waste it.</p>}
      <ul>
        {stake.risks.map((risk) => (
          <li key={risk.what}>
            <span>{risk.what}</span>
            <Likelihood value={risk.probability} tone="bad" />
            <span className="gate-note">
              {risk.minutesToRuleOut === null
                ? "No check on this bench rules it out."
                : `Ruled out in ${minutes(risk.minutesToRuleOut)}.`}
            </span>
          </li>
        ))}
      </ul>
      {stake.priceNote !== null && <p className="gate-note">{stake.priceNote}</p>}
    </section>
  );
}

const BREAKS_SHOWN = 4;

export function PowerForecast({ forecast }: { readonly forecast: NonNullable<CardView["forecast"]> }) {
  return (
    <section className="gate" aria-label="What power would break">
      <h3>
        Power would break something in <span className="figure">{percent(forecast.anyBreaks)}</span> of such
        boards
      </h3>
      <ul>
        {forecast.breaks.slice(0, BREAKS_SHOWN).map((part) => (
          <li key={part.part}>
            <span>
              <b>{part.part}</b>, because {part.because}
            </span>
            <Likelihood value={part.probability} tone="bad" />
          </li>
        ))}
      </ul>
      {forecast.breaks.length > BREAKS_SHOWN && (
        <p className="gate-note">And {forecast.breaks.length - BREAKS_SHOWN} more, each less likely.</p>
      )}
      <p>{forecast.advice}</p>
    </section>
  );
}
