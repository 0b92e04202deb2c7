/**
 * `node scripts/bundled.mjs evaluate/sweep.ts [boards] [first seed]`: from the twelve readings of the sweep alone, is the board worth
 * repairing? The engine's answer (is it more likely than not to end repaired at a profit?) beside what the player who knows the
 * truth does, on boards where the twelve readings can tell: where one of them hears a fault of the board.
 */
import { readFileSync } from "node:fs";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseFault } from "../src/board/parse-fault.ts";
import { AssessmentSession, assess } from "../src/job/assess.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { shareInterval } from "./intervals.ts";
import { allKnowing } from "./players/all-knowing.ts";
import { Course } from "./players/course.ts";
import { practiceBench } from "./players/hidden-bench.ts";
import { sweepChecks } from "./sweep-checks.ts";
import { trialJob } from "./trial.ts";

const each = Number(process.argv[2] ?? 20);
const first = Number(process.argv[3] ?? 1);
let told = 0;
let right = 0;
let square = 0;
for (const { id } of SHIPPED) {
  const board = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  for (let seed = first; seed < first + each; seed++) {
    const job = trialJob(board.value, seed);
    const session = new AssessmentSession();
    const bench = practiceBench(job, session.priors(job), seed, (_board, state) =>
      session.predictor(job, state),
    );
    const truth = new Course(job, bench);
    const faults = bench.faults(truth.timeline).flatMap((name) => {
      const fault = parseFault(name, board.value);
      return fault.ok ? [fault.value] : [];
    });
    await allKnowing(truth);
    const worth = truth.verdict === "repaired" || truth.verdict === "no-fault";

    const sweep = new Course(job, bench);
    await sweep.makeSafe();
    let heard = false;
    for (const check of sweepChecks(board.value)) {
      const predictor = session.predictor(job, sweep.timeline.now);
      heard ||= predictor.audible(check, [], faults).includes(true);
      await sweep.take({ do: "measure", ...check });
    }
    if (!heard) continue;
    const assessed = assess({ ...job, log: sweep.log }, session);
    if (!assessed.ok) throw new Error(assessed.problem);
    const { repairProbability } = assessed.value.proposal.outlook;
    const go = repairProbability >= 0.5;
    told++;
    if (go === worth) right++;
    square += (repairProbability - Number(worth)) ** 2;
    if (go !== worth)
      console.log(
        `${id} ${seed} ${job.cause}: ${go ? "go" : "no go"} (${(100 * repairProbability).toFixed(0)} %), the truth ${worth ? "was worth it" : "was not"}: ${bench.faults(truth.timeline).join(" ") || "nothing left"}`,
      );
  }
}
const { value, low, high } = shareInterval(right, told);
console.log(
  `${told} boards that twelve readings can tell: right in ${(100 * value).toFixed(0)} % (${(100 * low).toFixed(0)} to ${(100 * high).toFixed(0)}), Brier score of the probability ${(square / Math.max(1, told)).toFixed(3)}`,
);
