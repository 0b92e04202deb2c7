/**
 * `npm run evaluate -- [boards] [first seed] [board id] [--own-solver] [--name NAME]`: whole jobs played to the verdict by the engine
 * and, beside it on the same boards, by the customary fixed walk, the same walk given our inference, and a player who knows the
 * truth. Readings come from the oracle's bench, or with `--own-solver` from our own solver with noise and hidden values, which shows
 * the plan and not the truth of the model. Boards and causes take turns with the seed, so that every run is balanced as far as it
 * goes. Before them the simulated shop of `evaluate/shop.ts` shows what a bench learns from its closed jobs. One line a trial goes to `reports/trials/NAME.jsonl` as it is played; what is there already is not played again. The figures
 * and `reports/jobs.html` are of this file; `evaluate/jobs-page.ts` joins several.
 */
import { performance } from "node:perf_hooks";
import { parseArgs } from "node:util";
import { judgedBoards } from "./boards/judged-boards.ts";
import { reportJobs } from "./jobs-page-files.ts";
import { trialLine } from "./story.ts";
import { type Clocks, playTrial, type Readings } from "./trial.ts";
import { keepTrial, readTrials, trialKey } from "./trial-file.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: { "own-solver": { type: "boolean", default: false }, name: { type: "string" } },
});
const count = Number(positionals[0] ?? 12);
const first = Number(positionals[1] ?? 1);
const only = positionals[2];
const readings: Readings = values["own-solver"] ? "own solver" : "oracle";

const boards = judgedBoards(only);
if (!Number.isInteger(count) || !Number.isInteger(first))
  throw new Error("boards and first seed are whole numbers");

const name =
  values.name ?? [readings.replace(" ", "-"), first, count, ...(only === undefined ? [] : [only])].join("-");
const path = `reports/trials/${name}.jsonl`;
const done = new Set(readTrials(path).map(trialKey));
if (done.size > 0) console.log(`${path} holds ${done.size} trials already; the run goes on from there`);

const clocks: Clocks = {
  cpu: () => {
    const { user, system } = process.cpuUsage();
    return (user + system) / 1000;
  },
  wall: () => performance.now(),
};
for (let seed = first; seed < first + count; seed++) {
  const chosen = boards[seed % boards.length];
  if (chosen === undefined || done.has(trialKey({ readings, board: chosen.id, seed }))) continue;
  const trial = await playTrial(chosen.id, chosen.board, seed, readings, clocks);
  keepTrial(path, trial);
  console.log(trialLine(trial));
}
reportJobs(readTrials(path), `${name}.jsonl`);
