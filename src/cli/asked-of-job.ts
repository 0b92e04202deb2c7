import type { BenchState } from "../bench/bench-state.ts";
import { foldLog } from "../bench/fold.ts";
import type { Timeline } from "../bench/timeline.ts";
import type { Fault } from "../board/fault.ts";
import type { Job } from "../job/job.ts";
import type { Parsed } from "../units/outcome.ts";
import { parseFaultsOption } from "./faults-option.ts";
import { loadJob } from "./load-job.ts";

/** What `predict` and `deck` ask of: a job, the bench as its log leaves it (unpowered), and the faults named beside it. */
export interface AskedOfJob {
  readonly job: Job;
  readonly timeline: Timeline;
  readonly bench: BenchState;
  readonly faults: readonly Fault[];
}

/** Reads the job file, folds its log and reads the faults; a problem names the file or the option. */
export function askedOfJob(file: string, faultsOption: string): Parsed<AskedOfJob> {
  const loaded = loadJob(file);
  if (!loaded.ok) return loaded;
  const { job } = loaded.value;
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return { ok: false, problem: `${file}: ${timeline.problem}` };
  const faults = parseFaultsOption(faultsOption, job.board);
  if (!faults.ok) return faults;
  const bench = { ...timeline.value.now, powered: false };
  return { ok: true, value: { job, timeline: timeline.value, bench, faults: faults.value } };
}
