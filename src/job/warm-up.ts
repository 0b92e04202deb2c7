/** Work done ahead while the technician's hands are busy: answers never depend on it. */
import type { JobEvent } from "../bench/event.ts";
import { storesOfCharge } from "../board/stores-of-charge.ts";
import { type AssessmentSession, assess } from "./assess.ts";
import type { Job } from "./job.ts";

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
