/** The stages of the board from mains to motor, with what the readings have said of each: by words, by pattern, and by colour. */
import { useEffect, useState } from "react";
import { said, saidCount } from "../../messages/said.ts";
import type { StageState, StageView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";
import { percent } from "../words.ts";

export function StageMap({ ask }: { readonly ask: OpenJob["stages"] }) {
  const [stages, setStages] = useState<readonly StageView[]>([]);
  const [problem, setProblem] = useState<string | null>(null);
  useEffect(() => {
    let wanted = true;
    ask().then(
      (found) => {
        if (!wanted) return;
        setStages(found);
        setProblem(null);
      },
      (error: Error) => wanted && setProblem(error.message),
    );
    return () => {
      wanted = false;
    };
  }, [ask]);
  return (
    <section className="stage-map" aria-labelledby="stage-map-title">
      <h3 id="stage-map-title">{say`From the mains to the motor`}</h3>
      {problem !== null && <p role="alert">{say(problem)}</p>}
      <ol className="stages">
        {placed(stages).map(({ stage, column, row, link }) => (
          <li
            key={stage.stage}
            data-state={stage.state}
            data-link={link}
            style={{ gridColumn: column, gridRow: row }}
          >
            <Swatch state={stage.state} />
            <div>
              <b>{say(stage.words)}</b>
              {stage.from !== null && (
                <span className="for-readers">
                  {" "}
                  {say`fed from ${stages.find((one) => one.stage === stage.from)?.words ?? ""}:`}{" "}
                </span>
              )}
              <p>{say(standingWords(stage))}</p>
            </div>
          </li>
        ))}
      </ol>
      <ul className="stage-key" aria-label={say`What the patterns mean`}>
        {(Object.keys(STATE_WORDS) as StageState[]).map((state) => (
          <li key={state}>
            <Swatch state={state} />
            {say(STATE_WORDS[state])}
          </li>
        ))}
      </ul>
    </section>
  );
}

const STATE_WORDS: Readonly<Record<StageState, string>> = {
  suspect: said`suspect`,
  masked: said`hidden by another fault`,
  untested: said`not tested yet`,
  cleared: said`cleared`,
};

const SUSPECTS_NAMED = 3;

function standingWords({
  state,
  probability,
  suspects,
  masked,
  maskedBy,
  untested,
  parts,
}: StageView): string {
  const open = untested.length;
  switch (state) {
    case "suspect": {
      const named = suspects
        .slice(0, SUSPECTS_NAMED)
        .map(({ part }) => part)
        .join(", ");
      return open === 0
        ? said`Suspect, ${percent(probability)}: ${named}`
        : said`Suspect, ${percent(probability)}: ${named}; ${open} of ${parts} parts not tested`;
    }
    case "masked":
      return saidCount(
        masked.length,
        "Hidden by {1}: {2}",
        "Hidden by {1}: {0} parts",
        maskedBy.join(", "),
        masked[0] ?? "",
      );
    case "untested":
      return said`Not tested: ${open} of ${parts} parts`;
    case "cleared":
      return open === 0 ? said`Cleared` : said`Cleared; ${open} of ${parts} parts not tested`;
  }
}

interface Placed {
  readonly stage: StageView;
  readonly column: 1 | 2;
  readonly row: number;
  /** what leads to it: from the stage above, from the one beside it, or nothing that can be drawn as a line */
  readonly link: "above" | "beside" | "none";
}

/** The power path down the left; what the small supplies make and feed down the right, from the row of what feeds them. */
function placed(stages: readonly StageView[]): readonly Placed[] {
  const power = stages.filter(({ path }) => path === "power");
  const small = stages.filter(({ path }) => path === "small");
  const rowOf = new Map(power.map(({ stage }, index) => [stage, index + 1]));
  const left = power.map(
    (stage, index): Placed => ({
      stage,
      column: 1,
      row: index + 1,
      link: stage.from === null ? "none" : "above",
    }),
  );
  const first = rowOf.get(small[0]?.from ?? "") ?? 1;
  const right = small.map((stage, index): Placed => {
    const row = first + index;
    return {
      stage,
      column: 2,
      row,
      link: index > 0 ? "above" : rowOf.get(stage.from ?? "") === row ? "beside" : "none",
    };
  });
  return [...left, ...right];
}

/** Stripes, dots, nothing, a tick: told apart in black and white too. */
function Swatch({ state }: { readonly state: StageState }) {
  return (
    <svg className="swatch" data-state={state} viewBox="0 0 28 28" aria-hidden="true">
      <rect className="swatch-ground" x="1.500" y="1.500" width="25" height="25" rx="4" />
      {state === "suspect" && <path d="M2 18L18 2M2 26L26 2M10 26L26 10M18 26l8-8M2 10l8-8" />}
      {state === "masked" &&
        [7, 14, 21].flatMap((y) =>
          [7, 14, 21].map((x) => <circle key={`${x} ${y}`} cx={x} cy={y} r="1.900" />),
        )}
      {state === "cleared" && <path className="swatch-tick" d="M7 15l5 5 9-12" />}
    </svg>
  );
}
