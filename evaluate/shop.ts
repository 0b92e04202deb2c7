/**
 * `npm run evaluate:shop -- [jobs] [seed] [spread] [small | shipped]`: a simulated shop whose causes, sorts of parts, modes and knock-ons differ from the
 * tables. Each job is believed in before any reading, and every tenth after eight readings of our own solver with noise, with four sets of
 * figures: the tables', those learnt from the closed jobs before it through their logs and ends alone, those learnt from
 * what was truly wrong, and the shop's own. `spread` 0 is a shop just as the tables have it. The boards are three makes of one of 25 parts, in
 * two families, so that hundreds of jobs take minutes, or shipped ones. Figures go to the terminal and
 * `reports/shop-SEED-SPREAD.html`.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { TWENTY_FIVE_PARTS } from "../src/diagnosis/twenty-five-parts.fixture.ts";
import { AssessmentSession, beliefOf } from "../src/job/assess.ts";
import { figuresOfJob } from "../src/job/bench-lessons.ts";
import type { Job } from "../src/job/job.ts";
import { lessonOf } from "../src/job/lesson-of-job.ts";
import type { JobFigures } from "../src/learning/job-figures.ts";
import { type Learnt, learn } from "../src/learning/learnt.ts";
import type { Lesson } from "../src/learning/lesson.ts";
import type { LearntRates } from "../src/priors/learnt-rates.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { type ShopBoard, type ShopJob, shopJob } from "./shop-jobs.ts";
import { shopPage, shopText } from "./shop-page.ts";
import { FIGURES, type FiguresName, type ShopRun } from "./shop-run.ts";
import { type Score, scoreOf } from "./shop-score.ts";
import { shopOf } from "./shop-truth.ts";

const SHIPPED_HERE = [
  "washing-machine-drive",
  "small-frequency-drive",
  "small-frequency-drive-3ph",
  "induction-hob",
];
const MAKES = [
  ["make-a", "boost front end A", "boost A"],
  ["make-b", "boost front end B", "boost A"],
  ["make-c", "boost front end C", "boost B"],
] as const;
const READ_EVERY = 10;
const LEARN_EVERY = 10;
const ALONE = { cameBack: false, again: false };

const [jobs = 300, seed = 1, spread = 1] = process.argv.slice(2, 5).map(Number);
const shop = shopOf(seed, spread);
const boards: readonly ShopBoard[] =
  process.argv[5] === "shipped"
    ? SHIPPED.filter(({ id }) => SHIPPED_HERE.includes(id)).map(({ id, board }) => ({ id, file: board }))
    : MAKES.map(([id, name, family]) => ({ id, file: { ...TWENTY_FIVE_PARTS, name, family } }));

const asShop = (rates: LearntRates): JobFigures => ({
  jobs: 0,
  ...rates,
  paces: {},
  prices: {},
  references: [],
});

function figuresFor(name: FiguresName, job: ShopJob, soft: Learnt, told: Learnt): JobFigures | null {
  const { board, cause } = job.fresh;
  switch (name) {
    case "tables":
      return null;
    case "learnt":
      return figuresOfJob(soft, { board, cause });
    case "told the truth":
      return figuresOfJob(told, { board, cause });
    case "the shop's own":
      return asShop(shop.rates(cause, job.boardId, [...board.parts.keys()]));
  }
}

function score(job: Job, learned: JobFigures | null, faulty: ReadonlySet<string>): Score {
  const believed = beliefOf({ ...job, learned }, new AssessmentSession());
  if (!believed.ok) throw new Error(believed.problem);
  return scoreOf(believed.value.belief, faulty);
}

function lesson(job: ShopJob, told: boolean): Lesson {
  const known = [{ probability: 1, faults: job.truth, beside: [] }];
  const made = lessonOf(job.closed, ALONE, told ? known : undefined);
  if (!made.ok) throw new Error(made.problem);
  return made.value;
}

const run: ShopRun = { before: new Map(), after: new Map(), readAt: [] };
for (const name of FIGURES) {
  run.before.set(name, []);
  run.after.set(name, []);
}
const soft: Lesson[] = [];
const told: Lesson[] = [];
let [learntSoft, learntTold] = [learn(soft), learn(told)];
const begun = process.cpuUsage();
for (let at = 0; at < jobs; at++) {
  const chosen = boards[at % boards.length];
  if (chosen === undefined) break;
  const job = shopJob(shop, chosen, seed * 100_000 + at);
  for (const name of FIGURES) {
    const figures = figuresFor(name, job, learntSoft, learntTold);
    run.before.get(name)?.push(score(job.fresh, figures, job.faulty));
    if (at % READ_EVERY === 0) run.after.get(name)?.push(score(job.read, figures, job.faulty));
  }
  if (at % READ_EVERY === 0) run.readAt.push(at);
  soft.push(lesson(job, false));
  told.push(lesson(job, true));
  if ((at + 1) % LEARN_EVERY === 0) [learntSoft, learntTold] = [learn(soft), learn(told)];
  if ((at + 1) % 50 === 0 || at + 1 === jobs) report(at + 1);
}

/** What stands so far, so that a run which is stopped has not been for nothing. */
function report(done: number): void {
  const { user, system } = process.cpuUsage(begun);
  const words = `${done} jobs, shop ${seed}, spread ${spread}; ${((user + system) / 1e6).toFixed(0)} s of processor`;
  console.log(`${words}\n${shopText(run)}`);
  mkdirSync("reports", { recursive: true });
  writeFileSync(`reports/shop-${seed}-${spread}.html`, shopPage(run, words));
}
