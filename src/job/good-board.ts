/** A board that is known to be good teaches what good ones read, and which assumed parts cannot be what was assumed. */

import { foldLog } from "../bench/fold.ts";
import type { Board, ReferenceReading } from "../board/board.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import type { GoodReading } from "../learning/references.ts";
import { said, saidCount } from "../messages/said.ts";
import { asReferencesWere, comparison, netOfPlace } from "../meter/good-readings.ts";
import type { Predictor } from "../meter/prediction.ts";
import { sharingPredictors } from "../meter/predictor.ts";
import { DEFAULT_METER } from "../meter/settings.ts";
import type { Parsed } from "../units/outcome.ts";
import type { Job } from "./job.ts";

/**
 * The settled cold readings of a job on a good board, taken before anything was changed on it; refused of one beside which a good one lay.
 * @param from - those of the log's entries before this one are left out: they have been counted
 */
export function goodReadings(job: Job, from = 0): Parsed<readonly GoodReading[]> {
  const { board } = job;
  if (job.log.some((event) => event.do === "beside"))
    return {
      ok: false,
      problem: said`is of a board that a good one lay beside; "learned JOBS --into NEW" counts with that`,
    };
  const timeline = foldLog(board, job.absent, job.log);
  if (!timeline.ok) return timeline;
  const readings: GoodReading[] = [];
  for (const { event, before, logIndex } of timeline.value.entries) {
    if (event.do === "replace" || event.do === "power") break;
    if (logIndex < from) continue;
    if (event.do !== "measure" || before.powered || !asReferencesWere(board, before)) continue;
    const { mode, red, black, reading, settling, wires } = event;
    if (mode !== "diode" && mode !== "ohms" && mode !== "farads") continue;
    if (red === undefined || black === undefined || settling !== undefined || wires !== undefined) continue;
    if (typeof reading !== "number" || reading <= 0) continue;
    readings.push({ mode, red: netOfPlace(board, red), black: netOfPlace(board, black), reading });
  }
  return { ok: true, value: readings };
}

/** `what a good one read here: 1.45 kohm, 3 readings, +- 4 %` */
export function referenceWords({ mode, reading, spread, count }: ReferenceReading): string {
  const off = mode === "diode" ? `${spread.toFixed(3)} V` : `${(100 * spread).toFixed(0)} %`;
  const many = saidCount(count, "1 reading", "{0} readings, +- {1}", off);
  return said`what a good one read here: ${shownWords(mode, reading)}, ${many}`;
}

export interface CannotBe {
  readonly reference: ReferenceReading;
  /** what the board file makes of it */
  readonly drawn: string;
  /** assumed parts that the reading rests on; empty: it rests on none, so that the file or the board is another */
  readonly parts: readonly string[];
}

/** A good one this many deviations off (its own and those of parts that were seen) is not the board of the file. From memory. */
const CANNOT_BE = 3;
/** What any circuit model leaves out, on the scale. From memory, as in the diagnosis. */
const MODEL = 0.05;

/**
 * References that the board file's own values cannot give, and whose assumed values they rest on.
 * @param predictor - of the board without its references
 */
export function cannotBe(board: Board, predictor: Predictor): readonly CannotBe[] {
  return (board.references ?? []).flatMap((reference) => {
    const { mode, red, black, count } = reference;
    const prediction = predictor.predict({ mode, red, black }, []);
    const compared = comparison(reference, prediction);
    if (compared === null || !prediction.solved) return [];
    const { offset, alike, single } = compared;
    const known = Math.hypot(alike, MODEL, single / Math.sqrt(count));
    if (Math.abs(offset) < CANNOT_BE * known) return [];
    // a spread that is wide for another reason than an assumed part holds the offset as well
    if (prediction.restsOn.length === 0 && Math.abs(offset) < CANNOT_BE * compared.model) return [];
    return [{ reference, drawn: shownWords(mode, prediction.raw), parts: prediction.restsOn }];
  });
}

/** The same for a board read with its motor unplugged, by the usual meter. */
export function oddReferences(board: Board): readonly CannotBe[] {
  if ((board.references?.length ?? 0) === 0) return [];
  const motors = [...board.parts.values()].filter((part) => part.kind === "motor");
  const off = new Set(motors.map(({ ref }) => ref));
  const bench = { lifted: new Set<string>(), off, clips: [], powered: false };
  return cannotBe(board, sharingPredictors(undefined)(board, bench, DEFAULT_METER));
}

/** The same in words, one line each. */
export function oddReferencesInWords(board: Board): {
  readonly title: string;
  readonly lines: readonly string[];
} {
  const lines = oddReferences(board).map(({ reference, drawn, parts }) => {
    const { mode, red, black } = reference;
    const why =
      parts.length === 0 ? said`the board file or the board is another` : said`assumed: ${parts.join(" ")}`;
    return said`${mode} red ${red}, black ${black}: ${drawn} by the file; ${why}`;
  });
  return { title: said`What the file's values cannot give`, lines };
}
