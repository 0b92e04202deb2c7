/**
 * Whether the engine still says the same, and what it takes: `npm run bench:same -- FILE [jobs]` plays seeded
 * practice jobs on the shipped boards and writes every proposal with what is believed to FILE, or, where FILE is there already, compares
 * with it as far as both go. Numbers may differ by 1e-9 of themselves. A change that is about speed alone is held to it. STEPS, SEED and
 * SLOWEST in the environment: proposals of a job, the first seed, and how many of the slowest proposals are listed.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { sizedBoard } from "../evaluate/boards/size-series.ts";
import { shippedBoards } from "../evaluate/oracle/shipped-boards.ts";
import { Course } from "../evaluate/players/course.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { trialJob } from "../evaluate/trial.ts";
import type { Board } from "../src/board/board.ts";
import { parseBoard } from "../src/board/parse-board.ts";
import { type Assessment, AssessmentSession, assess } from "../src/job/assess.ts";

/** Proposals followed of one job, and the seed of the first. */
const MOST_STEPS = Number(process.env.STEPS ?? 40);
const FIRST_SEED = Number(process.env.SEED ?? 500_000);
const SHARE = 1e-9;
/** What is believed of so many parts and sets is compared. */
const LISTED = 20;

interface Played {
  readonly job: string;
  readonly said: readonly object[];
}

function saidIn({ proposal, belief }: Assessment): object {
  const { forecast, firstMinute, ...rest } = proposal;
  return {
    ...rest,
    forecast,
    firstMinute: firstMinute(),
    suspects: belief.suspects
      .slice(0, LISTED)
      .map(({ part, probability, modes }) => ({ part, probability, modes })),
    explanations: belief.explanations
      .slice(0, LISTED)
      .map(({ faults, probability, nothingBeside }) => ({ faults, probability, nothingBeside })),
    unexplained: belief.unexplained,
    remainder: belief.remainder,
    healthy: belief.healthyProbability,
  };
}

async function play(id: string, board: Board, seed: number, took: Took[]): Promise<Played> {
  const job = trialJob(board, seed);
  const [session, hidden] = [new AssessmentSession(), new AssessmentSession()];
  const bench = practiceBench(job, hidden.priors(job), seed, (_board, state) => hidden.predictor(job, state));
  const course = new Course(job, bench);
  const said: object[] = [];
  for (let step = 0; step < MOST_STEPS && course.verdict === null; step++) {
    const began = process.cpuUsage();
    const assessed = assess({ ...course.job }, session);
    const { user, system } = process.cpuUsage(began);
    if (!assessed.ok) throw new Error(assessed.problem);
    const { action, row } = assessed.value.proposal;
    if (step > 0)
      took.push({
        ms: (user + system) / 1000,
        what: `${id}/${seed}/${step} after ${JSON.stringify(course.log.at(-1)).slice(0, 100)} -> ${JSON.stringify(action).slice(0, 90)}`,
      });
    said.push(JSON.parse(JSON.stringify(saidIn(assessed.value))));
    await course.takeRow([action, ...row]);
  }
  return { job: `${id} ${seed}`, said };
}

interface Took {
  readonly ms: number;
  readonly what: string;
}

/** Lists of which the order is that of probabilities: what is equal there but for rounding may stand either way. */
const RANKED: ReadonlySet<string> = new Set(["modes", "suspects", "explanations"]);

/** In the order of names, without what is as probable as the last listed: another may stand in its place. */
function inOneOrder(ranked: readonly unknown[]): readonly unknown[] {
  const chance = (one: unknown): number => (one as { readonly probability: number }).probability;
  const least = ranked.length < LISTED ? -1 : chance(ranked.at(-1)) * (1 + SHARE) + SHARE;
  const list = ranked.filter((one) => chance(one) > least);
  const name = (one: unknown): string =>
    JSON.stringify(one, (key, value) => (typeof value === "number" && key !== "fault" ? undefined : value));
  return [...list].sort((a, b) => (name(a) < name(b) ? -1 : 1));
}

/** The first place where two values differ, or null. */
function difference(was: unknown, is: unknown, at: string): string | null {
  if (Array.isArray(was) && Array.isArray(is) && RANKED.has(at.slice(at.lastIndexOf(".") + 1)))
    return difference({ ...inOneOrder(was) }, { ...inOneOrder(is) }, at);
  if (typeof was === "number" && typeof is === "number")
    return Math.abs(was - is) <= SHARE * Math.max(1, Math.abs(was)) ? null : `${at}: ${was}, now ${is}`;
  if (typeof was !== "object" || typeof is !== "object" || was === null || is === null)
    return was === is ? null : `${at}: ${JSON.stringify(was)}, now ${JSON.stringify(is)}`;
  for (const key of new Set([...Object.keys(was), ...Object.keys(is)])) {
    const found = difference(Reflect.get(was, key), Reflect.get(is, key), `${at}.${key}`);
    if (found !== null) return found;
  }
  return null;
}

function sized(size: 50 | 100): { id: string; board: Board } {
  const board = parseBoard(sizedBoard(size));
  if (!board.ok) throw new Error(board.problem);
  return { id: `sized-${size}`, board: board.value };
}

const [, , file, count] = process.argv;
if (file === undefined) throw new Error("name the file to write, or to compare with");
const known: readonly Played[] | null = existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
const boards = [...shippedBoards(), sized(50), sized(100)];
const records: Played[] = [];
const took: Took[] = [];
let differing = 0;
for (let k = 0; k < Number(count ?? 105); k++) {
  const { id, board } = boards[k % boards.length];
  const record = await play(id, board, FIRST_SEED + k, took);
  records.push(record);
  if (known === null) continue;
  const steps = Math.min(known[k].said.length, record.said.length);
  const found = difference(known[k].said.slice(0, steps), record.said.slice(0, steps), record.job);
  if (found !== null) {
    differing++;
    console.log(found);
  }
}
took.sort((a, b) => a.ms - b.ms);
const at = (share: number): string =>
  took[Math.min(took.length - 1, Math.floor(share * took.length))].ms.toFixed(1);
const total = took.reduce((sum, { ms }) => sum + ms, 0);
console.log(
  `${records.length} jobs, ${took.length} warm proposals, processor time: median ${at(0.5)} ms, 95 % ${at(0.95)} ms, 99 % ${at(0.99)} ms, slowest ${at(1)} ms, mean ${(total / took.length).toFixed(1)} ms`,
);
for (const { ms, what } of took.slice(took.length - Number(process.env.SLOWEST ?? 0)))
  console.log(ms.toFixed(0), what);
if (known === null) writeFileSync(file, JSON.stringify(records));
else console.log(differing === 0 ? "all the same" : `${differing} jobs differ`);
