import type { Command } from "commander";
import { foldLog } from "../../bench/fold.ts";
import { amountNumber, amountText } from "../../money/amount.ts";
import { type JobSum, jobSum } from "../../money/job-sum.ts";
import { answerText, table } from "../answer-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadJob } from "../load-job.ts";

export function addSum(program: Command, io: Io, finish: Finish): void {
  program
    .command("sum")
    .description("what a job has taken so far: minutes at the job's rate, and every part fitted")
    .argument("<job>", "a job file")
    .option("--json", "one JSON object for a script; amounts are text, exact to the currency's last digit")
    .addHelpText("after", "\nExample:\n  $ faultwright sum examples/fan-drive.json")
    .action((file: string, options: { json?: true }) => finish(() => sum(file, options.json === true, io)));
}

function sum(file: string, json: boolean, io: Io): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return refuse(io, `${file}: ${timeline.problem}`);
  const made = jobSum(job.board, timeline.value, job.terms);
  const { currency } = job.terms;
  io.out(json ? answerText(sumAnswer(made, currency)) : sumText(made, currency));
  return DONE;
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
      `${part.part}${part.with === null ? "" : `, ${part.with}`}${part.used ? ", pulled" : ""}${part.estimated ? " (price not noted: usual one)" : ""}`,
      amount(part.amount),
    ]),
    [`together, ${currency}`, amount(made.total)],
  ];
  const width = Math.max(...lines.map(([, text = ""]) => text.length));
  return table(lines.map(([what = "", text = ""]) => [what, text.padStart(width)]));
}
