import type { Command } from "commander";
import { benchLearntView, chainsOf, figuresOfJob } from "../../job/bench-lessons.ts";
import { lessonOf, whyNoLesson } from "../../job/lesson-of-job.ts";
import { type Learnt, learn } from "../../learning/learnt.ts";
import type { LearntView } from "../../learning/learnt-view.ts";
import type { Lesson } from "../../learning/lesson.ts";
import { answerText, table } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { jobsHere } from "../kept-jobs.ts";
import { loadJob } from "../load-job.ts";
import { replaceFile } from "../replace-file.ts";

interface LearnedOptions {
  readonly data?: string;
  readonly into?: string;
  readonly json?: true;
}

export function addLearned(program: Command, io: Io, finish: Finish): void {
  program
    .command("learned")
    .description(
      "what this bench has learnt from its closed jobs, beside the defaults that it takes the place of",
    )
    .argument("[jobs...]", "job files; left out: the jobs kept by `serve`")
    .option(
      "--data <folder>",
      "where those are kept (default: FAULTWRIGHT_DATA, else ~/.local/share/faultwright)",
    )
    .option("--into <job>", "write the figures for this job into its file; it must not have been begun")
    .option("--json", "one JSON object for a script")
    .addHelpText(
      "after",
      `
Practice, open jobs and those left out (a note with "leftOut": true) teach nothing.

Examples:
  $ faultwright learned jobs/*.json
  $ faultwright learned jobs/*.json --into new-job.json`,
    )
    .action((files: string[], options: LearnedOptions) => finish(() => learned(files, options, io)));
}

async function learned(files: readonly string[], options: LearnedOptions, io: Io): Promise<number> {
  const found = await jobsHere(files, options.data);
  if (!found.ok) return refuse(io, found.problem);
  const lessons: Lesson[] = [];
  const without = { practice: 0, open: 0, "left out": 0 };
  const chains = chainsOf(found.value);
  for (const { id, practice, job: read } of found.value) {
    const job = read();
    if (!job.ok) return refuse(io, job.problem);
    const why = practice ? "practice" : whyNoLesson(job.value);
    if (why !== null) {
      without[why]++;
      continue;
    }
    if (io.isTerminal) io.err(`\rreading ${id}...`);
    const lesson = lessonOf(job.value, chains.get(id) ?? { cameBack: false, again: false });
    if (!lesson.ok) return refuse(io, `${id}: ${lesson.problem}`);
    lessons.push(lesson.value);
  }
  if (io.isTerminal) io.err("\r\n");
  const learnt = learn(lessons);
  if (options.into !== undefined) return writeInto(options.into, learnt, io);
  const view = benchLearntView(learnt);
  io.out(options.json === true ? answerText({ ...view, without }) : learnedText(view, without));
  return DONE;
}

function writeInto(file: string, learnt: Learnt, io: Io): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job, content } = loaded.value;
  if (job.log.length > 0)
    return refuse(io, `${file}: log: the job has been begun; it keeps the figures that it was begun with`);
  if (job.practice !== null)
    return refuse(
      io,
      `${file}: practice: a practice job keeps the tables' figures, so that its number hides the same everywhere`,
    );
  const figures = figuresOfJob(learnt, { board: job.asBrought.board, cause: job.cause });
  if (figures === null) return refuse(io, `${file}: nothing has been learnt yet; the file is as it was`);
  replaceFile(file, `${JSON.stringify({ ...content, learned: figures }, null, 2)}\n`);
  io.out(`${file}: worked with what ${jobsWords(learnt.jobs)} taught\n`);
  return DONE;
}

const jobsWords = (jobs: number): string => (jobs === 1 ? "1 job" : `${jobs} jobs`);

function learnedText(view: LearntView, without: Readonly<Record<string, number>>): string {
  const not = Object.entries(without)
    .filter(([, count]) => count > 0)
    .map(([why, count]) => `${count} ${why}`);
  const head = `From ${jobsWords(view.jobs)}${not.length === 0 ? "" : ` (not from: ${not.join(", ")})`}\n`;
  if (view.jobs === 0) return `${head}Every figure is the tables' own: see "faultwright priors".\n`;
  const sections = view.sections
    .filter(({ rows, unchanged }) => rows.length + unchanged > 0)
    .map(({ title, note, rows, unchanged }) => {
      const lines = table(
        rows.map(({ what, before, now, between, seen }) => [`  ${what}`, before, now, between, seen]),
      );
      const rest = unchanged === 0 ? "" : `  ${unchanged} as before\n`;
      return `\n${title}\n  ${note}\n${lines}${rest}`;
    });
  return `${head}${sections.join("")}`;
}
