/** Two screens, one board: what was entered on both without either knowing of the other, and which of the two is to hold. */
import type { Conflict } from "../../wire/job-api.ts";
import { settleConflict, useConflicts } from "../conflict-keeper.ts";
import type { PanelProps } from "./bench-props.ts";

const WHY: Readonly<Record<Conflict["why"], string>> = {
  reading: "One check, two readings",
  part: "Two hands at one part",
  power: "Power, and a hand or a cold check, at the same time",
  closed: "Entered in a job that was closed meanwhile",
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
    <section className="conflicts" aria-label="Entered on two screens" role="alert">
      {shown.map(({ conflict, mine, theirs }) => (
        <article key={`${conflict.mine} ${conflict.theirs}`}>
          <h2>{WHY[conflict.why]}</h2>
          <p>
            Here: <b>{mine.words}</b>
          </p>
          <p>
            On another screen: <b>{theirs.words}</b>
          </p>
          <div className="keys">
            <button type="button" disabled={!theirs.canUndo} onClick={() => hands.undo(conflict.theirs)}>
              Mine holds, undo the other
            </button>
            <button type="button" disabled={!mine.canUndo} onClick={() => hands.undo(conflict.mine)}>
              The other holds, undo mine
            </button>
            <button type="button" onClick={() => void settleConflict(open.id, conflict)}>
              Both stand
            </button>
          </div>
        </article>
      ))}
    </section>
  );
}
