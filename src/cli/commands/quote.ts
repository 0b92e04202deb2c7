import type { Command } from "commander";
import { assess } from "../../job/assess.ts";
import { moneyView } from "../../job/money-view.ts";
import { type Finish, type Io, refuse, whileTold } from "../io.ts";
import { loadJob } from "../load-job.ts";
import { addPaperOptions, givePaper, type PaperOptions, paperHead } from "../paper/give-paper.ts";
import { moneyPaper, quotePaper } from "../paper/paper.ts";

export function addQuote(program: Command, io: Io, finish: Finish): void {
  const command = program
    .command("quote")
    .description(
      "what to offer the customer, and the job's money: spent, still expected, the stop line, what remains on giving up",
    )
    .argument("<job>", "a job file");
  addPaperOptions(command)
    .addHelpText(
      "after",
      `
A PDF holds the quote alone; the job's money is the shop's own business.

Example:
  $ faultwright quote examples/fan-drive.json
  $ faultwright quote examples/fan-drive.json --json | jq .toGo`,
    )
    .action((file: string, options: PaperOptions) => finish(() => quote(file, options, io)));
}

async function quote(file: string, options: PaperOptions, io: Io): Promise<number> {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const assessed = whileTold(io, () => assess(job));
  if (!assessed.ok) return refuse(io, `${file}: ${assessed.problem}`);
  const money = moneyView(assessed.value);
  const head = await paperHead(options, job, io);
  const papers = [quotePaper(money, head, money.bill.taxPercent), moneyPaper(money, head)] as const;
  return givePaper(options, papers, money, io);
}
