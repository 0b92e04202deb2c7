/** The gate before power: what each feed would break and lose, which checks would see it beforehand, and where the ladder stands. */
import { said } from "../../messages/said.ts";
import type { CardView } from "../../wire/bench-view.ts";
import { say, sayWith } from "../say.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { minutes, money, percent } from "../words.ts";

type Forecast = NonNullable<CardView["forecast"]>;

interface Props {
  readonly forecast: Forecast;
  readonly currency: string;
}

const BREAKS_SHOWN = 4;

export function PowerForecast({ forecast, currency }: Props) {
  const { spent } = forecast;
  return (
    <section className="gate" aria-label={say`What power would break`}>
      <h3>
        {sayWith`Power would break something in ${<span className="figure">{percent(forecast.anyBreaks)}</span>} of such boards`}
      </h3>
      <Feeds forecast={forecast} currency={currency} />
      {spent !== null && (
        <p className="gate-note">
          {say`${money(spent.money, currency)} spent so far; this power-up shows it lost in ${percent(spent.probability)}.`}
        </p>
      )}
      <Lowers forecast={forecast} />
      <p>{say(forecast.advice)}</p>
      {forecast.ladder.length === 0 ? (
        <GoOn forecast={forecast} />
      ) : (
        <details>
          <summary>{say`When to go on, what would break, the ladder`}</summary>
          <GoOn forecast={forecast} />
          <Breaks forecast={forecast} />
          <Ladder forecast={forecast} />
        </details>
      )}
    </section>
  );
}

function GoOn({ forecast: { rung } }: { readonly forecast: Forecast }) {
  return (
    <p>
      {sayWith`${<b>{say`Go on when`}</b>} ${say(rung.goOn)}. ${<b>{say`Stop when`}</b>} ${say(rung.stop)}.`}
    </p>
  );
}

function Feeds({ forecast, currency }: Props) {
  return (
    <table className="feeds">
      <thead>
        <tr>
          <th scope="col">{say`Fed by`}</th>
          <th scope="col">{say`breaks`}</th>
          <th scope="col">{say`loses`}</th>
        </tr>
      </thead>
      <tbody>
        {forecast.feeds.map(({ what, anyBreaks, lossMoney, chosen }) => (
          <tr key={what} data-chosen={chosen}>
            <th scope="row">
              {say(what)}
              {chosen && <span className="for-readers"> {say`(this step)`}</span>}
            </th>
            <td className="figure">{percent(anyBreaks)}</td>
            <td className="figure">{money(lossMoney, currency)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Lowers({ forecast: { lowers } }: { readonly forecast: Forecast }) {
  if (lowers.length === 0) return null;
  return (
    <>
      <h4>{say`Seen beforehand by`}</h4>
      <ul className="lowers">
        {lowers.map(({ what, minutes: taken, share }) => (
          <li key={what}>
            <span>{say(what)}</span>
            <span className="figure">{say`${percent(share)} of it, ${minutes(taken)}`}</span>
          </li>
        ))}
      </ul>
    </>
  );
}

function Breaks({ forecast: { breaks, rung } }: { readonly forecast: Forecast }) {
  return (
    <>
      <p>{say`This step proves ${rung.proves}.`}</p>
      <ul>
        {breaks.slice(0, BREAKS_SHOWN).map((part) => (
          <li key={part.part}>
            <span>{sayWith`${<b>{part.part}</b>}, because ${say(part.because)}`}</span>
            <Likelihood value={part.probability} tone="bad" />
          </li>
        ))}
      </ul>
      {breaks.length > BREAKS_SHOWN && (
        <p className="gate-note">{say`And ${breaks.length - BREAKS_SHOWN} more, each less likely.`}</p>
      )}
    </>
  );
}

const STATES: Readonly<Record<Forecast["ladder"][number]["state"], string>> = {
  done: said`done`,
  now: said`this step`,
  open: said`left out`,
  shut: said`not yet`,
};

function Ladder({ forecast: { ladder } }: { readonly forecast: Forecast }) {
  return (
    <ol className="ladder">
      {ladder.map(({ name, state, note }) => (
        <li key={name} data-state={state}>
          <span>{say(name)}</span>
          <span className="figure">{say(STATES[state])}</span>
          {note !== null && <span className="gate-note">{say(note)}</span>}
        </li>
      ))}
    </ol>
  );
}
