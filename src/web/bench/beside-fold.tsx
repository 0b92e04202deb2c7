/** The switch for a good board beside this one, and what both have read. */
import type { BenchView } from "../../wire/bench-view.ts";
import type { Beside } from "./use-beside.ts";

interface Props {
  readonly beside: Beside;
  readonly view: BenchView;
}

export function BesideFold({ beside, view }: Props) {
  const { compared } = view;
  const apart = compared.filter(({ differs }) => differs).length;
  return (
    <details className="money-fold">
      <summary>
        <span>
          A good one beside it{" "}
          <small>
            {compared.length === 0
              ? beside.on
                ? "here: each reading is taken on both"
                : "none"
              : `${compared.length} read on both, ${apart === 0 ? "all alike" : `${apart} not alike`}`}
          </small>
        </span>
      </summary>
      <div className="money-body">
        <label className="tick">
          <input
            type="checkbox"
            checked={beside.on}
            onChange={(event) => beside.turn(event.target.checked)}
          />
          A good board of this number is here: ask for each reading on it too
        </label>
        <p className="aside">
          {view.whole
            ? "What it reads counts at once, and in the next jobs on such a board."
            : "Something is lifted, clipped on or off this board: until it is whole again the two are not compared."}
        </p>
        {compared.length > 0 && (
          <ul className="compared" aria-label="Read on both">
            {[...compared].reverse().map((both) => (
              <ComparedLine key={`${both.check} ${both.here} ${both.good}`} both={both} />
            ))}
          </ul>
        )}
      </div>
    </details>
  );
}

/** The last of them, above the next card. */
export function LastCompared({ beside, view }: Props) {
  const last = view.compared.at(-1);
  if (!beside.on || last === undefined) return null;
  return (
    <ul className="compared" aria-label="Last read on both" aria-live="polite">
      <ComparedLine both={last} />
    </ul>
  );
}

function ComparedLine({ both }: { readonly both: BenchView["compared"][number] }) {
  const { check, here, good, words, differs } = both;
  return (
    <li data-differs={differs}>
      <span className="compared-check">{check}</span>
      <span>
        here <b className="figure">{here}</b>, the good one <b className="figure">{good}</b>:{" "}
        <strong>{words}</strong>
      </span>
    </li>
  );
}
