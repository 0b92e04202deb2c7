/** How a job has gone: one point for a log as far as it had come, and the rails since power came on. */

import { netOfPlace } from "../bench/place.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board, Rail } from "../board/board.ts";
import { amountNumber } from "../money/amount.ts";
import { jobSum } from "../money/job-sum.ts";
import type { Assessment } from "./assess.ts";
import type { CoursePoint, RailBandView } from "./course-shape.ts";
import { eventWords } from "./event-words.ts";
import { moneyView } from "./money-view.ts";

/** Suspects that a point names: as many as lines can be told apart. */
const SUSPECTS = 8;

export function coursePoint(assessment: Assessment): CoursePoint {
  const { job, timeline, belief } = assessment;
  const last = job.log.at(-1);
  const { toGo } = moneyView(assessment);
  return {
    entries: job.log.length,
    words: last === undefined ? "" : eventWords(job.board, last),
    suspects: belief.suspects.slice(0, SUSPECTS).map(({ part, probability }) => ({ part, probability })),
    spent: amountNumber(jobSum(job.board, timeline, job.terms).total),
    toGo: toGo === null ? null : Number(toGo.money.mean),
    stopLine: toGo === null ? null : Number(toGo.stopLine),
  };
}

/** Every rail with its band, and the volts read of it since power last came on. */
export function railBands(board: Board, timeline: Timeline): readonly RailBandView[] {
  const from = timeline.entries.findLastIndex(({ event }) => event.do === "power");
  const since = from < 0 ? [] : timeline.entries.slice(from);
  const readings = since.flatMap(({ event, before }) =>
    event.do === "measure" && event.mode === "dcv" && before.powered && typeof event.reading === "number"
      ? [
          {
            red: netOfPlace(board, event.red ?? ""),
            black: netOfPlace(board, event.black ?? ""),
            volts: event.reading,
          },
        ]
      : [],
  );
  return board.rails.map((rail) => {
    const zero = rail.against ?? board.zero;
    const ends = bandEnds(rail);
    return {
      rail: rail.name,
      volts: rail.volts,
      ...ends,
      readings: readings.flatMap(({ red, black, volts }) =>
        red === rail.net && black === zero ? [volts] : red === zero && black === rail.net ? [-volts] : [],
      ),
    };
  });
}

function bandEnds({ volts, tolerance }: Rail): { readonly low: number; readonly high: number } {
  const [a, b] = [volts * (1 - tolerance), volts * (1 + tolerance)];
  return { low: Math.min(a, b), high: Math.max(a, b) };
}
