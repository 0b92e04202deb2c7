import type { Command } from "commander";
import { foldLog } from "../../bench/fold.ts";
import { type CorrectedVerdict, comebackCostText, correctedVerdict } from "../../job/comebacks.ts";
import type { Job } from "../../job/job.ts";
import { amountNumber, amountText } from "../../money/amount.ts";
import { fittedWords, type JobSum, jobSum } from "../../money/job-sum.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText, table } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadJob } from "../load-job.ts";

export function addSum(program: Command, io: Io, finish: Finish): void {
  program
    .command("sum")
    .description("what a job has taken so far: minutes at the job's rate, and every part fitted")
    .argument("<job>", "a job file")
    .option("--comebacks <jobs...>", "job files of the same board come back: their cost is booked here")
    .option("--json", "one JSON object for a script; amounts are text, exact to the currency's last digit")
    .addHelpText("after", "\nExample:\n  $ faultwright sum examples/fan-drive.json")
    .action((file: string, options: SumOptions) => finish(() => sum(file, options, io)));
}

interface SumOptions {
  readonly json?: true;
  readonly comebacks?: readonly string[];
}

function sum(file: string, options: SumOptions, io: Io): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return refuse(io, `${file}: ${timeline.problem}`);
  const made = jobSum(job.board, timeline.value, job.terms);
  const { currency } = job.terms;
  const returned = options.comebacks === undefined ? null : comebacksOf(job, options.comebacks);
  if (returned !== null && !returned.ok) return refuse(io, returned.problem);
  const booked = returned === null ? {} : { comebacks: returned.value };
  io.out(
    options.json === true
      ? answerText({ ...sumAnswer(made, currency), ...booked })
      : `${sumText(made, currency)}${returned === null ? "" : comebackText(returned.value, currency)}`,
  );
  return DONE;
}

interface Booked extends CorrectedVerdict {
  readonly cost: string;
}

/** What the job files named cost the job that they came back to, and how its verdict stands then. */
function comebacksOf(job: Job, files: readonly string[]): Parsed<Booked> {
  const jobs: Job[] = [];
  for (const file of files) {
    const loaded = loadJob(file);
    if (!loaded.ok) return loaded;
    const { comebackOf, terms } = loaded.value.job;
    if (comebackOf === null)
      return { ok: false, problem: `${file}: comebackOf: is missing; it names the job that came back` };
    if (terms.currency !== job.terms.currency)
      return {
        ok: false,
        problem: `${file}: terms.currency: ${terms.currency} is not the old job's ${job.terms.currency}`,
      };
    jobs.push(loaded.value.job);
  }
  const links = jobs.flatMap(({ comebackOf }) => (comebackOf === null ? [] : [comebackOf]));
  const cost = comebackCostText(jobs, job.terms.currency);
  return { ok: true, value: { ...correctedVerdict(job.log, links), cost } };
}

function comebackText({ cost, held, because }: Booked, currency: string): string {
  const verdict = held ? "the verdict holds" : `the verdict did not hold: ${because.join(", ")}`;
  return `came back, booked here: ${cost} ${currency}; ${verdict}\n`;
}

function sumAnswer(made: JobSum, currency: string): object {
  return {
    currency,
    minutes: amountNumber(made.minutes),
    labour: amountText(made.labour, currency),
    parts: made.parts.map(({ amount, ...part }) => ({ ...part, amount: amountText(amount, currency) })),
    partsTotal: amountText(made.partsTotal, currency),
    total: amountText(made.total, currency),
  };
}

function sumText(made: JobSum, currency: string): string {
  const amount = (of: JobSum["total"]) => amountText(of, currency);
  const lines = [
    [`work, ${amountNumber(made.minutes)} min`, amount(made.labour)],
    ...made.parts.map((part) => [
      `${fittedWords(part)}${part.estimated ? " (price not noted: usual one)" : ""}`,
      amount(part.amount),
    ]),
    [`together, ${currency}`, amount(made.total)],
  ];
  const width = Math.max(...lines.map(([, text = ""]) => text.length));
  return table(lines.map(([what = "", text = ""]) => [what, text.padStart(width)]));
}
