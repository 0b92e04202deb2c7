/** The job file that is being worked on: events are added at its end, everything else in it stays as it was. */
import { realpathSync } from "node:fs";
import type { JobEvent } from "../../bench/event.ts";
import type { Job } from "../../job/job.ts";
import { parseJob } from "../../job/parse-job.ts";
import { refusedPower } from "../../safety/refused-power.ts";
import type { Parsed } from "../../units/outcome.ts";
import { type LoadedJob, loadJobWithStock } from "../load-job.ts";
import { readText } from "../read-file.ts";
import { replaceFile } from "../replace-file.ts";

export class JobFile {
  readonly #path: string;
  readonly #content: Readonly<Record<string, unknown>>;
  readonly #stock: unknown;
  #log: readonly unknown[];
  #textOnDisk: string;
  #job: Job;

  private constructor(path: string, text: string, { content, job, stock }: LoadedJob) {
    this.#path = path;
    this.#textOnDisk = text;
    this.#content = content;
    this.#stock = stock;
    this.#log = Array.isArray(content.log) ? content.log : [];
    this.#job = job;
  }

  /**
   * @param practice - the number whose hidden faults answer; the file says so from the first event on, since nothing is to be learnt from it
   * @param catalogue - the file of the shop's stock; it is counted with, and nothing of it is written into the job
   */
  static open(file: string, practice?: number, catalogue?: string): Parsed<JobFile> {
    const text = readText(file);
    if (!text.ok) return text;
    const loaded = loadJobWithStock(file, catalogue);
    if (!loaded.ok) return loaded;
    // Through a link the file itself is replaced, not the link.
    const path = realpathSync(file);
    const { content } = loaded.value;
    const marked = practice === undefined ? content : { ...content, practice };
    return { ok: true, value: new JobFile(path, text.value, { ...loaded.value, content: marked }) };
  }

  get job(): Job {
    return this.#job;
  }

  /**
   * Adds events, all or none, and writes the file. A problem is one line: an event that cannot happen now, or a file that
   * another program changed meanwhile.
   */
  append(events: readonly JobEvent[]): Parsed<Job> {
    const log = [...this.#log, ...events];
    const stock = this.#stock === undefined ? {} : { stock: this.#stock };
    const job = parseJob({ ...this.#content, ...stock, log }, this.#job.asBrought.board);
    if (!job.ok) return job;
    const refused = refusedPower(job.value, this.#log.length);
    if (refused !== null) return { ok: false, problem: refused };
    const now = readText(this.#path);
    if (!now.ok) return now;
    if (now.value !== this.#textOnDisk) {
      return { ok: false, problem: `${this.#path}: another program has changed it; quit and open it again` };
    }
    const text = `${JSON.stringify({ ...this.#content, log }, null, 2)}\n`;
    try {
      replaceFile(this.#path, text);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      return { ok: false, problem: `${this.#path}: not written, the file is as it was: ${why}` };
    }
    this.#log = log;
    this.#textOnDisk = text;
    this.#job = job.value;
    return job;
  }
}
