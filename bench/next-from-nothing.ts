/** A script's `faultwright next FILE --json` on a job with the sweep's twelve readings, from the start of Node to its end. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { Course } from "../evaluate/players/course.ts";
import { practiceBench } from "../evaluate/players/hidden-bench.ts";
import { sweepChecks } from "../evaluate/sweep-checks.ts";
import { trialJob } from "../evaluate/trial.ts";
import type { Board } from "../src/board/board.ts";
import { AssessmentSession } from "../src/job/assess.ts";

/** A folder with the terminal program bundled as it is for dist/; the caller takes it away. */
export function bundledPrograms(): string {
  const folder = join("node_modules", ".cache", `bench-programs-${process.pid}`);
  const run = spawnSync(process.execPath, ["scripts/bundle-programs.mjs", folder], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  return folder;
}

/** Median milliseconds over `seeds` jobs on this board; `content` is the board as its file has it. */
export async function measureNext(
  programs: string,
  board: Board,
  content: unknown,
  seeds: readonly number[],
): Promise<number> {
  const took: number[] = [];
  for (const seed of seeds) {
    const job = trialJob(board, seed);
    const hidden = new AssessmentSession();
    const bench = practiceBench(job, hidden.priors(job), seed, (_board, state) =>
      hidden.predictor(job, state),
    );
    const course = new Course(job, bench);
    await course.makeSafe();
    for (const check of sweepChecks(board)) await course.take({ do: "measure", ...check });
    const folder = mkdtempSync(join(tmpdir(), "faultwright-bench-"));
    const file = join(folder, "job.json");
    const { cause, symptom, equipment } = job;
    const written = {
      format: "faultwright-job/1",
      board: content,
      cause,
      symptom,
      equipment,
      log: course.log,
    };
    writeFileSync(file, JSON.stringify(written));
    const started = performance.now();
    const run = spawnSync(process.execPath, [join(programs, "cli.mjs"), "next", file, "--json"], {
      encoding: "utf8",
    });
    took.push(performance.now() - started);
    rmSync(folder, { recursive: true });
    if (run.status !== 0) throw new Error(`next ended with ${run.status}: ${run.stderr}`);
  }
  return took.sort((a, b) => a - b)[Math.floor(took.length / 2)];
}
