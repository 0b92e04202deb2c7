/** The job's money beside the card: spent, still expected, the stop line, and what is left on giving up. */

import { said } from "../../messages/said.ts";
import type { MoneyView, ToGoView } from "../../wire/bench-view.ts";
import { go } from "../route.ts";
import { figure, say, sayWith } from "../say.ts";
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
          {say`Money`}{" "}
          <small>
            {toGo === null
              ? sayWith`${<Figure of={spent.total} />} ${currency} spent`
              : sayWith`${<Figure of={spent.total} />} ${currency} spent, ${<Figure of={toGo.money.mean} />} still expected`}
          </small>
        </span>
      </summary>
      <div className="money-body">
        <p className="money-advice">{say(money.advice)}</p>
        {money.askAgain !== null && (
          <p className="problem" role="status">
            {say(money.askAgain)}
          </p>
        )}
        {toGo !== null && <StopLine toGo={toGo} currency={currency} />}
        <section aria-label={say`Spent`}>
          <h3>{say`Spent`}</h3>
          <MoneyLines
            caption={say`What the job has taken`}
            lines={[
              { words: said`work, ${minutes(spent.minutes)}`, amount: spent.labour, estimated: false },
              ...spent.parts,
            ]}
            sums={[{ words: said`together, ${currency}`, amount: spent.total }]}
          />
        </section>
        {toGo !== null && <ToGo toGo={toGo} currency={currency} />}
        <GivenUp money={money} />
        <div className="keys">
          <button type="button" onClick={() => go(`#/job/${id}/quote`)}>
            {say`Quote`}
          </button>
          <button type="button" onClick={() => go(`#/job/${id}/papers/bill`)}>
            {say`Bill`}
          </button>
          <button type="button" onClick={() => go(`#/job/${id}/papers/label`)}>
            {say`Papers`}
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
  const words = say`Still expected ${toGo.money.mean} ${currency}, in eight of ten jobs ${toGo.money.low} to ${toGo.money.high}; giving up is better from ${toGo.stopLine} on.`;
  return (
    <figure className="stop-line" data-over={toGo.over}>
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={words}>
        <line className="stop-ground" x1="0" x2={WIDTH} y1="30" y2="30" />
        <rect className="stop-span" x={at(low)} width={Math.max(2, at(high) - at(low))} y="22" height="16" />
        <line className="stop-mean" x1={at(mean)} x2={at(mean)} y1="16" y2="44" />
        <line className="stop-mark" x1={at(stop)} x2={at(stop)} y1="4" y2="44" />
      </svg>
      <figcaption>
        {toGo.over
          ? sayWith`Past the stop line: ${<Figure of={toGo.money.mean} />} still expected, stop from ${<Figure of={toGo.stopLine} />} ${currency} on.`
          : sayWith`Before the stop line: ${<Figure of={toGo.money.mean} />} still expected, stop from ${<Figure of={toGo.stopLine} />} ${currency} on.`}
      </figcaption>
    </figure>
  );
}

function Figure({ of }: { readonly of: string }) {
  return <span className="figure">{figure(of)}</span>;
}

function ToGo({ toGo, currency }: { readonly toGo: ToGoView; readonly currency: string }) {
  const span = (low: string | number, high: string | number) => say`${low} to ${high}`;
  return (
    <section aria-label={say`Still expected`}>
      <h3>{say`Still expected, and in eight of ten such jobs`}</h3>
      <dl className="money-facts">
        <dt>{say`Minutes`}</dt>
        <dd className="figure">
          {figure(Math.round(toGo.minutes.mean))}{" "}
          <small>{span(Math.round(toGo.minutes.low), Math.round(toGo.minutes.high))}</small>
        </dd>
        <dt>{say`Parts, ${currency}`}</dt>
        <dd className="figure">
          {figure(toGo.parts.mean)} <small>{span(toGo.parts.low, toGo.parts.high)}</small>
        </dd>
        <dt>{say`All of it, the hour counted`}</dt>
        <dd className="figure">
          {figure(toGo.money.mean)} <small>{span(toGo.money.low, toGo.money.high)}</small>
        </dd>
        <dt>{say`Ends repaired`}</dt>
        <dd className="figure">{percent(toGo.repairProbability)}</dd>
        <dt>{say`Margin of going on`}</dt>
        <dd className="figure">{figure(toGo.margin)}</dd>
        <dt>{say`Stop line`}</dt>
        <dd className="figure">{figure(toGo.stopLine)}</dd>
        {toGo.stopLineWithRemains !== null && (
          <>
            <dt>{say`Stop line, if the board stays here`}</dt>
            <dd className="figure">{figure(toGo.stopLineWithRemains)}</dd>
          </>
        )}
      </dl>
    </section>
  );
}

function GivenUp({ money: { givenUp } }: { readonly money: MoneyView }) {
  return (
    <section aria-label={say`Given up now`}>
      <h3>{say`Given up now`}</h3>
      <MoneyLines
        caption={say`What is left on giving up`}
        lines={givenUp.rows.map(({ what, why, amount, counted }) => ({
          words: what,
          aside: counted ? why : said`not counted: ${why}`,
          amount,
          estimated: false,
        }))}
        sums={[
          { words: said`together`, amount: givenUp.total },
          { words: said`less what was spent`, amount: givenUp.result },
        ]}
      />
    </section>
  );
}
