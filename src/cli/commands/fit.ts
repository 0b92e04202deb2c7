import type { Command } from "commander";
import { type CatalogueType, notInHouse, type StockLine } from "../../parts/catalogue.ts";
import { fitAnswer } from "../../parts/fit-answer.ts";
import { STANDARD_LINES } from "../../parts/standard-types.ts";
import { readTypedPart } from "../../parts/typed-part.ts";
import { quoted, suggestion } from "../../units/nearest.ts";
import type { Parsed } from "../../units/outcome.ts";
import { answerText } from "../answer-text.ts";
import { loadCatalogue } from "../catalogue/catalogue-file.ts";
import { fitText } from "../fit-text.ts";
import { DONE, type Finish, type Io, refuse } from "../io.ts";
import { loadJob } from "../load-job.ts";

interface FitOptions {
  readonly original?: string;
  readonly candidate?: string;
  readonly json?: true;
}

export function addFit(program: Command, io: Io, finish: Finish): void {
  program
    .command("fit")
    .description(
      "which part will do in a place, by what it does there: rules, parts in stock, checks before it goes in",
    )
    .argument("<job>", "a job file")
    .argument("<part>", "the part's reference, as Q3")
    .argument(
      "[catalogue]",
      "a catalogue file (CSV); the types that come with the program are known without it",
    )
    .option("--original <name>", "the type that was there, by its name in the catalogue")
    .option(
      "--candidate <part>",
      'compare one: a name, or ratings as "igbt; volts 650V; hotAmps 40A; copack yes"',
    )
    .option("--json", "one JSON object for a script")
    .addHelpText(
      "after",
      `
Examples:
  $ faultwright fit examples/fan-drive.json BR1
  $ faultwright fit examples/fan-drive.json D5 --original US1M --candidate 1N4007
  $ faultwright fit examples/fan-drive.json Q3 drawer.csv --json | jq '.offers[0]'`,
    )
    .action((job: string, part: string, catalogue: string | undefined, options: FitOptions) =>
      finish(() => whichWillDo(job, part, catalogue, options, io)),
    );
}

function named(lines: readonly StockLine[], name: string): StockLine | undefined {
  return lines.find((line) => line.type.name.toLowerCase() === name.toLowerCase());
}

function unknownName(option: string, name: string, lines: readonly StockLine[]): string {
  const names = [...new Set(lines.map((line) => line.type.name))];
  return `${option}: the catalogue has no ${quoted(name)}${suggestion(name, names, 8)}`;
}

/** A candidate by name, or as its ratings are typed: what has a semicolon or a space-parted rating is no name. */
function candidateOf(text: string, lines: readonly StockLine[]): Parsed<StockLine> {
  const line = named(lines, text);
  if (line !== undefined) return { ok: true, value: line };
  if (!text.includes(";")) return { ok: false, problem: unknownName("--candidate", text, lines) };
  const typed = readTypedPart(text);
  return typed.ok
    ? { ok: true, value: notInHouse(typed.value) }
    : { ok: false, problem: `--candidate: ${typed.problem}` };
}

function whichWillDo(
  file: string,
  ref: string,
  catalogue: string | undefined,
  options: FitOptions,
  io: Io,
): number {
  const loaded = loadJob(file);
  if (!loaded.ok) return refuse(io, loaded.problem);
  const { board } = loaded.value.job.asBrought;
  const part = board.parts.get(ref);
  if (part === undefined)
    return refuse(
      io,
      `${file}: the board has no part ${quoted(ref)}${suggestion(ref, [...board.parts.keys()], 8)}`,
    );
  const own = catalogue === undefined ? { ok: true as const, value: [] } : loadCatalogue(catalogue);
  if (!own.ok) return refuse(io, own.problem);
  const owned = new Set(own.value.map((line) => line.type.name));
  const lines = [...own.value, ...STANDARD_LINES.filter((line) => !owned.has(line.type.name))];
  let original: CatalogueType | null = null;
  if (options.original !== undefined) {
    const line = named(lines, options.original);
    if (line === undefined) return refuse(io, unknownName("--original", options.original, lines));
    original = line.type;
  }
  const candidate = options.candidate === undefined ? null : candidateOf(options.candidate, lines);
  if (candidate !== null && !candidate.ok) return refuse(io, candidate.problem);
  const answer = fitAnswer(board, part, original, lines);
  const compared = candidate === null ? null : fitAnswer(board, part, original, [candidate.value]).offers[0];
  if (candidate !== null && compared === undefined)
    return refuse(
      io,
      `--candidate: ${candidate.value.type.name} is a ${candidate.value.type.kind}, and ${ref} a ${part.kind}`,
    );
  if (options.json === true)
    io.out(answerText(compared === null ? answer : { ...answer, offers: [compared] }));
  else io.out(fitText(answer, compared ?? null, io.color));
  return DONE;
}
