/** Doing something else than proposed: another check in one tap, or a reason in one tap. */
import { useState } from "react";
import { say } from "../say.ts";
import { listed, minutes, money } from "../words.ts";
import type { CardProps } from "./bench-props.ts";
import { overrule, overruledBy } from "./overrule.ts";
import { PutAside } from "./put-aside.tsx";
import { Reasons } from "./reasons.tsx";

type Props = Omit<CardProps, "open" | "desk" | "waiting" | "switchedOn">;

export function SomethingElse({ card, view, agenda, hands }: Props) {
  const [open, setOpen] = useState(false);
  if (agenda.inRow !== null || agenda.chosen !== null) return null;
  const of = overruledBy(view, card);
  return (
    <section className="something-else">
      <button type="button" data-key="s" aria-expanded={open} onClick={() => setOpen(!open)}>
        {say`Something else`}
      </button>
      {open && (
        <div className="something-else-body">
          <h3>{say`Instead`}</h3>
          <ul className="others">
            {card.others.map((other) => (
              <li key={other.headline}>
                <button type="button" onClick={() => hands.choose(other.action)}>
                  <span className="other-headline">{say(other.headline)}</span>
                  <span className="other-why">{say(other.why)}</span>
                  <span className="figure other-cost">
                    {listed([
                      minutes(other.minutes),
                      ...(other.money > 0 ? [money(other.money, view.currency)] : []),
                    ])}
                  </span>
                </button>
              </li>
            ))}
          </ul>
          <h3>{say`Not this one, because`}</h3>
          <Reasons of={of} onReason={(why) => hands.add([overrule(of, why)])} />
          <PutAside view={view} hands={hands} />
        </div>
      )}
    </section>
  );
}
