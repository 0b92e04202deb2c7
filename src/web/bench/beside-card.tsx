/** The card while the good board beside it is asked for what this one just read. */
import { useState } from "react";
import type { BenchView } from "../../wire/bench-view.ts";
import { happened } from "../job-event.ts";
import { forms, say, sayWith } from "../say.ts";
import { bareCard } from "../words.ts";
import type { BoardDesk, Hands } from "./bench-props.ts";
import { Probes } from "./probes.tsx";
import { DigitField, modeOf } from "./reading-keys.tsx";
import { StepOnBoard } from "./step-on-board.tsx";
import type { AskedBeside, Beside } from "./use-beside.ts";

interface Props {
  readonly asked: AskedBeside;
  readonly beside: Beside;
  readonly view: BenchView;
  readonly hands: Hands;
  readonly desk: BoardDesk;
}

export function BesideCard({ asked, beside, view, hands, desk }: Props) {
  const [problem, setProblem] = useState<string | null>(null);
  const read = (reading: number | string) => {
    if (typeof reading !== "number" && reading !== "OL")
      return setProblem(say`Of the good one the digits are wanted, settled, or OL.`);
    hands.add([happened({ ...asked.check, do: "beside" }, { reading })]);
    beside.done();
  };
  return (
    <article className="card beside-card" data-do="beside" data-waiting={false}>
      <div className="card-head">
        <p className="card-kind">{say`The good one beside it`}</p>
        <button type="button" className="quiet small" data-key="s" onClick={beside.done}>
          {say`Not this one`}
        </button>
      </div>
      <Probes card={bareCard(asked.check)} places={view.places} desk={desk} />
      <StepOnBoard card={bareCard(asked.check)} places={view.places} desk={desk} />
      <p className="cautions">
        {say`On the good board, whole and off the mains, each of its stores of charge proven empty before a probe goes on it.`}
      </p>
      <p>
        {sayWith`This board read ${<b className="figure">{forms().shown(asked.here)}</b>}. What does the good one read at the same places?`}
      </p>
      <div className="reading-dock">
        <fieldset className="keys reading-keys" aria-label={say`What the meter shows on the good one`}>
          <button type="button" data-key="1" onClick={() => read("OL")}>
            <span className="key-words">OL</span>
            <span className="key-hint">{say`open on the good one too, or only there`}</span>
          </button>
        </fieldset>
        <DigitField mode={modeOf(asked.check)} disabled={false} settled onReading={read} />
      </div>
      {problem !== null && (
        <p role="alert" className="entry-problem">
          {problem}
        </p>
      )}
    </article>
  );
}
