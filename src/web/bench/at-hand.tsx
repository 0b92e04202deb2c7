/** What of the shop's own will do here, best first: a tap chooses the one that is fitted. */
import type { OfferAnswer } from "../../wire/fit-view.ts";
import { say } from "../say.ts";
import { money } from "../words.ts";
import { OpenPoints } from "./open-points.tsx";

interface AtHandProps {
  readonly offers: readonly OfferAnswer[];
  readonly chosen: OfferAnswer | null;
  readonly currency: string;
  onChoose(offer: OfferAnswer | null): void;
}

function offerKey({ name, place, used, donor }: OfferAnswer): string {
  return JSON.stringify([name, place, used, donor]);
}

export function AtHand({ offers, chosen, currency, onChoose }: AtHandProps) {
  if (offers.length === 0) return null;
  return (
    <section className="at-hand" aria-label={say`In the drawer`}>
      <h3>{say`In the drawer for this place`}</h3>
      <ul>
        {offers.map((offer) => {
          const key = offerKey(offer);
          const isChosen = chosen !== null && offerKey(chosen) === key;
          return (
            <li key={key}>
              <button type="button" aria-pressed={isChosen} onClick={() => onChoose(isChosen ? null : offer)}>
                <span className="ref">{offer.name}</span>
                <span className="figure">{offer.price === null ? "" : money(offer.price, currency)}</span>
                <span className="at-hand-where">{whereWords(offer)}</span>
              </button>
              <p>
                {say`${offer.fits}.`} <OpenPoints findings={offer.findings} />
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function whereWords({ count: known, place, used, donor }: OfferAnswer): string {
  const count = known ?? 0;
  if (place !== null) return used ? say`${count} in all, ${place}, pulled` : say`${count} in all, ${place}`;
  return donor === null ? say`${count} in all, no place noted` : say`${count} in all, still on ${donor}`;
}
