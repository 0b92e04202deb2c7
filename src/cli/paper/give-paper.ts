/** How a paper leaves the program: lines, JSON, CSV, or a PDF file. */
import type { Command } from "commander";
import { answerText } from "../answer-text.ts";
import { DONE, type Io, refuse } from "../io.ts";
import { replaceFile } from "../replace-file.ts";
import type { Paper } from "./paper.ts";
import { paperPdf } from "./paper-pdf.ts";
import { paperCsv, paperText } from "./paper-text.ts";

export interface PaperOptions {
  readonly json?: true;
  readonly csv?: true;
  readonly pdf?: string;
}

export function addPaperOptions(command: Command): Command {
  return command
    .option("--json", "one JSON object for a script; amounts are text, exact to the currency's last digit")
    .option("--csv", "the tables as comma-separated text")
    .option("--pdf <file>", "a PDF file, with nothing on standard output");
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
