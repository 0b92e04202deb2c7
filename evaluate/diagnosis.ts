/**
 * `npm run evaluate`: whole practice jobs played to the verdict, on boards whose readings come from our own solver with noise
 * and hidden values. A first look, not a proof: an oracle that is not our solver is the next step.
 */
import { readFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { parseBoard } from "../src/board/parse-board.ts";
import { parseJob } from "../src/job/parse-job.ts";
import { CAUSES } from "../src/priors/cause.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { type PlayedJob, playJob } from "./play-job.ts";

const jobs = Number(process.argv[2] ?? 20);
const onlyBoard = process.argv[3];

for (const shipped of SHIPPED) {
  if (onlyBoard !== undefined && shipped.id !== onlyBoard) continue;
  const board = parseBoard(JSON.parse(readFileSync(`boards/${shipped.id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  const played: PlayedJob[] = [];
  for (let seed = 1; seed <= jobs; seed++) {
    const cause = CAUSES[seed % CAUSES.length];
    const job = parseJob(
      {
        format: "faultwright-job/1",
        board: "shipped",
        cause,
        symptom: "dead",
        equipment: ["lamp-100"],
        log: [],
      },
      board.value,
    );
    if (!job.ok) throw new Error(job.problem);
    const result = playJob(job.value, seed, () => performance.now());
    played.push(result);
    console.log(
      `${String(seed).padStart(4)} ${cause.padEnd(9)} ${result.verdict.padEnd(14)} ${result.right ? "right" : "WRONG"} ` +
        `${result.minutes.toFixed(0).padStart(4)} min ${result.partsMoney.toFixed(0).padStart(4)} parts ${result.profit.toFixed(0).padStart(5)} profit ` +
        `${result.steps} steps, slowest ${Math.max(...result.waits).toFixed(0)} ms | ${result.hidden.join(" ")}${result.left.length > 0 ? ` | left ${result.left.join(" ")}` : ""}`,
    );
  }
  report(shipped.id, played);
}

function report(id: string, played: readonly PlayedJob[]): void {
  const mean = (of: (job: PlayedJob) => number): string =>
    (played.reduce((sum, job) => sum + of(job), 0) / played.length).toFixed(1);
  const waits = played.flatMap((job) => job.waits).sort((a, b) => a - b);
  console.log(
    `${id}: ${played.length} jobs, right verdict ${played.filter((job) => job.right).length}, repaired ${played.filter((job) => job.verdict === "repaired").length}, ` +
      `profit ${mean((job) => job.profit)}, minutes ${mean((job) => job.minutes)}, parts ${mean((job) => job.partsMoney)}; ` +
      `reading to proposal: median ${waits[Math.floor(waits.length / 2)].toFixed(0)} ms, 95 % ${waits[Math.floor(0.95 * waits.length)].toFixed(0)} ms`,
  );
}
