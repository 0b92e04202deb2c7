/**
 * `node scripts/bundled.mjs evaluate/forecast.ts [boards] [first seed] [--name NAME] [--jobs FILE] [--played]`: second failures against the
 * forecast. Boards of the oracle are powered whatever is believed of them; with `--jobs`, the power-ups of jobs that the engine played (a file
 * of `evaluate/jobs.ts`) are gone through, where its proposals were followed; with `--played` the engine plays the boards' jobs first, and
 * nobody beside it. One line a board goes to `reports/forecast/NAME.jsonl`; what is there is not played or powered again.
 */
import { appendFileSync, existsSync, mkdirSync, readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { judgedBoards } from "./boards/judged-boards.ts";
import { againstAdvice } from "./second-failures/against-advice.ts";
import { followed, playedAlone } from "./second-failures/followed.ts";
import { forecastFigures, forecastText } from "./second-failures/forecast-figures.ts";
import type { PowerUp } from "./second-failures/power-up.ts";
import { readTrials } from "./trial-file.ts";

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    name: { type: "string" },
    jobs: { type: "string" },
    played: { type: "boolean", default: false },
  },
});
const [count = 20, first = 1] = positionals.map(Number);

function kept(path: string): PowerUp[] {
  if (!existsSync(path)) return [];
  const lines = readFileSync(path, "utf8").split("\n");
  return lines.filter((line) => line !== "").map((line) => JSON.parse(line) as PowerUp);
}

async function powered(): Promise<readonly PowerUp[]> {
  mkdirSync("reports/forecast", { recursive: true });
  const path = `reports/forecast/${values.name ?? `against-advice-${first}-${count}`}.jsonl`;
  const ups = kept(path);
  const done = new Set(ups.map(({ seed }) => seed));
  const boards = judgedBoards(undefined);
  for (let seed = first; seed < first + count; seed++) {
    const { id, board } = boards[seed % boards.length];
    if (done.has(seed)) continue;
    const up = await againstAdvice(id, board, seed);
    appendFileSync(path, `${JSON.stringify(up)}\n`);
    ups.push(up);
  }
  return ups;
}

interface PlayedJob {
  readonly seed: number;
  readonly ups: readonly PowerUp[];
}

async function played(): Promise<readonly PlayedJob[]> {
  mkdirSync("reports/forecast", { recursive: true });
  const path = `reports/forecast/${values.name ?? `played-${first}-${count}`}.jsonl`;
  const jobs = existsSync(path)
    ? readFileSync(path, "utf8")
        .split("\n")
        .filter((line) => line !== "")
        .map((line) => JSON.parse(line) as PlayedJob)
    : [];
  const done = new Set(jobs.map(({ seed }) => seed));
  const boards = judgedBoards(undefined);
  for (let seed = first; seed < first + count; seed++) {
    const { id, board } = boards[seed % boards.length];
    if (done.has(seed)) continue;
    const job = { seed, ups: await playedAlone(id, board, seed) };
    appendFileSync(path, `${JSON.stringify(job)}\n`);
    jobs.push(job);
  }
  return jobs;
}

if (values.played) {
  const jobs = await played();
  const figures = forecastFigures(jobs.flatMap(({ ups }) => ups));
  console.log(forecastText(`${jobs.length} jobs played, proposals followed`, figures));
} else if (values.jobs === undefined) {
  const ups = await powered();
  for (const feed of ["mains", "lamp"] as const) {
    const own = ups.filter((up) => up.feed === feed);
    if (own.length > 0) console.log(forecastText(`against advice, ${feed}`, forecastFigures(own)));
  }
  console.log(forecastText("against advice, all", forecastFigures(ups)));
} else {
  const ups: PowerUp[] = [];
  for (const trial of readTrials(values.jobs)) ups.push(...(await followed(trial)));
  console.log(forecastText("where proposals were followed", forecastFigures(ups)));
}
