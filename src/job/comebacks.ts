/**
 * Boards that come back. The new job names the old one and why; what it takes is booked against the old one, and where the repair is to
 * blame the old verdict did not hold. Nothing in the old job is changed: what stands in its log was right when it was written.
 */
import type { JobEvent, Verdict } from "../bench/event.ts";
import { foldLog } from "../bench/fold.ts";
import { type Amount, amountNumber, amountText, plus } from "../money/amount.ts";
import { jobSum } from "../money/job-sum.ts";
import { closedAs } from "./closed-as.ts";
import { type ComebackOf, type ComebackReason, isOwnFault } from "./comeback-of.ts";
import type { Job } from "./job.ts";

/** How a job's verdict stands once what came back is known. */
export interface CorrectedVerdict {
  /** as the log has it; null while the job is open */
  readonly closedAs: Verdict | null;
  /** false where a comeback showed that it was not so */
  readonly held: boolean;
  /** the reasons of the comebacks that overturned it */
  readonly because: readonly ComebackReason[];
}

/**
 * The verdict of a job as its comebacks leave it: `repaired` and `no-fault` do not hold where the board came back for something of
 * the repair's; a job that was given up promised nothing.
 * @param comebacks - of the jobs that name this one
 */
export function correctedVerdict(
  log: readonly JobEvent[],
  comebacks: readonly ComebackOf[],
): CorrectedVerdict {
  const verdict = closedAs(log);
  const promised = verdict === "repaired" || verdict === "no-fault";
  const because = promised ? comebacks.filter(isOwnFault).map(({ reason }) => reason) : [];
  return { closedAs: verdict, held: because.length === 0, because };
}

/** What the comebacks of one job have cost, in the currency of its terms; those to blame on others cost it nothing. */
function comebackCost(comebacks: readonly Job[]): Amount {
  return plus(...comebacks.filter(({ comebackOf }) => isOwnFault(comebackOf)).map(totalOf));
}

/** The same as paper has it. */
export function comebackCostText(comebacks: readonly Job[], currency: string): string {
  return amountText(comebackCost(comebacks), currency);
}

function totalOf(job: Job): Amount {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) throw new Error(`a job that was read does not fold: ${timeline.problem}`);
  return jobSum(job.board, timeline.value, job.terms).total;
}

/** Repairs for which the usual figure counts beside what came back. From memory: after so many, half of the figure is the shop's own. */
const USUAL_COUNTS_AS = 20;

/**
 * What a repaired board costs this shop on the average in coming back: its own comebacks over its own repairs, with the usual figure
 * standing in for the first twenty repairs.
 * @param repaired - jobs closed as repaired
 */
export function ownWarrantyCost(usual: number, repaired: number, comebacks: readonly Job[]): number {
  return (USUAL_COUNTS_AS * usual + amountNumber(comebackCost(comebacks))) / (USUAL_COUNTS_AS + repaired);
}
