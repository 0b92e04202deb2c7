/** A resistor clipped on for discharging has to be off before power: it would burn, and what it hangs on would be reached for live. */
import type { Timeline } from "../bench/timeline.ts";
import { said } from "../messages/said.ts";
import { lastPowerIndex } from "./discharge.ts";

/** Has the technician said, since power was last on and since the last clip went on, that power comes with the resistor in place? */
export function resistorOverruled(timeline: Timeline): boolean {
  const clip = timeline.entries.findLastIndex(({ event }) => event.do === "clip");
  const since = timeline.entries.slice(Math.max(lastPowerIndex(timeline), clip) + 1);
  return since.some(({ event }, at) => {
    if (event.do !== "overrule") return false;
    return event.of === "resistor" || (event.of === undefined && at === since.length - 1);
  });
}

/** Why power may not come now, in one line that says what to do; null where no resistor is in its way. */
export function resistorInTheWay(timeline: Timeline): string | null {
  const { clips } = timeline.now;
  const [clip] = clips;
  if (clip === undefined || resistorOverruled(timeline)) return null;
  const [ohms, one, other] = [`${clip.ohms} ohm`, ...clip.at];
  return clips.length === 1
    ? said`${ohms} is still clipped on between ${one} and ${other}: take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live`
    : said`${ohms} is still clipped on between ${one} and ${other} (and ${clips.length - 1} more): take it off before power (unclip), or overrule with a reason; left on it burns, and is reached for live`;
}
