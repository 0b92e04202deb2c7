/** Each rail as a band about its volts, with what was read of it since power came on. */
import { useEffect, useState } from "react";
import type { RailBandView } from "../../wire/bench-view.ts";
import { say } from "../say.ts";
import type { OpenJob } from "../use-job.ts";
import { quantity } from "../words.ts";

/** Per cent of the rail's volts at the right end. */
const FULL = 150;

export function RailBands({ ask }: { readonly ask: OpenJob["rails"] }) {
  const [rails, setRails] = useState<readonly RailBandView[]>([]);
  useEffect(() => {
    let wanted = true;
    ask().then(
      (found) => wanted && setRails(found),
      // what is wrong with the log is told where the bench is worked out
      () => undefined,
    );
    return () => {
      wanted = false;
    };
  }, [ask]);
  if (rails.length === 0) return null;
  return (
    <figure className="strip">
      <figcaption>{say`Rails since power came on`}</figcaption>
      <ul>
        {rails.map((rail) => (
          <li key={rail.rail}>
            <span>{say`${rail.rail}, ${quantity(rail.low, "V")} to ${quantity(rail.high, "V")}`}</span>
            <span className="figure">{readWords(rail)}</span>
            <svg className="track" viewBox={`0 0 ${FULL} 10`} preserveAspectRatio="none" aria-hidden="true">
              <path className="track-base" d={`M0 5H${FULL}`} />
              <rect
                className="track-band"
                x={share(rail, rail.volts < 0 ? rail.high : rail.low)}
                y="1.5"
                width={Math.abs(share(rail, rail.high) - share(rail, rail.low))}
                height="7"
              />
              <path
                className="track-reading"
                d={rail.readings.map((volts) => `M${share(rail, volts)} 0V10`).join("")}
              />
            </svg>
          </li>
        ))}
      </ul>
    </figure>
  );
}

/** Per cent of the rail's volts, within the track. */
function share({ volts }: RailBandView, value: number): number {
  return Math.min(FULL - 1, Math.max(1, (100 * value) / volts));
}

function readWords({ readings, low, high }: RailBandView): string {
  const last = readings.at(-1);
  if (last === undefined) return say`not read`;
  const volts = quantity(last, "V");
  if (last < low) return say`${volts}, below`;
  return last > high ? say`${volts}, above` : say`${volts}, in band`;
}
