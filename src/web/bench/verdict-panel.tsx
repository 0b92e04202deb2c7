/** Closing the job with a verdict of one's own. */

import { say } from "../say.ts";
import { VERDICTS } from "../words.ts";
import type { PanelProps } from "./bench-props.ts";
import { PutAside } from "./put-aside.tsx";

export function VerdictPanel({ view, hands }: PanelProps) {
  if (view.verdict !== null) return <p className="aside">{say`This job is closed.`}</p>;
  return (
    <>
      {view.waiting === null && <PutAside view={view} hands={hands} />}
      <h3>{say`Or close it`}</h3>
      <p className="aside">
        {say`The proposal is on the card. Close from here when you decide otherwise; the log keeps both, and closing can be undone.`}
      </p>
      <div className="keys">
        {VERDICTS.map(({ verdict, words }) => (
          <button type="button" key={verdict} onClick={() => hands.choose({ do: "close", verdict })}>
            {say(words)}
          </button>
        ))}
      </div>
    </>
  );
}
