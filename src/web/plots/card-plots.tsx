/** Under the card's keys: what this check would read, and where the last reading came to lie. */
import { useEffect, useState } from "react";
import type { CardView, StripView } from "../../wire/bench-view.ts";
import { field } from "../job-event.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";
import { ClimbPlot } from "./climb-plot.tsx";
import { RailBands } from "./rail-bands.tsx";
import { StripPlot } from "./strip-plot.tsx";

interface Props {
  readonly open: OpenJob;
  readonly card: CardView;
  readonly powered: boolean;
}

export default function CardPlots({ open, card, powered }: Props) {
  const { strip, lastStrip } = open;
  const cold = card.action.do === "measure" && field(card.action, "red") !== null;
  const [now, setNow] = useState<StripView | null>(null);
  const [last, setLast] = useState<StripView | null>(null);
  const behind = open.behind;
  const { action } = card;
  useEffect(() => {
    // a view that is being worked out goes first
    if (behind) return;
    let wanted = true;
    const quietly = () => undefined;
    lastStrip().then((found) => wanted && setLast(found), quietly);
    if (cold) strip(action).then((found) => wanted && setNow(found), quietly);
    return () => {
      wanted = false;
    };
  }, [behind, cold, action, strip, lastStrip]);
  return (
    <>
      {now !== null && (
        <>
          <StripPlot strip={now} title={say`What it would read`} />
          {now.climb !== null && <ClimbPlot climb={now.climb} unit={now.unit} limit={now.to} />}
        </>
      )}
      {powered && <RailBands ask={open.rails} />}
      {last !== null && (
        <details className="last-strip">
          <summary>{say`The last reading on its strip: ${last.reading?.words ?? ""}`}</summary>
          <StripPlot strip={last} title={say`What the check before would read`} />
          {last.climb !== null && <ClimbPlot climb={last.climb} unit={last.unit} limit={last.to} />}
        </details>
      )}
    </>
  );
}
