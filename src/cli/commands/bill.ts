import type { Command } from "commander";
import { foldLog } from "../../bench/fold.ts";
import { billView } from "../../job/bill-view.ts";
import { type Finish, type Io, refuse } from "../io.ts";
import { loadJob } from "../load-job.ts";
import { addPaperOptions, givePaper, type PaperOptions, paperHead } from "../paper/give-paper.ts";
import { billPaper } from "../paper/paper.ts";

export function addBill(program: Command, io: Io, finish: Finish): void {
  const command = program
    .command("bill")
    .description(
      "the bill of a job: every minute and part of its log once, what was agreed about the sum, and tax",
    )
    .argument("<job>", "a job file");
  addPaperOptions(command)
    .addHelpText(
      "after",
      `
Example:
  $ faultwright bill examples/fan-drive.json
  $ faultwright bill examples/fan-drive.json --pdf bill.pdf`,
    )
    .action((file: string, options: PaperOptions) => finish(() => bill(file, options, io)));
}

async function bill(file: string, options: PaperOptions, io: Io): Promise<number> {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const timeline = foldLog(job.board, job.absent, job.log);
  if (!timeline.ok) return refuse(io, `${file}: ${timeline.problem}`);
  const view = billView(job, timeline.value);
  const { currency } = job.terms;
  const head = await paperHead(options, job, io);
  return givePaper(options, [billPaper(view, head)], { currency, ...view }, io);
}
