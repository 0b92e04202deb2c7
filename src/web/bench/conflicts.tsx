/** Two screens, one board: what was entered on both without either knowing of the other, and which of the two is to hold. */
import { said } from "../../messages/said.ts";
import type { Conflict } from "../../wire/job-api.ts";
import { settleConflict, useConflicts } from "../conflict-keeper.ts";
import { say, sayWith } from "../say.ts";
import type { PanelProps } from "./bench-props.ts";

const WHY: Readonly<Record<Conflict["why"], string>> = {
  reading: said`One check, two readings`,
  part: said`Two hands at one part`,
  power: said`Power, and a hand or a cold check, at the same time`,
  closed: said`Entered in a job that was closed meanwhile`,
};

export function Conflicts({ open, view, hands }: Omit<PanelProps, "desk">) {
  const conflicts = useConflicts(open.id);
  const line = (id: string) => view.log.find((one) => one.id === id && !one.undone);
  const shown = conflicts.flatMap((conflict) => {
    const [mine, theirs] = [line(conflict.mine), line(conflict.theirs)];
    return mine === undefined || theirs === undefined ? [] : [{ conflict, mine, theirs }];
  });
  if (shown.length === 0) return null;
  return (
    <section className="conflicts" aria-label={say`Entered on two screens`} role="alert">
      {shown.map(({ conflict, mine, theirs }) => (
        <article key={`${conflict.mine} ${conflict.theirs}`}>
          <h2>{say(WHY[conflict.why])}</h2>
          <p>{sayWith`Here: ${<b>{say(mine.words)}</b>}`}</p>
          <p>{sayWith`On another screen: ${<b>{say(theirs.words)}</b>}`}</p>
          <div className="keys">
            <button type="button" disabled={!theirs.canUndo} onClick={() => hands.undo(conflict.theirs)}>
              {say`Mine holds, undo the other`}
            </button>
            <button type="button" disabled={!mine.canUndo} onClick={() => hands.undo(conflict.mine)}>
              {say`The other holds, undo mine`}
            </button>
            <button type="button" onClick={() => void settleConflict(open.id, conflict)}>
              {say`Both stand`}
            </button>
          </div>
        </article>
      ))}
    </section>
  );
}
