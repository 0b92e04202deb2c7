/** Work done ahead while the technician's hands are busy: what is likely to be written next is assessed before it is. Answers never depend on it. */
import type { JobEvent } from "../bench/event.ts";
import { FINDINGS, OBSERVED } from "../bench/words.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import type { Action, Expectation, Proposal } from "../planning/proposal.ts";
import { type AssessmentSession, assess } from "./assess.ts";
import type { Job } from "./job.ts";

/** Outcomes worked out ahead at most, and the chance below which none is worth a phone's charge. */
const MOST_OUTCOMES = 3;
const LEAST_CHANCE = 0.05;

/** Words that a cold reading may be; `beep` and `silent` are those of continuity. */
const READING_WORDS: readonly string[] = ["OL", "beep", "silent"];

/**
 * The event that each likely outcome of the step proposed would write, most probable first; one where the step has one outcome only.
 * A number stands for its band by the middle of it, by the logarithm: what it asks of the circuit is what its neighbours ask.
 */
export function likelyNext({ action, expect }: Pick<Proposal, "action" | "expect">): readonly JobEvent[] {
  if (action.do === "close" || action.do === "undo") return [];
  if (action.do !== "measure" && action.do !== "look" && action.do !== "power") return [action];
  return expect
    .filter(({ probability }) => probability >= LEAST_CHANCE)
    .flatMap((outcome) => eventOf(action, outcome) ?? [])
    .slice(0, MOST_OUTCOMES);
}

function eventOf(action: Action, outcome: Expectation): JobEvent | null {
  const { if: word, low, high } = outcome;
  if (action.do === "measure") {
    const reading = READING_WORDS.includes(word) ? word : middle(low, high);
    return reading === null ? null : ({ ...action, reading } as JobEvent);
  }
  if (action.do === "look") {
    // signs of damage that mean the same are one outcome: the first stands for all
    const finding = FINDINGS.find((one) => word.startsWith(one));
    return finding === undefined ? null : { ...action, finding };
  }
  if (action.do !== "power") return null;
  const observed = OBSERVED.find((one) => one === word);
  return observed === undefined ? null : { ...action, observed };
}

/** Bands reach down to nothing; a meter does not. */
const LEAST_SHOWN = 1e-3;

function middle(low: number | null, high: number | null): number | null {
  if (low === null || high === null) return null;
  if (high <= LEAST_SHOWN) return Number(Math.max(0, (low + high) / 2).toPrecision(3));
  return Number(Math.sqrt(Math.max(low, high * LEAST_SHOWN) * high).toPrecision(3));
}

/** Assesses the job as if `next` had been written; what the log refuses teaches nothing. */
export function workAhead(job: Job, next: JobEvent, session: AssessmentSession): void {
  assess({ ...job, log: [...job.log, next] }, session);
}

/**
 * Fills the session's memory with what the first cold checks will ask of the circuit, by assessing the job as if every store
 * of charge had just been proven empty. Worth doing while the volts are still being measured.
 */
export function warmUp(job: Job, session: AssessmentSession): void {
  assess({ ...job, log: [...job.log, ...provenEmpty(job)] }, session);
}

/** The readings that prove every store of charge on the board empty. */
export function provenEmpty({ board, absent }: Pick<Job, "board" | "absent">): readonly JobEvent[] {
  return storesOfCharge(board)
    .filter(({ part }) => !absent.includes(part))
    .map(
      ({ part, pins }): JobEvent => ({
        do: "measure",
        mode: "dcv",
        red: `${part}.${pins[0]}`,
        black: `${part}.${pins[1]}`,
        reading: 0,
      }),
    );
}
