/** A good board of the same number beside the one on the bench: what both read, turn by turn, and what that says of the places. */

import type { BesideEvent, JobEvent, MeasureEvent } from "../bench/event.ts";
import { undoneEvents } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Board } from "../board/board.ts";
import { shownWords } from "../diagnosis/cold-evidence.ts";
import type { GoodReading } from "../learning/references.ts";
import { said } from "../messages/said.ts";
import { asReferencesWere, LEAST_REFERENCE_SPREAD, netOfPlace } from "../meter/good-readings.ts";
import { METER_SPREAD } from "../meter/spread.ts";
import { readingWords } from "./event-words.ts";
import { pooledWith } from "./pooled-board.ts";
import { actionWords } from "./words.ts";

/** What the good one read in this log, undone entries left out; a reading of nothing or of `OL` is no mean of anything. */
export function readBeside(board: Board, log: readonly JobEvent[]): readonly GoodReading[] {
  if (!log.some((event) => event.do === "beside")) return [];
  const undone = undoneEvents(log);
  return log.flatMap((event, at) => {
    if (event.do !== "beside" || undone[at] === true) return [];
    const { mode, red, black, reading } = event;
    if (typeof reading !== "number" || reading <= 0) return [];
    return [{ mode, red: netOfPlace(board, red), black: netOfPlace(board, black), reading }];
  });
}

/** Boards by what was read beside them: caches behind a board are told apart by the object. */
const known = new WeakMap<Board, Map<string, Board>>();

/** The board with what the good one beside it read among its references. */
export function withReadBeside(board: Board, log: readonly JobEvent[]): Board {
  const readings = readBeside(board, log);
  if (readings.length === 0) return board;
  const key = JSON.stringify(readings);
  const ofBoard = known.get(board) ?? new Map<string, Board>();
  known.set(board, ofBoard);
  const made = ofBoard.get(key);
  if (made !== undefined) return made;
  const here: Board = { ...board, references: pooledWith(board, [], readings) };
  ofBoard.set(key, here);
  return here;
}

/** Whether the good one can be asked for the same reading: cold, settled, by two wires, and this board whole as the good one is. */
export function comparable(
  event: JobEvent,
  whole: boolean,
): event is MeasureEvent & Pick<BesideEvent, "mode"> {
  if (event.do !== "measure" || !whole || event.wires !== undefined || event.settling !== undefined)
    return false;
  return event.mode === "diode" || event.mode === "ohms" || event.mode === "farads";
}

/** The check to take on the good one after this reading of the board on the bench. */
export function askedBeside({ mode, red, black }: MeasureEvent): Omit<BesideEvent, "reading"> {
  if (mode !== "diode" && mode !== "ohms" && mode !== "farads")
    throw new Error(`no good board is compared in ${mode} mode`);
  return { do: "beside", mode, red: red ?? "", black: black ?? "" };
}

export interface Compared {
  /** of the good one's entry */
  readonly logIndex: number;
  /** `ohms: red on V15, black on GND` */
  readonly check: string;
  readonly here: string;
  readonly good: string;
  /** `5 times lower`, `0.20 V lower`, `alike`: of this board's reading against the good one's */
  readonly words: string;
  readonly differs: boolean;
}

/** Further apart than this many deviations of two boards and two readings, they are not alike. Statistics: one pair in four hundred. */
const APART = 3;

/** Each reading of the good one beside the last one that this board gave at the same check before it, oldest first. */
export function comparedReadings(board: Board, timeline: Timeline): readonly Compared[] {
  const compared: Compared[] = [];
  for (const [at, { event, logIndex }] of timeline.entries.entries()) {
    if (event.do !== "beside") continue;
    const here = timeline.entries
      .slice(0, at)
      .findLast(
        ({ event: read, before }) =>
          comparable(read, asReferencesWere(board, before)) && sameCheck(board, read, event),
      )?.event;
    if (here?.do !== "measure") continue;
    compared.push({
      logIndex,
      check: actionWords(board, here),
      here: readingWords(here),
      good: goodWords(event),
      ...difference(event, here.reading),
    });
  }
  return compared;
}

export function goodWords({ mode, reading }: Pick<BesideEvent, "mode" | "reading">): string {
  return reading === "OL" ? reading : shownWords(mode, reading);
}

function sameCheck(board: Board, one: MeasureEvent, other: BesideEvent): boolean {
  return (
    one.mode === other.mode &&
    netOfPlace(board, one.red ?? "") === netOfPlace(board, other.red) &&
    netOfPlace(board, one.black ?? "") === netOfPlace(board, other.black)
  );
}

function difference(
  { mode, reading: good }: BesideEvent,
  here: MeasureEvent["reading"],
): Pick<Compared, "words" | "differs"> {
  if (here === good) return { words: said`alike`, differs: false };
  if (here === "OL") return { words: said`open, the good one is not`, differs: true };
  if (typeof here !== "number") return { words: said`read without digits`, differs: false };
  if (good === "OL") return { words: said`not open, the good one is`, differs: true };
  const apart = APART * Math.SQRT2 * LEAST_REFERENCE_SPREAD[mode];
  const words = (by: string) => (here < good ? said`${by} lower` : said`${by} higher`);
  if (mode === "diode") {
    if (Math.abs(here - good) <= apart) return { words: said`alike`, differs: false };
    return { words: words(`${Math.abs(here - good).toFixed(2)} V`), differs: true };
  }
  // leads and contact stand in both
  const contact = mode === "ohms" ? METER_SPREAD.contactOhms : METER_SPREAD.strayFarads;
  const times = (Math.max(here, good) + contact) / (Math.min(here, good) + contact);
  if (Math.log(times) <= apart) return { words: said`alike`, differs: false };
  const by = times >= 2 ? said`${Number(times.toPrecision(2))} times` : `${(100 * (times - 1)).toFixed(0)} %`;
  return { words: words(by), differs: true };
}
