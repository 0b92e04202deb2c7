/** One line of the list of jobs, beside the counts: whose it is, what it waits for, what was fitted, how it ended. */
import type { JobEvent, Verdict } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import { type Waiting, waitingFor } from "../bench/waiting.ts";
import { closedAs } from "./closed-as.ts";

export interface JobLine {
  /** null where nobody wrote it down */
  readonly customer: string | null;
  /** what the board came out of */
  readonly unit: string | null;
  /** null where it is on the bench or closed */
  readonly waiting: Waiting | null;
  /** by reference and, where it has one, type: `Q1 IKW40N65` */
  readonly fitted: readonly string[];
  /** null while the job is open */
  readonly verdict: Verdict | null;
}

/**
 * @param header - parsed JSON that need not be a job at all
 * @param log - steps may be left out where no `wait` stands before them: of those only closes, undos and new parts are told
 */
export function jobLine(header: Readonly<Record<string, unknown>>, log: readonly JobEvent[]): JobLine {
  const undone = undoneEvents(log);
  const fitted = log.flatMap((event, index) =>
    event.do === "replace" && undone[index] !== true ? [`${event.part} ${event.with ?? ""}`.trim()] : [],
  );
  return {
    customer: written(header.customer),
    unit: written(header.unit),
    waiting: waitingFor(log),
    fitted: [...new Set(fitted)],
    verdict: closedAs(log),
  };
}

function written(text: unknown): string | null {
  return typeof text === "string" && text.trim() !== "" ? text.trim() : null;
}
