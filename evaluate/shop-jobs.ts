/** One job of the simulated shop: a board of its rates, read with noise by our own solver, and worked to its end. */
import type { JobEvent } from "../src/bench/event.ts";
import { foldLog } from "../src/bench/fold.ts";
import type { Timeline } from "../src/bench/timeline.ts";
import type { Board, Part } from "../src/board/board.ts";
import type { Fault } from "../src/board/fault.ts";
import { stageGrids } from "../src/job/grids.ts";
import type { Job } from "../src/job/job.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { predictorsAfter } from "../src/job/predictor-of-job.ts";
import { type Asked, answer } from "../src/practice/answer.ts";
import { faultsOnArrival, type PracticeJob } from "../src/practice/hidden-course.ts";
import { seededRandom } from "../src/practice/seeded-random.ts";
import { priorTable } from "../src/priors/prior-table.ts";
import { NOTHING_TOLD } from "../src/priors/told.ts";
import type { Shop } from "./shop-truth.ts";

/** How this shop's jobs end. Invented. */
const ENDS = { givenUp: 0.12, falselyClosed: 0.05, innocentExchanged: 0.25 } as const;
/** Readings taken of every board before anything is believed in particular. */
export const FIRST_READINGS = 8;

/** A board that comes to this shop, as its file. */
export interface ShopBoard {
  readonly id: string;
  readonly file: unknown;
}

export interface ShopJob {
  readonly boardId: string;
  /** as taken in, nothing done */
  readonly fresh: Job;
  /** with the first few readings */
  readonly read: Job;
  /** worked and closed */
  readonly closed: Job;
  /** rows of the table that the board came in with */
  readonly truth: readonly number[];
  readonly faulty: ReadonlySet<string>;
}

function jobOf(board: unknown, header: object, log: readonly object[]): Job {
  const job = parseJob({ format: "faultwright-job/1", board, ...header, log }, null);
  if (!job.ok) throw new Error(job.problem);
  return job.value;
}

/** A job of this shop; the same seed gives the same one. */
export function shopJob(shop: Shop, { id, file }: ShopBoard, seed: number): ShopJob {
  const random = seededRandom(seed, "job");
  const header = { cause: shop.drawCause(random), symptom: shop.drawSymptom(random) };
  const fresh = jobOf(file, header, []);
  const { board, cause, symptom } = fresh;
  const rates = shop.rates(cause, id, [...board.parts.keys()]);
  const table = priorTable(board, cause, symptom, NOTHING_TOLD, rates);
  const practice: PracticeJob = { job: fresh, table, seed };
  const hidden = faultsOnArrival(practice);
  const faulty = new Set(hidden.flatMap(({ fault }) => (fault.of === "part" ? [fault.part] : [])));
  const timeline = foldLog(board, [], []);
  if (!timeline.ok) throw new Error(timeline.problem);
  const ask = (asked: Asked) => readingOf(practice, timeline.value, asked);
  const checks = stageGrids(board).flatMap((grid) => grid.checks);
  const step = Math.max(1, Math.floor(checks.length / FIRST_READINGS));
  const from = Math.floor(random() * step);
  const first = checks
    .filter((_, at) => at % step === from)
    .slice(0, FIRST_READINGS)
    .flatMap(({ mode, red, black }) => ask({ do: "measure", mode, red, black }));
  const given = random();
  const work =
    given < ENDS.givenUp ? giveUp() : repair(board.parts, faulty, random, ask, dirtyParts(board, hidden));
  return {
    boardId: id,
    fresh,
    read: jobOf(file, header, first),
    closed: jobOf(file, header, [...first, ...work]),
    truth: hidden.map(({ row }) => row),
    faulty,
  };
}

/** A part at each leak between nets: what is cleaned is named by what stands there. */
function dirtyParts(board: Board, hidden: readonly { readonly fault: Fault }[]): readonly string[] {
  return hidden.flatMap(({ fault }) => {
    if (fault.of !== "nets") return [];
    const there = [...board.parts.values()].find(({ pins }) => [...pins.values()].includes(fault.nets[0]));
    return there === undefined ? [] : [there.ref];
  });
}

function readingOf(practice: PracticeJob, timeline: Timeline, asked: Asked): JobEvent[] {
  const answered = answer(practice, timeline, asked, predictorsAfter(practice.job.cause));
  return answered.ok ? [answered.event] : [];
}

function giveUp(): JobEvent[] {
  return [{ do: "close", verdict: "not-economic" }];
}

/** Every bad part is read across its own pins and exchanged, one now and then is missed, a good one now and then goes too; then the board runs. */
function repair(
  parts: ReadonlyMap<string, Part>,
  faulty: ReadonlySet<string>,
  random: () => number,
  ask: (asked: Asked) => JobEvent[],
  dirty: readonly string[],
): JobEvent[] {
  const log: JobEvent[] = [];
  const exchange: string[] = [...faulty].filter(() => random() >= ENDS.falselyClosed);
  const refs = [...parts.keys()];
  if (random() < ENDS.innocentExchanged) exchange.push(refs[Math.floor(random() * refs.length)] ?? "");
  const chosen = [...new Set(exchange)].flatMap((ref) => parts.get(ref) ?? []);
  for (const { ref, pins } of chosen)
    for (const [red, black] of pairsOf([...pins.keys()]))
      log.push(...ask({ do: "measure", mode: "ohms", red: `${ref}.${red}`, black: `${ref}.${black}` }));
  for (const part of dirty) log.push({ do: "clean", part });
  for (const { ref } of chosen) log.push({ do: "replace", part: ref });
  log.push({ do: "close", verdict: "repaired" });
  return log;
}

/** The first pins against each other: three readings at most. */
function pairsOf(pins: readonly string[]): (readonly [string, string])[] {
  const [a, b, c] = pins;
  if (a === undefined || b === undefined) return [];
  return c === undefined
    ? [[a, b]]
    : [
        [a, b],
        [b, c],
        [a, c],
      ];
}
