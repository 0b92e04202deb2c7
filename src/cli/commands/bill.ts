import type { Command } from "commander";
import { foldLog } from "../../bench/fold.ts";
import { billView } from "../../job/bill-view.ts";
import type { Finish, Io } from "../io.ts";
import { addPaperOptions, givePaper, type PaperOptions } from "../paper/give-paper.ts";

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
  $ faultwright bill examples/fan-drive.json --language es --paper letter --pdf factura.pdf`,
    )
    .action((file: string, options: PaperOptions) => finish(() => bill(file, options, io)));
}

function bill(file: string, options: PaperOptions, io: Io): Promise<number> {
  return givePaper("bill", file, options, io, (job) => {
    const timeline = foldLog(job.board, job.absent, job.log);
    if (!timeline.ok) return timeline;
    const answer = { currency: job.terms.currency, ...billView(job, timeline.value) };
    return { ok: true, value: { answer, shopsOwn: [] } };
  });
}
