/** The job's money beside the card: spent, still expected, the stop line, and what is left on giving up. */
import type { MoneyView, ToGoView } from "../../wire/bench-view.ts";
import { go } from "../route.ts";
import { minutes, percent } from "../words.ts";
import { MoneyLines } from "./money-lines.tsx";

interface Props {
  readonly id: string;
  readonly money: MoneyView;
}

export function MoneyFold({ id, money }: Props) {
  const { currency, spent, toGo } = money;
  return (
    <details className="money-fold">
      <summary>
        <span>
          Money{" "}
          <small>
            <span className="figure">{spent.total}</span> {currency} spent
            {toGo !== null && (
              <>
                , <span className="figure">{toGo.money.mean}</span> still expected
              </>
            )}
          </small>
        </span>
      </summary>
      <div className="money-body">
        <p className="money-advice">{money.advice}</p>
        {money.askAgain !== null && (
          <p className="problem" role="status">
            {money.askAgain}
          </p>
        )}
        {toGo !== null && <StopLine toGo={toGo} currency={currency} />}
        <section aria-label="Spent">
          <h3>Spent</h3>
          <MoneyLines
            caption="What the job has taken"
            lines={[
              { words: `work, ${minutes(spent.minutes)}`, amount: spent.labour, estimated: false },
              ...spent.parts,
            ]}
            sums={[{ words: `together, ${currency}`, amount: spent.total }]}
          />
        </section>
        {toGo !== null && <ToGo toGo={toGo} currency={currency} />}
        <GivenUp money={money} />
        <div className="keys">
          <button type="button" onClick={() => go(`#/job/${id}/quote`)}>
            Quote
          </button>
          <button type="button" onClick={() => go(`#/job/${id}/papers/bill`)}>
            Bill
          </button>
          <button type="button" onClick={() => go(`#/job/${id}/papers/label`)}>
            Papers
          </button>
        </div>
      </div>
    </details>
  );
}

/** How wide the drawing is, in its own units. */
const WIDTH = 320;
const HEIGHT = 46;

/** What is still expected against the stop line, drawn; the same in words for who cannot see it. */
function StopLine({ toGo, currency }: { readonly toGo: ToGoView; readonly currency: string }) {
  const [mean, low, high, stop] = [toGo.money.mean, toGo.money.low, toGo.money.high, toGo.stopLine].map(
    Number,
  );
  const most = Math.max(mean ?? 0, high ?? 0, stop ?? 0, 1e-9) * 1.08;
  const at = (money = 0) => (WIDTH * money) / most;
  const words = `Still expected ${toGo.money.mean} ${currency}, in eight of ten jobs ${toGo.money.low} to ${toGo.money.high}; giving up is better from ${toGo.stopLine} on.`;
  return (
    <figure className="stop-line" data-over={toGo.over}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
        <line className="stop-ground" x1="0" x2={WIDTH} y1="30" y2="30" />
        <rect className="stop-span" x={at(low)} width={Math.max(2, at(high) - at(low))} y="22" height="16" />
        <line className="stop-mean" x1={at(mean)} x2={at(mean)} y1="16" y2="44" />
        <line className="stop-mark" x1={at(stop)} x2={at(stop)} y1="4" y2="44" />
      </svg>
      <figcaption>
        {toGo.over ? "Past the stop line" : "Before the stop line"}:{" "}
        <span className="figure">{toGo.money.mean}</span> still expected, stop from{" "}
        <span className="figure">{toGo.stopLine}</span> {currency} on.
      </figcaption>
    </figure>
  );
}

function ToGo({ toGo, currency }: { readonly toGo: ToGoView; readonly currency: string }) {
  const span = (low: string, high: string) => `${low} to ${high}`;
  return (
    <section aria-label="Still expected">
      <h3>Still expected, and in eight of ten such jobs</h3>
      <dl className="money-facts">
        <dt>Minutes</dt>
        <dd className="figure">
          {Math.round(toGo.minutes.mean)}{" "}
          <small>
            {Math.round(toGo.minutes.low)} to {Math.round(toGo.minutes.high)}
          </small>
        </dd>
        <dt>Parts, {currency}</dt>
        <dd className="figure">
          {toGo.parts.mean} <small>{span(toGo.parts.low, toGo.parts.high)}</small>
        </dd>
        <dt>All of it, the hour counted</dt>
        <dd className="figure">
          {toGo.money.mean} <small>{span(toGo.money.low, toGo.money.high)}</small>
        </dd>
        <dt>Ends repaired</dt>
        <dd className="figure">{percent(toGo.repairProbability)}</dd>
        <dt>Margin of going on</dt>
        <dd className="figure">{toGo.margin}</dd>
        <dt>Stop line</dt>
        <dd className="figure">{toGo.stopLine}</dd>
        {toGo.stopLineWithRemains !== null && (
          <>
            <dt>Stop line, what remains of the board counted</dt>
            <dd className="figure">{toGo.stopLineWithRemains}</dd>
          </>
        )}
      </dl>
    </section>
  );
}

function GivenUp({ money: { givenUp } }: { readonly money: MoneyView }) {
  return (
    <section aria-label="Given up now">
      <h3>Given up now</h3>
      <MoneyLines
        caption="What is left on giving up"
        lines={givenUp.rows.map(({ what, why, amount, counted }) => ({
          words: what,
          aside: counted ? why : `not counted: ${why}`,
          amount,
          estimated: false,
        }))}
        sums={[
          { words: "together", amount: givenUp.total },
          { words: "less what was spent", amount: givenUp.result },
        ]}
      />
    </section>
  );
}
