import { benchMinutes } from "../money/minutes.ts";
import { jointShare } from "../priors/joint-share.ts";
import { faultsOf, type Hypotheses } from "./hypotheses.ts";
import type { PlanningInput } from "./planning-input.ts";
import { PLANNING_RATES } from "./planning-rates.ts";
import type { Action } from "./proposal.ts";

/** What fitting a new part takes. */
interface Price {
  readonly money: number;
  readonly minutes: number;
  readonly perMinute: number;
}

/**
 * A part that reads open may only have cracked its joint: solder costs minutes and no part, so it comes before a new one where
 * that pays. Null where it does not, where the part is in hand already, or where its joints have been made anew.
 */
export function resolderFirst(
  { board, timeline }: PlanningInput,
  ref: string,
  hypotheses: Hypotheses,
  price: Price,
): Action | null {
  const part = board.parts.get(ref);
  const { off, lifted } = timeline.now;
  if (part === undefined || off.has(ref) || [...lifted].some((place) => place.startsWith(`${ref}.`)))
    return null;
  const fitted = timeline.entries.findLastIndex(({ event }) => event.do === "replace" && event.part === ref);
  const done = timeline.entries
    .slice(fitted + 1)
    .some(
      ({ event }) =>
        event.do === "resolder" &&
        (event.part === ref || (event.stage !== undefined && event.stage === part.stage)),
    );
  if (done) return null;
  const gain = openShare(ref, hypotheses) * jointShare(part.kind);
  const saved = gain * (price.money + price.minutes * price.perMinute);
  const spent = (PLANNING_RATES.resolderMinutes + benchMinutes(board).measure) * price.perMinute;
  return saved > spent ? { do: "resolder", part: ref } : null;
}

/** Of the belief that the part is faulty, the share in which nothing of it is worse than open. */
function openShare(ref: string, hypotheses: Hypotheses): number {
  let faulty = 0;
  let open = 0;
  for (const hypothesis of hypotheses.list) {
    const own = faultsOf(hypothesis, hypotheses).filter((f) => hypotheses.priors[f].part === ref);
    if (own.length === 0) continue;
    faulty += hypothesis.weight;
    if (own.every((f) => hypotheses.priors[f].fault.mode === "open")) open += hypothesis.weight;
  }
  return faulty > 0 ? open / faulty : 0;
}
