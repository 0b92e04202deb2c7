/** How a paper leaves the program: lines, JSON, CSV, or a PDF file; in which language and on which sheet. */
import type { Command } from "commander";
import { AssessmentSession } from "../../job/assess.ts";
import type { Job } from "../../job/job.ts";
import { NEW_SHOP } from "../../job/shop.ts";
import { LANGUAGES, languageOf } from "../../messages/language.ts";
import { type PaperCatalogue, paperCatalogue } from "../../messages/paper-catalogue.ts";
import { makePaper } from "../../papers/make-paper.ts";
import type { Paper, PaperHead, PaperKind } from "../../papers/paper.ts";
import { paperPdf } from "../../print/paper-pdf.ts";
import { PAPER_SIZES, type PaperSize } from "../../print/paper-sizes.ts";
import { messageText, paperCsv, paperText } from "../../print/paper-text.ts";
import { quoted } from "../../units/nearest.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText } from "../answer-text.ts";
import { DONE, type Io, refuse, whileTold } from "../io.ts";
import { DATA_HELP, keptShop } from "../kept-shop.ts";
import { loadJob } from "../load-job.ts";
import { replaceFile } from "../replace-file.ts";

export interface PaperOptions {
  readonly language?: string;
  readonly paper?: string;
  readonly json?: true;
  readonly csv?: true;
  readonly pdf?: string;
  readonly from?: string;
  readonly to?: string;
  readonly number?: string;
  readonly data?: string;
  readonly title?: string;
  readonly opens?: string;
  readonly warranty?: string;
}

const LANGUAGE_WORDS = LANGUAGES.map(({ language }) => language).join(", ");

export function addPaperOptions(command: Command): Command {
  return command
    .option("--language <tag>", `the reader's language: ${LANGUAGE_WORDS} (default: en)`)
    .option("--paper <size>", `the sheet of a PDF: ${PAPER_SIZES.join(", ")} (default: a4)`)
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

interface Chosen {
  readonly catalogue: PaperCatalogue;
  readonly size: PaperSize;
}

async function chosen({
  language = "en",
  paper = "a4",
  json,
  csv,
  pdf,
}: PaperOptions): Promise<Parsed<Chosen>> {
  const known = languageOf(language);
  const size = PAPER_SIZES.find((one) => one === paper.toLowerCase());
  if ([json, csv, pdf].filter((one) => one !== undefined).length > 1)
    return { ok: false, problem: "--json, --csv and --pdf: choose one of them" };
  if (known === null)
    return { ok: false, problem: `--language: ${quoted(language)} is none of ${LANGUAGE_WORDS}` };
  if (size === undefined)
    return { ok: false, problem: `--paper: ${quoted(paper)} is none of ${PAPER_SIZES.join(", ")}` };
  return { ok: true, value: { catalogue: await paperCatalogue(known), size } };
}

/** The head of a paper, as the options have it; what leaves the shop bears its name. */
async function paperHead(options: PaperOptions, { practice }: Job, io: Io): Promise<PaperHead> {
  const { to = null, number = null, title = null, opens = number } = options;
  const own = options.pdf === undefined ? NEW_SHOP : await keptShop(options.data);
  const from = options.from ?? (own.name === "" ? null : own.name);
  const warranty = options.warranty ?? own.warranty ?? null;
  const day = io.now().slice(0, 10);
  return {
    day,
    from,
    to,
    number,
    jobTitle: title,
    opens,
    warranty,
    pictures: 0,
    practice: practice !== null,
  };
}

/** What a command adds to its paper: what a script reads, and papers for the shop alone that follow it on the screen. */
export interface Beside {
  readonly answer: object;
  readonly shopsOwn: readonly Paper[];
}

/** @param beside - left out: a script reads the paper itself */
export async function givePaper(
  kind: PaperKind,
  file: string,
  options: PaperOptions,
  io: Io,
  beside: (job: Job, paper: Paper, session: AssessmentSession) => Parsed<Beside> = (_, paper) => ({
    ok: true,
    value: { answer: paper, shopsOwn: [] },
  }),
): Promise<number> {
  const how = await chosen(options);
  if (!how.ok) return refuse(io, how.problem);
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { job } = loaded.value;
  const session = new AssessmentSession();
  const head = await paperHead(options, job, io);
  const made = whileTold(io, () => makePaper(kind, job, head, how.value.catalogue, session));
  if (!made.ok) return refuse(io, `${file}: ${made.problem}`);
  const paper = made.value;
  if (options.pdf !== undefined)
    return writePdf(options.pdf, await paperPdf(paper, how.value.size, new Date(io.now())), io);
  const more = beside(job, paper, session);
  if (!more.ok) return refuse(io, `${file}: ${more.problem}`);
  if (options.json === true) io.out(answerText(more.value.answer));
  else if (options.csv === true) io.out([paper, ...more.value.shopsOwn].map(paperCsv).join("\n"));
  else if (kind === "message") io.out(messageText(paper));
  else io.out([paper, ...more.value.shopsOwn].map(paperText).join("\n"));
  return DONE;
}

function writePdf(file: string, bytes: Uint8Array, io: Io): number {
  try {
    replaceFile(file, bytes);
    return DONE;
  } catch (error) {
    return refuse(
      io,
      `${file}: cannot be written: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}
