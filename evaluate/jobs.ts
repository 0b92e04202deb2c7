/**
 * `npm run evaluate [boards] [first seed] [board id]`: whole jobs played to the verdict by the engine and, beside it on the same
 * boards, by the customary fixed walk, the same walk given our inference, and a player who knows the truth. Readings come from
 * the practice bench: our own solver with noise and hidden values, so this shows the plan, not the truth of the model. Prints
 * the figures and writes `reports/jobs.html`.
 */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { performance } from "node:perf_hooks";
import { parseBoard } from "../src/board/parse-board.ts";
import { SHIPPED } from "../src/shipped/shipped.ts";
import { figuresOf, figuresText, jobsPage } from "./jobs-report.ts";
import { playTrial, type Trial } from "./trial.ts";

const each = Number(process.argv[2] ?? 10);
const first = Number(process.argv[3] ?? 1);
const onlyBoard = process.argv[4];

const trials: Trial[] = [];
for (const { id } of SHIPPED) {
  if (onlyBoard !== undefined && id !== onlyBoard) continue;
  const board = parseBoard(JSON.parse(readFileSync(`boards/${id}.json`, "utf8")));
  if (!board.ok) throw new Error(board.problem);
  for (let seed = first; seed < first + each; seed++) {
    const trial = await playTrial(id, board.value, seed, () => performance.now());
    trials.push(trial);
    const { engine, walk } = trial.outcomes;
    const best = trial.outcomes["all-knowing"];
    console.log(
      `${id} ${String(seed).padStart(4)} ${trial.cause.padEnd(9)} engine ${engine.verdict.padEnd(14)} ${engine.minutes.toFixed(0).padStart(4)} min ` +
        `${engine.partsMoney.toFixed(0).padStart(3)} parts ${engine.profit.toFixed(0).padStart(5)} | walk ${walk.verdict.padEnd(14)} ${walk.profit.toFixed(0).padStart(5)} | ` +
        `with inference ${trial.outcomes["walk with inference"].profit.toFixed(0).padStart(5)} | all-knowing ${best.profit.toFixed(0).padStart(5)} | ${engine.arrived.join(" ")}${engine.left.length > 0 ? ` | left ${engine.left.join(" ")}` : ""}`,
    );
  }
}

const waits = trials.flatMap((trial) => trial.waits).sort((a, b) => a - b);
console.log(figuresText(figuresOf(trials)));
console.log(
  `reading to proposal: median ${waits[Math.floor(waits.length / 2)].toFixed(0)} ms, 95 % ${waits[Math.floor(0.95 * waits.length)].toFixed(0)} ms`,
);
mkdirSync("reports", { recursive: true });
writeFileSync("reports/jobs.html", jobsPage(trials, `Whole jobs, seeds ${first} to ${first + each - 1}`));
console.log("reports/jobs.html written");
