/** Which parts are believed faulty, with the readings that speak for and against each, and the whole explanations. */
import { useEffect, useState } from "react";
import type { BecauseView, BenchView, SuspectView } from "../../wire/bench-view.ts";
import { say, sayWith } from "../say.ts";
import { Likelihood } from "../shell/likelihood.tsx";
import { listed, percent } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";

const SHORT_LIST = 8;

export function SuspectsPanel({ view, open }: PanelProps) {
  const [all, setAll] = useState(false);
  const shown = all ? view.suspects : view.suspects.slice(0, SHORT_LIST);
  return (
    <>
      <ol className="suspects">
        {shown.map((suspect) => (
          <Suspect key={suspect.part} suspect={suspect} why={open.why} />
        ))}
      </ol>
      {view.suspects.length > SHORT_LIST && (
        <button type="button" className="small" onClick={() => setAll(!all)}>
          {all ? say`Only the first few` : say`All ${view.suspects.length} parts`}
        </button>
      )}
      <Explanations view={view} />
    </>
  );
}

interface SuspectProps {
  readonly suspect: SuspectView;
  why(part: string): Promise<BecauseView>;
}

function Suspect({ suspect, why }: SuspectProps) {
  const [opened, setOpened] = useState(false);
  const first = suspect.modes[0];
  return (
    <li>
      <details onToggle={(event) => setOpened(event.currentTarget.open)}>
        <summary>
          <span className="ref">{suspect.part}</span>
          <span className="suspect-what">
            {say(suspect.what)}
            {first !== undefined && <span className="suspect-mode"> {say(first.words)}</span>}
          </span>
          <Likelihood value={suspect.probability} tone="bad" />
        </summary>
        {opened && <Reasons suspect={suspect} why={why} />}
      </details>
    </li>
  );
}

/** Asked of the engine while it stands open, and again after every entry. */
function Reasons({ suspect, why }: SuspectProps) {
  const [because, setBecause] = useState<BecauseView | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const { part } = suspect;
  useEffect(() => {
    let waiting = true;
    why(part).then(
      (found) => waiting && setBecause(found),
      (error: Error) => waiting && setProblem(error.message),
    );
    return () => {
      waiting = false;
    };
  }, [part, why]);
  return (
    <div className="reasons-body">
      {problem !== null && <p role="alert">{say(problem)}</p>}
      {because !== null && (
        <>
          {because.untested && (
            <p className="untested">{say`No reading so far could have shown a fault here.`}</p>
          )}
          {because.maskedBy.length > 0 && (
            <p>{say`Hidden behind ${listed(because.maskedBy.map((one) => say(one)))}.`}</p>
          )}
          <ReasonList title={say`Speaks for it`} reasons={because.speaksFor} />
          <ReasonList title={say`Speaks against it`} reasons={because.speaksAgainst} />
        </>
      )}
      <ul className="modes">
        {suspect.modes.map((mode) => (
          <li key={mode.fault}>
            <span>{say(mode.words)}</span>
            <Likelihood value={mode.probability} />
          </li>
        ))}
      </ul>
    </div>
  );
}

function ReasonList({ title, reasons }: { readonly title: string; readonly reasons: readonly string[] }) {
  if (reasons.length === 0) return null;
  return (
    <>
      <h3 className="reason-title">{title}</h3>
      <ul className="plain">
        {reasons.map((reason) => (
          <li key={reason}>{say(reason)}</li>
        ))}
      </ul>
    </>
  );
}

const EXPLANATIONS_SHOWN = 6;

function Explanations({ view }: { readonly view: BenchView }) {
  return (
    <section className="explanations" aria-label={say`Explanations`}>
      <h3>{say`What would explain every reading`}</h3>
      <ol>
        {view.explanations.slice(0, EXPLANATIONS_SHOWN).map((explanation) => (
          <li key={explanation.faults.join(" ")}>
            <span>{say(explanation.words)}</span>
            <Likelihood value={explanation.probability} />
          </li>
        ))}
      </ol>
      <p className="aside">
        {sayWith`Not looked into: ${<span className="figure">{percent(view.remainder)}</span>}. Nothing at all is wrong, what has not been looked for included: ${<span className="figure">{percent(view.healthyProbability)}</span>}.`}
      </p>
    </section>
  );
}
