/** The switch for a good board beside this one, and what both have read. */
import { isSaid } from "../../messages/said.ts";
import type { BenchView } from "../../wire/bench-view.ts";
import { forms, say, sayWith } from "../say.ts";
import type { Beside } from "./use-beside.ts";

interface Props {
  readonly beside: Beside;
  readonly view: BenchView;
}

export function BesideFold({ beside, view }: Props) {
  const { compared } = view;
  return (
    <details className="money-fold">
      <summary>
        <span>
          {say`A good one beside it`} <small>{comparedWords(compared, beside.on)}</small>
        </span>
      </summary>
      <div className="money-body">
        <label className="tick">
          <input
            type="checkbox"
            checked={beside.on}
            onChange={(event) => beside.turn(event.target.checked)}
          />
          {say`A good board of this number is here: ask for each reading on it too`}
        </label>
        <p className="aside">
          {view.whole
            ? say`What it reads counts at once, and in the next jobs on such a board.`
            : say`Something is lifted, clipped on or off this board: until it is whole again the two are not compared.`}
        </p>
        {compared.length > 0 && (
          <ul className="compared" aria-label={say`Read on both`}>
            {[...compared].reverse().map((both) => (
              <ComparedLine key={`${both.check} ${both.here} ${both.good}`} both={both} />
            ))}
          </ul>
        )}
      </div>
    </details>
  );
}

function comparedWords(compared: BenchView["compared"], on: boolean): string {
  if (compared.length === 0) return on ? say`here: each reading is taken on both` : say`none`;
  const apart = compared.filter(({ differs }) => differs).length;
  return apart === 0
    ? say`${compared.length} read on both, all alike`
    : say`${compared.length} read on both, ${apart} not alike`;
}

/** What a meter showed, or a word that the engine says for it. */
function figure(reading: string): string {
  return isSaid(reading) ? say(reading) : forms().shown(reading);
}

/** The last of them, above the next card. */
export function LastCompared({ beside, view }: Props) {
  const last = view.compared.at(-1);
  if (!beside.on || last === undefined) return null;
  return (
    <ul className="compared" aria-label={say`Last read on both`} aria-live="polite">
      <ComparedLine both={last} />
    </ul>
  );
}

function ComparedLine({ both }: { readonly both: BenchView["compared"][number] }) {
  const { check, here, good, words, differs } = both;
  return (
    <li data-differs={differs}>
      <span className="compared-check">{say(check)}</span>
      <span>
        {sayWith`here ${<b className="figure">{figure(here)}</b>}, the good one ${<b className="figure">{figure(good)}</b>}: ${<strong>{say(words)}</strong>}`}
      </span>
    </li>
  );
}
