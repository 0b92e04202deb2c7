/**
 * `node scripts/bundled.mjs evaluate/explanations.ts [jobs] [first seed]`: practice jobs as the technician reads them. Boards and causes in turn,
 * the faults hidden by the practice bench, every proposal followed; after each step everything the bench shows is printed: the
 * card, the suspects, why the first of them are suspected, and, where the verdict is near, why others are cleared. To be read.
 */
import { readFileSync } from "node:fs";
import { parseBoard } from "../src/board/parse-board.ts";
import { cardText } from "../src/cli/card-text.ts";
import { suspectsText } from "../src/cli/suspects-text.ts";
import { whyText } from "../src/cli/why-text.ts";
import { type Assessment, AssessmentSession, assess } from "../src/job/assess.ts";
import { benchView } from "../src/job/bench-view.ts";
import { actionWords } from "../src/job/words.ts";
import { plain } from "../src/messages/said.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import type { BenchView } from "../src/wire/bench-view.ts";
import { Course } from "./players/course.ts";
import { practiceBench } from "./players/hidden-bench.ts";
import { trialJob } from "./trial.ts";

const MOST_STEPS = 80;
/** Suspects whose reasons are printed at each step. */
const REASONS_FOR = 3;

function whys(assessment: Assessment, view: BenchView): string {
  const { suspects } = view;
  const cleared = suspects.find(({ probability }) => probability < 0.001);
  return [...suspects.slice(0, REASONS_FOR), ...(cleared === undefined ? [] : [cleared])]
    .map(({ part }) => {
      const text = whyText(assessment, view, part);
      return text.ok ? text.value : text.problem;
    })
    .join("");
}

async function printJob(seed: number): Promise<void> {
  const { id } = SHIPPED[seed % SHIPPED.length];
  const parsed = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!parsed.ok) throw new Error(parsed.problem);
  const job = trialJob(parsed.value, seed);
  const session = new AssessmentSession();
  const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
    session.predictor(job, state),
  );
  const course = new Course(job, bench);
  console.log(
    `\n######## job ${seed}: ${parsed.value.name}; cause ${job.cause}; hidden: ${bench.faults(course.timeline).join(", ")}`,
  );
  for (let step = 1; step <= MOST_STEPS && course.verdict === null; step++) {
    const assessed = assess({ ...course.job, log: course.log }, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    const view = benchView(assessed.value);
    console.log(plain(`\n---- step ${step}\n${cardText(view, false)}`));
    console.log(plain(suspectsText(assessed.value)));
    console.log(plain(whys(assessed.value, view)));
    const { proposal } = assessed.value;
    for (const action of [proposal.action, ...proposal.row]) {
      const event = await course.take(action);
      const seen = [
        "reading" in event ? event.reading : null,
        "finding" in event ? event.finding : null,
        "observed" in event ? event.observed : null,
      ].filter((one) => one !== null && one !== undefined);
      console.log(
        plain(`>> ${actionWords(parsed.value, event)}${seen.length === 0 ? "" : `: ${seen.join(", ")}`}`),
      );
    }
  }
  const left = bench.faulty(course.timeline);
  console.log(`\n==== ${course.verdict ?? "ran out"}; left faulty: ${left.join(", ") || "nothing"}`);
}

const jobs = Number(process.argv[2] ?? 10);
const first = Number(process.argv[3] ?? 1);
for (let seed = first; seed < first + jobs; seed++) await printJob(seed);
