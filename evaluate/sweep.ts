/**
 * `node scripts/bundled.mjs evaluate/sweep.ts [boards] [first seed] [board id]`: from the twelve readings of the sweep alone, on the oracle's boards, is
 * the board worth repairing? The engine's answer (is it more likely than not to end repaired at a profit?) beside what the player who
 * knows the truth does, on boards where the twelve readings can tell: where one of them, by the oracle's own physics, changes when the
 * faults of one part are taken away.
 */
import { AssessmentSession, assess } from "../src/job/assess.ts";
import { judgedBoards } from "./boards/judged-boards.ts";
import { shareInterval } from "./intervals.ts";
import { tellable } from "./oracle/can-tell.ts";
import { oracleBench } from "./oracle/oracle-bench.ts";
import { allKnowing } from "./players/all-knowing.ts";
import { Course } from "./players/course.ts";
import { oracleHiddenBench } from "./players/oracle-hidden-bench.ts";
import { sweepChecks } from "./sweep-checks.ts";
import { causeOf, trialJob } from "./trial.ts";

const [count = 24, first = 1] = process.argv.slice(2, 4).map(Number);
const boards = judgedBoards(process.argv[4]);
let told = 0;
let right = 0;
let worthy = 0;
let square = 0;
for (let seed = first; seed < first + count; seed++) {
  const { id, board } = boards[seed % boards.length];
  const cause = causeOf(seed);
  const bench = oracleBench(board, cause, seed);
  const { oracle } = bench;
  const checks = sweepChecks(board);
  if ((await tellable(oracle, checks)).length === 0) continue;
  const job = trialJob(board, seed, oracle.symptom);
  const truth = new Course(job, oracleHiddenBench(bench));
  const faults = truth.bench.faults(truth.timeline).join(" ");
  await allKnowing(truth);
  const worth = truth.verdict === "repaired" || truth.verdict === "no-fault";

  const sweep = new Course(job, oracleHiddenBench(bench));
  await sweep.makeSafe();
  for (const check of checks) await sweep.take({ do: "measure", ...check });
  const assessed = assess(sweep.job, new AssessmentSession());
  if (!assessed.ok) throw new Error(assessed.problem);
  const { repairProbability } = assessed.value.proposal.outlook;
  const go = repairProbability >= 0.5;
  told++;
  worthy += Number(worth);
  right += Number(go === worth);
  square += (repairProbability - Number(worth)) ** 2;
  if (go !== worth)
    console.log(
      `${id} ${seed} ${cause}: ${go ? "go" : "no go"} (${(100 * repairProbability).toFixed(0)} %), the truth ${worth ? "was worth it" : "was not"}: ${faults}`,
    );
}
const { value, low, high } = shareInterval(right, told);
console.log(
  `${told} of ${count} boards that twelve readings can tell, ${worthy} of them worth it: right in ${(100 * value).toFixed(0)} % (${(100 * low).toFixed(0)} to ${(100 * high).toFixed(0)}), Brier score of the probability ${(square / Math.max(1, told)).toFixed(3)}`,
);
