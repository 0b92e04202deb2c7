import { existsSync, realpathSync } from "node:fs";
import type { Command } from "commander";
import type { CatalogueType } from "../../parts/catalogue.ts";
import { type Fate, takeIn } from "../../parts/catalogue-import.ts";
import { COLUMNS } from "../../parts/catalogue-rows.ts";
import { type CatalogueText, catalogueText } from "../../parts/catalogue-text.ts";
import { STANDARD_LINES } from "../../parts/standard-types.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText } from "../answer-text.ts";
import { loadCatalogue, readCatalogueFile } from "../catalogue/catalogue-file.ts";
import { BAD_INPUT, DONE, type Finish, type Io, refuse } from "../io.ts";
import { DATA_HELP, keptDrawer } from "../kept-shop.ts";
import { replaceFile } from "../replace-file.ts";

const HELP = `
The first line of a catalogue file names its columns, in any order:
  ${COLUMNS.slice(0, 8).join(" ")}
  and any rating: ${COLUMNS.slice(8).join(" ")}
Figures carry their unit or none: 600V, 470u, 4k7, 35ns, 20%. A standard type needs its name alone.

Examples:
  $ faultwright catalogue check drawer.csv
  $ faultwright catalogue import counted.csv --into drawer.csv --dry-run
  $ faultwright catalogue export drawer.csv > clean.csv
  $ faultwright catalogue export --drawer > drawer.csv     for --stock, with what the page keeps`;

export function addCatalogue(program: Command, io: Io, finish: Finish): void {
  const catalogue = program
    .command("catalogue")
    .description("parts in stock, on donor boards, and the types that come with the program")
    .addHelpText("after", HELP);
  catalogue
    .command("check")
    .description("read a catalogue file and say what is wrong with which row; nothing is written")
    .argument("<file>", "a CSV file")
    .option("--json", "one JSON object for a script")
    .action((file: string, options: { json?: true }) => finish(() => check(file, options.json === true, io)));
  catalogue
    .command("import")
    .description("take the rows of a file into a stock file: all of them or, with one bad row, none")
    .argument("<file>", "a CSV file")
    .requiredOption("--into <stock>", "the stock file; made where there is none")
    .option("--dry-run", "say what would become of every row, and write nothing")
    .option("--json", "one JSON object for a script")
    .action((file: string, options: ImportOptions) => finish(() => importRows(file, options, io)));
  catalogue
    .command("export")
    .description("a stock file, or the types that come with the program, as clean CSV")
    .argument("[file]", "a CSV file")
    .option("--drawer", "the parts drawer of the page, as `serve` keeps it")
    .option("--data <folder>", DATA_HELP)
    .action((file: string | undefined, options: ExportOptions) =>
      finish(() => exportRows(file, options, io)),
    );
}

interface ImportOptions {
  readonly into: string;
  readonly dryRun?: true;
  readonly json?: true;
}

const BYTES_PER_MB = 1e6;

/** The rows of a file, told as they are read, and what that took: on standard error, where it is in nobody's way. */
function readTold(io: Io, file: string, known: readonly CatalogueType[] = []): Parsed<CatalogueText> {
  if (!io.isTerminal) return readCatalogueFile(file, known);
  const read = readCatalogueFile(file, known, (done, of) => io.err(`\r${done} of ${of} rows read`));
  if (read.ok) io.err(`, ${megabytesInUse()} MB of memory in use\n`);
  return read;
}

/** Memory of this process, for a script as well. */
function megabytesInUse(): number {
  return Math.round(process.memoryUsage().rss / BYTES_PER_MB);
}

function refusedText(read: CatalogueText): string {
  return read.refused
    .map(
      ({ line, name, reasons }) => `line ${line}${name === "" ? "" : ` (${name})`}: ${reasons.join("; ")}\n`,
    )
    .join("");
}

function check(file: string, json: boolean, io: Io): number {
  const read = readTold(io, file);
  if (!read.ok) return refuse(io, read.problem);
  const { rows, lines, refused } = read.value;
  if (json) io.out(answerText({ rows, read: lines.length, refused, memoryMegabytes: megabytesInUse() }));
  else
    io.out(`${refusedText(read.value)}${rows} rows: ${lines.length} can be read, ${refused.length} cannot\n`);
  return refused.length === 0 ? DONE : BAD_INPUT;
}

function importRows(file: string, options: ImportOptions, io: Io): number {
  const before = existsSync(options.into) ? loadCatalogue(options.into) : { ok: true as const, value: [] };
  if (!before.ok) return refuse(io, `${before.problem}; nothing was imported`);
  const inStock = before.value.map(({ type }) => type);
  const read = readTold(io, file, inStock);
  if (!read.ok) return refuse(io, read.problem);
  const { lines, refused, rows } = read.value;
  const { rows: taken, stock } = takeIn(
    before.value,
    lines.map((one) => one.stock),
  );
  const count = (fate: Fate) => taken.filter((one) => one.fate === fate).length;
  const written = refused.length === 0 && options.dryRun !== true;
  if (written) {
    const path = existsSync(options.into) ? realpathSync(options.into) : options.into;
    try {
      replaceFile(path, catalogueText(stock));
    } catch (error) {
      return refuse(
        io,
        `${options.into}: not written: ${error instanceof Error ? error.message : String(error)}`,
      );
    }
  }
  const told = lines.map(({ line, stock: one }, at) => {
    const { fate = "new", changes = [] } = taken[at] ?? {};
    return { line, name: one.type.name, fate, changes };
  });
  if (options.json === true) {
    io.out(
      answerText({
        rows,
        new: count("new"),
        changed: count("changed"),
        same: count("same"),
        refused,
        memoryMegabytes: megabytesInUse(),
        written,
        lines: told,
      }),
    );
  } else {
    const each =
      options.dryRun === true
        ? told
            .map(
              ({ line, name, fate, changes }) => `line ${line} (${name}): ${[fate, ...changes].join("; ")}\n`,
            )
            .join("")
        : "";
    const sum = `${rows} rows: ${count("new")} new, ${count("changed")} changed, ${count("same")} as they were, ${refused.length} refused`;
    io.out(
      `${each}${refusedText(read.value)}${sum}; ${written ? `${options.into} has ${stock.length} lines` : "nothing was written"}\n`,
    );
  }
  return refused.length === 0 ? DONE : BAD_INPUT;
}

interface ExportOptions {
  readonly drawer?: true;
  readonly data?: string;
}

async function exportRows(file: string | undefined, options: ExportOptions, io: Io): Promise<number> {
  if (file !== undefined && options.drawer === true)
    return refuse(io, "--drawer: name a file or the drawer, not both");
  const stock =
    options.drawer === true
      ? await keptDrawer(options.data)
      : file === undefined
        ? { ok: true as const, value: STANDARD_LINES }
        : loadCatalogue(file);
  if (!stock.ok) return refuse(io, stock.problem);
  io.out(catalogueText(stock.value));
  return DONE;
}
