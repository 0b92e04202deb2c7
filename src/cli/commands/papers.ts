/** The papers that leave with a board: label, bench sheet, report, slip for the fitter, short message. */
import type { Command } from "commander";
import type { PaperKind } from "../../papers/paper.ts";
import type { Finish, Io } from "../io.ts";
import { addPaperOptions, givePaper, type PaperOptions } from "../paper/give-paper.ts";

interface PaperCommand {
  readonly kind: Exclude<PaperKind, "quote" | "bill">;
  readonly description: string;
  readonly example: string;
  readonly own?: (command: Command) => Command;
}

const COMMANDS: readonly PaperCommand[] = [
  {
    kind: "label",
    description: "a label for the board, with a square code that opens the job",
    example: "--number 2026-117 --opens http://127.0.0.1:4517/#/job/demo --paper label --pdf label.pdf",
    own: (command) =>
      command.option("--opens <text>", "what the code holds: the job's address (default: the number)"),
  },
  {
    kind: "sheet",
    description: "the bench sheet: every reading before and after, against a good board",
    example: "--pdf sheet.pdf",
  },
  {
    kind: "report",
    description: "the report to the customer, in plain words",
    example: "--language es --paper letter --pdf informe.pdf",
    own: (command) =>
      command.option(
        "--warranty <text>",
        "the shop's terms of warranty, in its own words; a PDF has those that the page keeps without it",
      ),
  },
  {
    kind: "slip",
    description: "the slip for the fitter: plugs, order of phases, torque, first start, what to send back",
    example: "--language hi --pdf slip.pdf",
  },
  {
    kind: "message",
    description: "finding and quote in a few lines, to paste into a messenger",
    example: "--language ar",
  },
];

export function addPapers(program: Command, io: Io, finish: Finish): void {
  for (const { kind, description, example, own } of COMMANDS) {
    const command = addPaperOptions(
      program.command(kind).description(description).argument("<job>", "a job file"),
    ).option("--title <text>", "what the job is called");
    (own ?? ((as) => as))(command)
      .addHelpText("after", `\nExample:\n  $ faultwright ${kind} examples/fan-drive.json ${example}`)
      .action((file: string, options: PaperOptions) => finish(() => givePaper(kind, file, options, io)));
  }
}
