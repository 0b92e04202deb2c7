/** How a paper leaves the program: lines, JSON, CSV, or a PDF file. */
import type { Command } from "commander";
import type { Job } from "../../job/job.ts";
import { answerText } from "../answer-text.ts";
import { DONE, type Io, refuse } from "../io.ts";
import { DATA_HELP, keptShop } from "../kept-shop.ts";
import { replaceFile } from "../replace-file.ts";
import type { Paper, PaperHead } from "./paper.ts";
import { paperPdf } from "./paper-pdf.ts";
import { paperCsv, paperText } from "./paper-text.ts";

export interface PaperOptions {
  readonly json?: true;
  readonly csv?: true;
  readonly pdf?: string;
  readonly from?: string;
  readonly to?: string;
  readonly number?: string;
  readonly data?: string;
}

export function addPaperOptions(command: Command): Command {
  return command
    .option("--json", "one JSON object for a script; amounts are text, exact to the currency's last digit")
    .option("--csv", "the tables as comma-separated text")
    .option(
      "--from <text>",
      "who gives it, as the paper's head is to say; a PDF has the shop's own name without it",
    )
    .option("--to <text>", "who gets it")
    .option("--number <text>", "the paper's number")
    .option("--data <folder>", `the shop: ${DATA_HELP}`)
    .option("--pdf <file>", "a PDF file, with nothing on standard output");
}

/** The head of a paper, as the options have it; what goes to the customer bears the shop's name. */
export async function paperHead(options: PaperOptions, { board, terms }: Job, io: Io): Promise<PaperHead> {
  const { to = null, number = null } = options;
  const own = options.pdf === undefined ? "" : (await keptShop(options.data)).name;
  const from = options.from ?? (own === "" ? null : own);
  return { boardName: board.name, currency: terms.currency, day: io.now().slice(0, 10), from, to, number };
}

/** @param papers - the first is the one that goes to the customer; a PDF holds that alone */
export async function givePaper(
  options: PaperOptions,
  papers: readonly [Paper, ...Paper[]],
  answer: object,
  io: Io,
): Promise<number> {
  const chosen = [options.json, options.csv, options.pdf].filter((one) => one !== undefined);
  if (chosen.length > 1) return refuse(io, "--json, --csv and --pdf: choose one of them");
  if (options.json === true) io.out(answerText(answer));
  else if (options.csv === true) io.out(papers.map(paperCsv).join("\n"));
  else if (options.pdf === undefined) io.out(papers.map(paperText).join("\n"));
  else {
    const bytes = await paperPdf(papers[0], new Date(io.now()));
    try {
      replaceFile(options.pdf, bytes);
    } catch (error) {
      return refuse(
        io,
        `${options.pdf}: cannot be written: ${error instanceof Error ? error.message : String(error)}`,
      );
    }
  }
  return DONE;
}
