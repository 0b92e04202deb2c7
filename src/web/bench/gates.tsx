/** The gate before money is spent: what could still waste it. */
import type { CardView } from "../../wire/bench-view.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { minutes, money } from "../words.ts";

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
