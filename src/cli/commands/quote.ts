import type { Command } from "commander";
import { assess } from "../../job/assess.ts";
import { moneyView } from "../../job/money-view.ts";
import { paperCatalogue } from "../../messages/paper-catalogue.ts";
import { paperSpeaker } from "../../messages/paper-speaker.ts";
import type { Finish, Io } from "../io.ts";
import { addPaperOptions, givePaper, type PaperOptions } from "../paper/give-paper.ts";
import { moneyPaper } from "../paper/money-paper.ts";

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
A PDF holds the quote alone, and so does a quote in another language than English; the job's money is the shop's own business.

Example:
  $ faultwright quote examples/fan-drive.json
  $ faultwright quote examples/fan-drive.json --json | jq .toGo`,
    )
    .action((file: string, options: PaperOptions) => finish(() => quote(file, options, io)));
}

async function quote(file: string, options: PaperOptions, io: Io): Promise<number> {
  const english = paperSpeaker(await paperCatalogue("en"));
  return givePaper("quote", file, options, io, (job, paper, session) => {
    const assessed = assess(job, session);
    if (!assessed.ok) return assessed;
    const view = moneyView(assessed.value);
    const shopsOwn = paper.language === "en" ? [moneyPaper(view, paper.facts, english)] : [];
    return { ok: true, value: { answer: view, shopsOwn } };
  });
}
