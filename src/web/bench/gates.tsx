/** The gate before money is spent: what could still waste it. */
import type { CardView } from "../../wire/bench-view.ts";
import { say, sayWith } from "../say.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { minutes, money } from "../words.ts";

interface StakeProps {
  readonly stake: NonNullable<CardView["atStake"]>;
  readonly currency: string;
}

export function AtStake({ stake, currency }: StakeProps) {
  return (
    <section className="gate" aria-label={say`What could still waste this money`}>
      <h3>{sayWith`Before you spend ${<span className="figure">{money(stake.money, currency)}</span>}`}</h3>
      {stake.risks.length === 0 && <p>{say`Nothing known would still waste it.`}</p>}
      <ul>
        {stake.risks.map((risk) => (
          <li key={risk.what}>
            <span>{say(risk.what)}</span>
            <Likelihood value={risk.probability} tone="bad" />
            <span className="gate-note">
              {risk.minutesToRuleOut === null
                ? say`No check on this bench rules it out.`
                : say`Ruled out in ${minutes(risk.minutesToRuleOut)}.`}
            </span>
          </li>
        ))}
      </ul>
      {stake.priceNote !== null && <p className="gate-note">{say(stake.priceNote)}</p>}
    </section>
  );
}
