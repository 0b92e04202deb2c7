/** What was wrong with a board, as its closed job tells: what was believed of each part at the moment that it was replaced or cured. */

import { foldLog } from "../bench/fold.ts";
import { faultName } from "../board/fault.ts";
import type { Parsed } from "../units/outcome.ts";
import { suspectsAnswer } from "./answers.ts";
import { AssessmentSession, type Believed, beliefOf } from "./assess.ts";
import { closedAs } from "./closed-as.ts";
import type { Job } from "./job.ts";

/** A part held to be faulty at this chance or more had the fault. From memory: likelier than not. */
const FOUND = 0.5;

/** A fault as the file format spells it, and how sure it was when it was cured, or is at the end. */
export interface FoundFault {
  readonly fault: string;
  readonly chance: number;
  /** log index of the event that brought it; -1: the board came in with it */
  readonly since: number;
}

/** The faults that the job found, surest first; none where nothing was likelier than not and nothing was replaced. */
export function foundFaults(
  job: Job,
  session: AssessmentSession = new AssessmentSession(),
): Parsed<readonly FoundFault[]> {
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const found = new Map<string, FoundFault>();
  const take = (upTo: number, wanted: (fault: string, part: string) => boolean) => {
    const believed = beliefOf({ ...job, log: job.log.slice(0, upTo) }, session);
    if (!believed.ok) return;
    for (const { part, probability, modes } of suspectsAnswer(believed.value).suspects) {
      const [mode] = modes;
      if (mode === undefined || found.has(part) || !wanted(mode.fault, part)) continue;
      const since = sinceWhen(believed.value, mode.fault);
      found.set(part, { fault: mode.fault, chance: probability, since });
    }
  };
  const entries = timeline.value.entries;
  for (const { event, logIndex } of entries) {
    if (event.do === "replace") take(logIndex, (_, part) => part === event.part);
    if (event.do === "resolder")
      take(
        logIndex,
        (fault, part) =>
          fault.endsWith(":open") &&
          (part === event.part ||
            (event.stage !== undefined && job.board.parts.get(part)?.stage === event.stage)),
      );
  }
  // A board that was closed as repaired holds no fault that matters; of one given up, what is believed at the end is what was found.
  if (closedAs(job.log) !== "repaired") take(job.log.length, () => true);
  const candidates = [...found.values()].sort((a, b) => b.chance - a.chance);
  const sure = candidates.filter(({ chance }) => chance >= FOUND);
  // Where nothing was likelier than not, what was replaced at the best chance is what cured it.
  const replaced = new Set(entries.flatMap(({ event }) => (event.do === "replace" ? [event.part] : [])));
  const best = [...found]
    .filter(([part]) => replaced.has(part))
    .sort(([, a], [, b]) => b.chance - a.chance)[0];
  return { ok: true, value: sure.length > 0 ? sure : best === undefined ? [] : [best[1]] };
}

/** When the fault came, as the explanations with it tell: the likeliest moment; where none of them names it, the board came in with it. */
function sinceWhen({ belief, priors }: Pick<Believed, "belief" | "priors">, fault: string): number {
  const index = priors.faults.findIndex((row) => faultName(row.fault) === fault);
  const chances = new Map<number, number>();
  for (const { faults, probability } of belief.explanations)
    for (const dated of faults)
      if (dated.fault === index) chances.set(dated.since, (chances.get(dated.since) ?? 0) + probability);
  return [...chances].reduce((best, one) => (one[1] > best[1] ? one : best), [-1, 0])[0];
}
